package corewright.contour;

import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** Directed straight sides of polygons, the polygon on their left; a plain list of numbers, as there may be millions. */
final class Sides {
    private static final int FIRST = 64;

    private double[] ends = new double[4 * FIRST];
    private int size;

    /** Adds a side; one without length is none. */
    void add(Coordinate from, Coordinate to) {
        if (from.x == to.x && from.y == to.y) {
            return;
        }
        if (4 * size == ends.length) {
            ends = Arrays.copyOf(ends, 2 * ends.length);
        }
        ends[4 * size] = from.x;
        ends[4 * size + 1] = from.y;
        ends[4 * size + 2] = to.x;
        ends[4 * size + 3] = to.y;
        size++;
    }

    static Sides joined(List<Sides> parts) {
        Sides all = new Sides();
        all.size = parts.stream().mapToInt(Sides::size).sum();
        all.ends = new double[4 * all.size];
        int at = 0;
        for (Sides part : parts) {
            System.arraycopy(part.ends, 0, all.ends, at, 4 * part.size);
            at += 4 * part.size;
        }
        return all;
    }

    int size() {
        return size;
    }

    double fromX(int side) {
        return ends[4 * side];
    }

    double fromY(int side) {
        return ends[4 * side + 1];
    }

    double toX(int side) {
        return ends[4 * side + 2];
    }

    double toY(int side) {
        return ends[4 * side + 3];
    }
}
