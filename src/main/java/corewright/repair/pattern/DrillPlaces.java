package corewright.repair.pattern;

import corewright.survey.Face;
import corewright.survey.Feature;
import java.util.Locale;
import java.util.regex.Pattern;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/**
 * Where a hole may be drilled: clear of fittings by their keep-out, of supports, dividers and solid areas by the edge
 * clearance, of tanks, cables and pipes known to lie below and of the region's edge by the same. Where the region is narrower than two clearances the middle line
 * stands in for the last rule.
 */
public final class DrillPlaces {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** Holes are given in whole millimetres; this keeps every clearance whole after rounding. */
    private static final double ROUNDING_MM = 0.75;

    /** What is known to lie below and must not be drilled into; other disturbances only upset meters. */
    private static final Pattern HIDDEN = Pattern.compile("tank|cable|wire|wiring|pipe|hose|conduit");

    /** By flat index of the cavity: a hole may stand at the cell's centre. */
    public final boolean[] allowed;
    /** By flat index: allowed only as the middle of a narrow part. */
    public final boolean[] narrow;

    private DrillPlaces(int size) {
        allowed = new boolean[size];
        narrow = new boolean[size];
    }

    public static DrillPlaces of(Cavity cavity, Polygon area, Face face, double clearanceMm) {
        DrillPlaces places = new DrillPlaces(cavity.size());
        double[] edgeMm = edgeDistances(cavity, area, clearanceMm);
        for (int c : cavity.cells) {
            boolean clear = edgeMm[c] >= clearanceMm + ROUNDING_MM;
            places.narrow[c] = !clear && edgeMm[c] >= ROUNDING_MM && ridge(cavity, edgeMm, c, clearanceMm);
            places.allowed[c] = clear || places.narrow[c];
        }
        for (Feature feature : face.features()) {
            places.keepClear(cavity, feature.geometry(), keepOffMm(feature, clearanceMm));
        }
        return places;
    }

    /** Whether a hole there keeps off everything on the face and known to lie below; no region's edge counts. */
    public static boolean clear(Face face, Coordinate at, double clearanceMm) {
        Point place = FACTORY.createPoint(at);
        return face.features().stream().allMatch(f -> f.geometry().distance(place) >= keepOffMm(f, clearanceMm));
    }

    private static double keepOffMm(Feature feature, double clearanceMm) {
        if (feature instanceof Feature.Fitting fitting) {
            return fitting.keepoutMm();
        }
        if (feature instanceof Feature.Disturbance hidden) {
            return HIDDEN.matcher(hidden.name().toLowerCase(Locale.ROOT)).find() ? clearanceMm : -1;
        }
        boolean bounds = feature instanceof Feature.Support
                || feature instanceof Feature.Divider
                || feature instanceof Feature.Solid
                || feature instanceof Feature.Opening;
        return bounds ? clearanceMm : -1;
    }

    private void keepClear(Cavity cavity, Geometry geometry, double offMm) {
        if (offMm < 0) {
            return;
        }
        double least = offMm + ROUNDING_MM;
        Envelope box = new Envelope(geometry.getEnvelopeInternal());
        box.expandBy(least);
        for (int c : cavity.cells) {
            Coordinate at = cavity.centre(c);
            if (allowed[c] && box.contains(at) && geometry.distance(FACTORY.createPoint(at)) < least) {
                allowed[c] = false;
                narrow[c] = false;
            }
        }
    }

    /** Distance to the region's edge where that matters, infinite well inside. */
    private static double[] edgeDistances(Cavity cavity, Polygon area, double clearanceMm) {
        IndexedFacetDistance edge = new IndexedFacetDistance(area.getBoundary());
        int window = (int) Math.ceil(clearanceMm / cavity.cell) + 1;
        double[] distance = new double[cavity.size()];
        for (int c : cavity.cells) {
            distance[c] = deepInside(cavity, c, window)
                    ? Double.POSITIVE_INFINITY
                    : edge.distance(FACTORY.createPoint(cavity.centre(c)));
        }
        return distance;
    }

    private static boolean deepInside(Cavity cavity, int cell, int window) {
        int row = cell / cavity.columns;
        int column = cell % cavity.columns;
        if (row < window || column < window || row >= cavity.rows - window || column >= cavity.columns - window) {
            return false;
        }
        for (int r = -window; r <= window; r++) {
            for (int c = -window; c <= window; c++) {
                if (!cavity.inside(cell + r * cavity.columns + c)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** No cell within the clearance lies deeper by more than half a cell. */
    private static boolean ridge(Cavity cavity, double[] edgeMm, int cell, double clearanceMm) {
        int window = (int) Math.ceil(clearanceMm / cavity.cell);
        double enough = edgeMm[cell] + cavity.cell / 2;
        int row = cell / cavity.columns;
        int column = cell % cavity.columns;
        for (int r = Math.max(0, row - window); r <= Math.min(cavity.rows - 1, row + window); r++) {
            for (int c = Math.max(0, column - window); c <= Math.min(cavity.columns - 1, column + window); c++) {
                if (edgeMm[r * cavity.columns + c] > enough) {
                    return false;
                }
            }
        }
        return true;
    }
}
