package corewright.contour;

import java.util.function.BiConsumer;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;

/**
 * A convex quadrilateral with a value at each corner, linear along its sides; corners counter-clockwise.
 *
 * <p>Its level line is the marching-squares line, straight from crossing to crossing. A corner whose side of the level
 * no neighbour shares is cut off; two neighbouring corners above part the quadrilateral from side to side; at a saddle
 * (two opposite corners above) the mean of the four decides which two corners are cut off.
 */
record Quad(Node a, Node b, Node c, Node d) {
    /** A corner: a place and the value there. */
    record Node(double x, double y, double value) {
        boolean isAbove(double level) {
            return value >= level;
        }
    }

    /** Passes on the level line's straight pieces, what is above on their left: none, one or, at a saddle, two. */
    void lines(double level, BiConsumer<Coordinate, Coordinate> line) {
        for (int corner = 0; corner < 4; corner++) {
            if (isCutOff(corner, level)) {
                boolean above = node(corner).isAbove(level);
                line.accept(
                        above ? after(corner, level) : before(corner, level),
                        above ? before(corner, level) : after(corner, level));
            }
        }
        int pair = pairAbove(level);
        if (pair >= 0) {
            line.accept(after(pair + 1, level), before(pair, level));
        }
    }

    /** Whether a place inside lies on the upper side of the level line. */
    boolean isAbove(double level, Coordinate place) {
        for (int corner = 0; corner < 4; corner++) {
            if (isCutOff(corner, level)
                    && Orientation.index(before(corner, level), after(corner, level), place) == Orientation.RIGHT) {
                return node(corner).isAbove(level);
            }
        }
        int pair = pairAbove(level);
        if (pair >= 0) {
            return Orientation.index(after(pair + 1, level), before(pair, level), place) == Orientation.LEFT;
        }
        return isSaddle(level) ? mean() >= level : countAbove(level) >= 2;
    }

    /** The place on a side where the value is the level; the same bits whichever end is named first. */
    static Coordinate crossing(Node p, Node q, double level) {
        boolean inOrder = p.x < q.x || (p.x == q.x && p.y <= q.y);
        Node from = inOrder ? p : q;
        Node to = inOrder ? q : p;
        double t = fraction(from.value, to.value, level);
        return new Coordinate(from.x + t * (to.x - from.x), from.y + t * (to.y - from.y));
    }

    private static double fraction(double from, double to, double level) {
        if (Double.isInfinite(from) || Double.isInfinite(to)) {
            // Every finite value is infinitely near its own end.
            return Double.isInfinite(from) && Double.isInfinite(to) ? 0.5 : Double.isInfinite(to) ? 0 : 1;
        }
        // Halves, because the difference of two large values may overflow.
        return Math.min(1, Math.max(0, (level / 2 - from / 2) / (to / 2 - from / 2)));
    }

    private boolean isCutOff(int corner, double level) {
        boolean above = node(corner).isAbove(level);
        if (node(corner + 1).isAbove(level) == above || node(corner + 3).isAbove(level) == above) {
            return false;
        }
        return !isSaddle(level) || above != mean() >= level;
    }

    private boolean isSaddle(double level) {
        boolean above = a.isAbove(level);
        return c.isAbove(level) == above && b.isAbove(level) != above && d.isAbove(level) != above;
    }

    /** The first of two neighbouring corners that alone are above, or -1. */
    private int pairAbove(double level) {
        for (int i = 0; i < 4 && countAbove(level) == 2; i++) {
            if (node(i).isAbove(level) && node(i + 1).isAbove(level)) {
                return i;
            }
        }
        return -1;
    }

    private int countAbove(double level) {
        int count = 0;
        for (int i = 0; i < 4; i++) {
            count += node(i).isAbove(level) ? 1 : 0;
        }
        return count;
    }

    private double mean() {
        return a.value / 4 + b.value / 4 + c.value / 4 + d.value / 4;
    }

    private Coordinate before(int corner, double level) {
        return crossing(node(corner + 3), node(corner), level);
    }

    private Coordinate after(int corner, double level) {
        return crossing(node(corner), node(corner + 1), level);
    }

    /** A corner, taken modulo 4. */
    Node node(int i) {
        return switch (i & 3) {
            case 0 -> a;
            case 1 -> b;
            case 2 -> c;
            default -> d;
        };
    }
}
