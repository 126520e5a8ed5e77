package corewright.intake.drawn;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** Curves to points that lie no farther from the curve than a tolerance at mid-chord. */
final class Arcs {
    private static final int FEWEST = 4;
    private static final int MOST = 720;

    private final double tolerance;

    /** @param tolerance in the drawing's units */
    Arcs(double tolerance) {
        this.tolerance = tolerance;
    }

    /** A circle about a centre, counter-clockwise, first point not repeated. */
    void circle(Coordinate centre, double radius, List<Coordinate> into) {
        arc(centre, radius, 0, 2 * Math.PI, into);
        into.remove(into.size() - 1);
    }

    /** From one angle over a sweep (negative: clockwise), radians, both ends included. */
    void arc(Coordinate centre, double radius, double from, double sweep, List<Coordinate> into) {
        int n = chords(radius, sweep);
        for (int i = 0; i <= n; i++) {
            double angle = from + sweep * i / n;
            into.add(new Coordinate(centre.x + radius * Math.cos(angle), centre.y + radius * Math.sin(angle)));
        }
    }

    /**
     * An ellipse or a part of one. Source: DXF reference, ELLIPSE.
     *
     * @param major end of the long half axis, from the centre
     * @param ratio short axis over long
     * @param from parameter, radians; a whole ellipse runs from 0 to 2 pi
     */
    record Ellipse(Coordinate centre, Coordinate major, double ratio, double from, double to) {}

    /** Its points; true where it is whole, whose first point is not repeated. */
    boolean ellipse(Ellipse e, List<Coordinate> into) {
        double sweep = e.to - e.from;
        while (sweep <= 0) {
            sweep += 2 * Math.PI;
        }
        boolean whole = sweep > 2 * Math.PI - 1e-6;
        int n = chords(Math.hypot(e.major.x, e.major.y), sweep);
        for (int i = 0; i <= n - (whole ? 1 : 0); i++) {
            double t = e.from + sweep * i / n;
            double along = Math.cos(t);
            double across = e.ratio * Math.sin(t);
            into.add(new Coordinate(
                    e.centre.x + along * e.major.x - across * e.major.y,
                    e.centre.y + along * e.major.y + across * e.major.x));
        }
        return whole;
    }

    /**
     * The points between two ends of an arc with a bulge, the tangent of a quarter of its angle, counter-clockwise
     * positive; the ends themselves are left out. Source: AutoCAD DXF reference, group 42.
     */
    void bulge(Coordinate a, Coordinate b, double bulge, List<Coordinate> into) {
        double chord = a.distance(b);
        if (chord == 0 || Math.abs(bulge) < 1e-9) {
            return;
        }
        double sweep = 4 * Math.atan(bulge);
        double radius = chord * (1 + bulge * bulge) / (4 * Math.abs(bulge));
        double toCentre = chord * (1 - bulge * bulge) / (4 * bulge); // along the left normal of a to b
        Coordinate centre = new Coordinate(
                (a.x + b.x) / 2 - toCentre * (b.y - a.y) / chord, (a.y + b.y) / 2 + toCentre * (b.x - a.x) / chord);
        double from = Math.atan2(a.y - centre.y, a.x - centre.x);
        int n = chords(radius, sweep);
        for (int i = 1; i < n; i++) {
            double angle = from + sweep * i / n;
            into.add(new Coordinate(centre.x + radius * Math.cos(angle), centre.y + radius * Math.sin(angle)));
        }
    }

    /** The sagitta of a chord over an angle is r (1 - cos(angle / 2)). */
    int chords(double radius, double sweep) {
        double ratio = Math.min(1, tolerance / Math.max(radius, tolerance));
        double step = 2 * Math.acos(1 - ratio);
        int wanted = (int) Math.ceil(Math.min(MOST, Math.abs(sweep) / step));
        return Math.max((int) Math.ceil(FEWEST * Math.abs(sweep) / Math.PI), Math.max(1, wanted));
    }
}
