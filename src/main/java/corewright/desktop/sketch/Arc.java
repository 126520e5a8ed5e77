package corewright.desktop.sketch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Triangle;

/** The arc of a circle through three points, as a line of short chords. */
final class Arc {
    /** A chord lies no farther inside its arc: nobody measures a deck better. */
    static final double SAGITTA_MM = 1;

    /** Straighter than this the circle is larger than any boat. */
    private static final double LARGEST_MM = 1e6;

    private Arc() {}

    /** From the first point by the second to the third, both ends with it; empty where they stand in a line. */
    static Optional<List<Coordinate>> through(Coordinate from, Coordinate by, Coordinate to) {
        int turn = Orientation.index(from, by, to);
        if (turn == Orientation.COLLINEAR) {
            return Optional.empty();
        }
        Coordinate centre = Triangle.circumcentre(from, by, to);
        double radius = centre.distance(from);
        if (!(radius < LARGEST_MM)) {
            return Optional.empty();
        }
        double start = angle(centre, from);
        double sweep = sweep(angle(centre, to) - start, turn);
        double part = sweep(angle(centre, by) - start, turn) / sweep;
        double step = 2 * Math.acos(Math.max(0, 1 - SAGITTA_MM / radius));
        int first = Math.max(1, (int) Math.ceil(Math.abs(sweep * part) / step));
        int second = Math.max(1, (int) Math.ceil(Math.abs(sweep * (1 - part)) / step));
        List<Coordinate> line = new ArrayList<>();
        line.add(from);
        for (int i = 1; i < first; i++) {
            line.add(at(centre, radius, start + sweep * part * i / first));
        }
        line.add(by);
        for (int i = 1; i < second; i++) {
            line.add(at(centre, radius, start + sweep * (part + (1 - part) * i / second)));
        }
        line.add(to);
        return Optional.of(line);
    }

    private static double angle(Coordinate centre, Coordinate at) {
        return Math.atan2(at.y - centre.y, at.x - centre.x);
    }

    /** The angle the way round goes through, of the sign of the turn. */
    private static double sweep(double difference, int turn) {
        double whole = 2 * Math.PI;
        double left = ((difference % whole) + whole) % whole;
        return turn == Orientation.COUNTERCLOCKWISE ? left : left - whole;
    }

    private static Coordinate at(Coordinate centre, double radius, double angle) {
        return new Coordinate(centre.x + radius * Math.cos(angle), centre.y + radius * Math.sin(angle));
    }
}
