package corewright.damage;

import corewright.contour.Coverage;
import corewright.contour.Cut;
import corewright.contour.Labelled;
import corewright.contour.LevelPartition;
import corewright.contour.Raster;
import corewright.field.LatentField;
import corewright.field.NeighbourIndex;
import corewright.survey.settings.Thresholds;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntPredicate;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/** Where the readings of a bay leave a question open: read but in doubt, or not read at all. */
final class UndecidedAreas {
    private final BayFields fields;
    private final Frame frame;
    private final Thresholds thresholds;
    private final List<Undecided> found = new ArrayList<>();

    private UndecidedAreas(BayFields fields, Frame frame, Thresholds thresholds) {
        this.fields = fields;
        this.frame = frame;
        this.thresholds = thresholds;
    }

    static List<Undecided> of(BayFields fields, Frame frame, Thresholds thresholds) {
        UndecidedAreas areas = new UndecidedAreas(fields, frame, thresholds);
        areas.add("wet or dry", fields.pWet, fields.wetSeen, fields.wet);
        areas.add("loose or bonded", fields.pLoose, fields.looseSeen, fields.loose);
        return areas.found;
    }

    private void add(String question, double[] p, List<Observation> seen, LatentField field) {
        double bayMm2 = fields.bay.area().getArea();
        Raster probability = frame.raster(fields.cells, p);
        List<Cut> band = List.of(
                new Cut(probability, thresholds.undecidedLow()), new Cut(probability, thresholds.undecidedHigh()));
        double ownCellMm2 = bayMm2 / Math.max(1, seen.size());
        for (Polygon area : pieces(band, true, false, ownCellMm2)) {
            found.add(undecided(
                    area,
                    String.format(
                            Locale.ROOT,
                            "%s: the readings leave the probability between %.2f and %.2f",
                            question,
                            thresholds.undecidedLow(),
                            thresholds.undecidedHigh())));
        }
        if (seen.isEmpty()) {
            found.add(undecided(fields.bay.area(), question + ": nothing was read in this bay"));
            return;
        }
        double reachMm = field.reach();
        Raster distance = frame.raster(fields.cells, distances(seen));
        for (Polygon area :
                pieces(List.of(new Cut(distance, reachMm)), true, true, Math.max(1, thresholds.smallestRegionMm2()))) {
            found.add(undecided(
                    area, String.format(Locale.ROOT, "%s: nothing was read within %.0f mm", question, reachMm)));
        }
    }

    /** Connected parts above the first cut and, of the last, on the side asked for, larger than {@code leastMm2}. */
    private List<Polygon> pieces(List<Cut> cuts, boolean first, boolean last, double leastMm2) {
        List<Labelled<Boolean>> parts = LevelPartition.of(fields.bay.area(), cuts).stream()
                .map(p -> new Labelled<>(p.polygon(), p.above(0) == first && p.above(cuts.size() - 1) == last))
                .toList();
        return Coverage.dissolve(parts, 0).stream()
                .filter(l -> l.label() && l.polygon().getArea() > leastMm2)
                .map(l -> Regions.canonical(l.polygon()))
                .toList();
    }

    private double[] distances(List<Observation> seen) {
        double[] x = seen.stream().mapToDouble(o -> o.spot().xMm()).toArray();
        double[] y = seen.stream().mapToDouble(o -> o.spot().yMm()).toArray();
        NeighbourIndex index = new NeighbourIndex(x, y);
        double[] distances = new double[fields.cells.length];
        for (int i = 0; i < distances.length; i++) {
            double cx = frame.x(fields.cells[i]);
            double cy = frame.y(fields.cells[i]);
            int nearest = index.nearest(cx, cy, 1, -1)[0];
            distances[i] = Math.hypot(x[nearest] - cx, y[nearest] - cy);
        }
        return distances;
    }

    private Undecided undecided(Polygon area, String why) {
        IntPredicate in = frame.in(area);
        double sum = 0;
        int count = 0;
        for (int i = 0; i < fields.cells.length; i++) {
            if (fields.inside[i] && in.test(fields.cells[i])) {
                sum += fields.pWet[i];
                count++;
            }
        }
        Coordinate c = area.getInteriorPoint().getCoordinate();
        double mean = count > 0 ? sum / count : fields.pWet[fields.slot(frame.cellOf(c.x, c.y))];
        return new Undecided(fields.bay.face(), area, mean, why);
    }
}
