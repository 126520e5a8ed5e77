package corewright.drawing.placing;

import corewright.contour.Band;
import corewright.contour.Contours;
import corewright.contour.Raster;
import corewright.drawing.kit.PlanView;
import corewright.overlay.Overlay;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.linemerge.LineMerger;

/** Where the front of a fill stands at whole minutes. */
public final class ArrivalLines {
    /** More lines hide the holes; chosen by eye. */
    private static final int MOST = 6;

    private static final int[] STEPS = {1, 2, 5, 10, 15, 30, 60, 120};

    /** Shorter bits say nothing. */
    private static final double SHORTEST = 3;

    private ArrivalLines() {}

    /** A line on paper, every place of it reached at one minute. */
    public record Line(int minute, LineString onPaper) {}

    /** @param arrivalS first arrival a cell, NaN where nothing comes */
    public static List<Line> of(Raster arrivalS, PlanView view) {
        Raster minutes = arrivalS.map(s -> s / 60);
        List<Line> lines = new ArrayList<>();
        double[] levels = levels(minutes);
        if (levels.length == 0) {
            return lines;
        }
        List<Band> bands = Contours.bands(minutes, levels);
        for (double level : levels) {
            List<Geometry> before =
                    areas(bands.stream().filter(b -> b.upper() <= level).toList());
            List<Geometry> after =
                    areas(bands.stream().filter(b -> b.lower() >= level).toList());
            if (!before.isEmpty() && !after.isEmpty()) {
                // bands share their edges exactly: what both have is the line, and nothing of the data's own edge
                Geometry shared = Overlay.intersection(
                        Overlay.union(before).getBoundary(),
                        Overlay.union(after).getBoundary());
                merged(view.onPaper(shared)).forEach(l -> lines.add(new Line((int) level, l)));
            }
        }
        return lines;
    }

    private static List<Geometry> areas(List<Band> bands) {
        return bands.stream().map(Band::area).toList();
    }

    private static List<LineString> merged(Geometry shared) {
        LineMerger merger = new LineMerger();
        merger.add(shared);
        List<LineString> lines = new ArrayList<>();
        for (Object each : merger.getMergedLineStrings()) {
            if (each instanceof LineString line && line.getLength() >= SHORTEST) {
                lines.add(line);
            }
        }
        return lines;
    }

    /** Whole minutes between the first and the last arrival, evenly, at most {@link #MOST}. */
    private static double[] levels(Raster minutes) {
        double first = Double.POSITIVE_INFINITY;
        double last = Double.NEGATIVE_INFINITY;
        for (double value : minutes.values()) {
            if (!Double.isNaN(value)) {
                first = Math.min(first, value);
                last = Math.max(last, value);
            }
        }
        for (int step : STEPS) {
            int from = (int) Math.floor(first / step) + 1;
            int to = (int) Math.ceil(last / step) - 1;
            if (to - from + 1 <= MOST) {
                double[] levels = new double[Math.max(0, to - from + 1)];
                for (int i = 0; i < levels.length; i++) {
                    levels[i] = (from + i) * (double) step;
                }
                return levels;
            }
        }
        return new double[0];
    }
}
