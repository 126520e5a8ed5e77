package corewright.sandwich;

import corewright.overlay.Overlay;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Patch;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.LinearComponentExtracter;

/** The grid's lines in one direction: through straight sides where they can, closer together along rims. */
final class GridLines {
    /** Lines closer than this part of the element size would make slivers; the nodes are moved instead. */
    private static final double MERGE = 0.4;

    /** Openings narrower than so many elements could hold one node, or none. */
    private static final double SMALL = 2;

    private final MeshSize size;
    private final boolean alongX;
    private final TreeSet<Double> fixed = new TreeSet<>();
    private final List<double[]> fine = new ArrayList<>();

    private GridLines(PanelSpec panel, MeshSize size, boolean alongX) {
        this.size = size;
        this.alongX = alongX;
        double[] range = range(panel.outline().getEnvelopeInternal(), 0);
        fixed.add(range[0]);
        fixed.add(range[1]);
        fixSides(panel.outline(), range);
        fixSmallOpenings(panel.outline(), range);
        for (Patch patch : panel.patches()) {
            Geometry inside = Overlay.intersection(patch.area(), panel.outline());
            if (!inside.isEmpty()) {
                if (patch instanceof Patch.Loose) {
                    fine.add(range(inside.getEnvelopeInternal(), panel.core().thicknessMm()));
                }
                fixSides(patch.area(), range);
            }
        }
    }

    /**
     * Puts lines through the ends of openings that could slip through the grid: with one node inside, all their corners would claim it. A
     * panel may be held by such an opening alone.
     */
    private void fixSmallOpenings(Polygon outline, double[] range) {
        for (int k = 0; k < outline.getNumInteriorRing(); k++) {
            double[] ends = range(outline.getInteriorRingN(k).getEnvelopeInternal(), 0);
            if (ends[1] - ends[0] < SMALL * size.generalMm()) {
                fixIfFree(ends[0], range);
                fixIfFree(ends[1], range);
            }
        }
    }

    static double[] of(PanelSpec panel, MeshSize size, boolean alongX) {
        return new GridLines(panel, size, alongX).lines();
    }

    private double[] range(Envelope box, double margin) {
        return alongX
                ? new double[] {box.getMinX() - margin, box.getMaxX() + margin}
                : new double[] {box.getMinY() - margin, box.getMaxY() + margin};
    }

    /** Puts a line through every side square to this direction and longer than an element. */
    private void fixSides(Geometry area, double[] range) {
        List<?> rings = LinearComponentExtracter.getLines(area);
        for (Object ring : rings) {
            Coordinate[] points = ((LineString) ring).getCoordinates();
            for (int k = 1; k < points.length; k++) {
                double from = alongX ? points[k - 1].x : points[k - 1].y;
                double to = alongX ? points[k].x : points[k].y;
                if (from == to && points[k].distance(points[k - 1]) > size.rimMm()) {
                    fixIfFree(from, range);
                }
            }
        }
    }

    private void fixIfFree(double at, double[] range) {
        Double below = fixed.floor(at);
        Double above = fixed.ceiling(at);
        double gap = MERGE * sizeAt(at);
        if (at > range[0]
                && at < range[1]
                && (below == null || at - below > gap)
                && (above == null || above - at > gap)) {
            fixed.add(at);
        }
    }

    private double sizeAt(double at) {
        boolean near = fine.stream().anyMatch(f -> at >= f[0] && at <= f[1]);
        return near ? size.rimMm() : size.generalMm();
    }

    private double[] lines() {
        double[] range = {fixed.first(), fixed.last()};
        for (double[] f : fine) {
            fixIfFree(f[0], range);
            fixIfFree(f[1], range);
        }
        List<Double> lines = new ArrayList<>(List.of(range[0]));
        double from = range[0];
        for (double to : fixed.tailSet(from, false)) {
            // a hair less, so that a length of whole elements is not cut into one more
            int parts = (int) Math.max(1, Math.ceil((to - from) / sizeAt((from + to) / 2) - 1e-9));
            for (int k = 1; k < parts; k++) {
                lines.add(from + (to - from) * k / parts);
            }
            lines.add(to);
            from = to;
        }
        double[] all = lines.stream().mapToDouble(v -> v).toArray();
        Arrays.sort(all);
        return all;
    }
}
