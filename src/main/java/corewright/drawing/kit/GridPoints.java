package corewright.drawing.kit;

import corewright.overlay.Overlay;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Spot;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;

/**
 * The points of a walk: multiples of the spacing from the datum that lie on the face's core, row by row from the bow, there
 * and back so that nobody walks empty.
 */
public final class GridPoints {
    /** A meter's foot does not fit nearer to an edge; the common ones are some 40 mm across. */
    private static final double EDGE_MM = 20;

    public static final double LEAST_MM = 10;
    public static final double MOST_MM = 5000;

    private GridPoints() {}

    public static List<Spot> over(Face face, double spacingMm) {
        if (!sensible(spacingMm)) {
            throw new IllegalArgumentException("not a sensible spacing: " + spacingMm);
        }
        Geometry core = core(face);
        Envelope box = face.outline().getEnvelopeInternal();
        List<Spot> points = new ArrayList<>();
        boolean fromStarboard = true;
        for (long i = (long) Math.floor(box.getMinX() / spacingMm); i * spacingMm <= box.getMaxX(); i++) {
            List<Spot> row = row(face, core, box, i * spacingMm, spacingMm);
            if (!row.isEmpty()) {
                if (fromStarboard) {
                    Collections.reverse(row);
                }
                points.addAll(row);
                fromStarboard = !fromStarboard;
            }
        }
        return points;
    }

    /** The same order for places read before: rows of nearly one x from the bow, there and back, the first from starboard. */
    public static List<Spot> walked(List<Spot> places, double rowMm) {
        List<Spot> sorted = new ArrayList<>(places);
        sorted.sort(Comparator.comparingDouble(Spot::xMm).thenComparingDouble(Spot::yMm));
        List<Spot> all = new ArrayList<>();
        boolean fromStarboard = true;
        for (int from = 0; from < sorted.size(); ) {
            int to = from + 1;
            while (to < sorted.size() && sorted.get(to).xMm() - sorted.get(from).xMm() < rowMm) {
                to++;
            }
            List<Spot> row = new ArrayList<>(sorted.subList(from, to));
            row.sort(Comparator.comparingDouble(Spot::yMm));
            if (fromStarboard) {
                Collections.reverse(row);
            }
            all.addAll(row);
            fromStarboard = !fromStarboard;
            from = to;
        }
        return all;
    }

    public static boolean sensible(double spacingMm) {
        return spacingMm >= LEAST_MM && spacingMm <= MOST_MM;
    }

    private static List<Spot> row(Face face, Geometry core, Envelope box, double x, double spacingMm) {
        List<Spot> row = new ArrayList<>();
        for (long j = (long) Math.floor(box.getMinY() / spacingMm); j * spacingMm <= box.getMaxY(); j++) {
            Point at = face.outline().getFactory().createPoint(new Coordinate(x, j * spacingMm));
            if (core.covers(at)) {
                row.add(new Spot(face.name(), x, j * spacingMm));
            }
        }
        return row;
    }

    /** Where a meter can stand over core. */
    private static Geometry core(Face face) {
        Geometry core = face.outline().buffer(-EDGE_MM);
        for (Feature feature : face.features()) {
            boolean away = feature instanceof Feature.Opening
                    || feature instanceof Feature.Solid
                    || feature instanceof Feature.Fitting
                    || feature instanceof Feature.Divider;
            if (away) {
                core = Overlay.difference(core, feature.geometry().buffer(EDGE_MM));
            }
        }
        return core;
    }
}
