package corewright.contour;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.algorithm.PolygonNodeTopology;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/**
 * The polygons inside directed sides, the inside on their left. Sides that run out and back vanish; from each the ring goes on with the
 * side that encloses the same corner of the inside, so that a ring goes round one connected area, and where it touches itself it is
 * parted into outline and holes.
 */
final class BandPolygons {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** Sides from this one on are pieces of the data's edge: straight on, they need no vertex between them. */
    private final int firstRim;

    private final int[] from;
    private final int[] to;
    private final Places places;
    /** By place: a side that starts there, and by side: another with the same start; -1 where there is none. */
    private final int[] start;

    private final int[] sameStart;

    private final boolean[] done;
    /** Sides of the walk at hand; by place, where on it the walk left it, or -1. */
    private final int[] path;

    private final int[] left;
    private final Nesting nesting = new Nesting();

    private BandPolygons(Sides lines, Sides rims) {
        int sides = lines.size() + rims.size();
        firstRim = lines.size();
        from = new int[sides];
        to = new int[sides];
        places = new Places(2 * sides);
        number(lines, 0);
        number(rims, firstRim);
        start = places.filled(-1);
        left = places.filled(-1);
        sameStart = new int[sides];
        done = new boolean[sides];
        path = new int[sides];
    }

    /** In the order of their envelopes' lower left corners, by x, then y. */
    static List<Polygon> of(Sides lines, Sides rims) {
        BandPolygons all = new BandPolygons(lines, rims);
        all.leaveOutAndBack();
        for (int side = 0; side < all.from.length; side++) {
            if (!all.done[side]) {
                all.walk(side);
            }
        }
        return all.polygons();
    }

    private void number(Sides sides, int first) {
        for (int i = 0; i < sides.size(); i++) {
            from[first + i] = places.number(sides.fromX(i), sides.fromY(i));
            to[first + i] = places.number(sides.toX(i), sides.toY(i));
        }
    }

    private void leaveOutAndBack() {
        for (int side = 0; side < from.length; side++) {
            int back = start[to[side]];
            int before = -1;
            while (back >= 0 && to[back] != from[side]) {
                before = back;
                back = sameStart[back];
            }
            if (back < 0) {
                sameStart[side] = start[from[side]];
                start[from[side]] = side;
            } else {
                done[side] = true;
                done[back] = true;
                if (before < 0) {
                    start[to[side]] = sameStart[back];
                } else {
                    sameStart[before] = sameStart[back];
                }
            }
        }
    }

    /** Follows sides until they close, and takes a ring off wherever the walk comes by a place again. */
    private void walk(int first) {
        List<LinearRing> holes = new ArrayList<>();
        LinearRing outline = null;
        int length = 0;
        for (int side = first; ; side = next(side)) {
            int place = from[side];
            if (left[place] >= 0) {
                int loop = left[place];
                LinearRing ring = ring(loop, length);
                if (Orientation.isCCW(ring.getCoordinateSequence())) {
                    outline = ring;
                } else {
                    holes.add(ring);
                }
                length = forget(loop, length);
            }
            if (done[side]) {
                break;
            }
            done[side] = true;
            left[place] = length;
            path[length++] = side;
        }
        nesting.add(outline, holes);
    }

    private int forget(int loop, int length) {
        for (int i = loop; i < length; i++) {
            left[from[path[i]]] = -1;
        }
        return loop;
    }

    /** The side with which the ring goes on: the first clockwise from the way back, as the inside lies to the left. */
    private int next(int side) {
        int best = start[to[side]];
        if (sameStart[best] < 0) {
            return best;
        }
        Coordinate here = places.at(to[side]);
        Coordinate back = places.at(from[side]);
        for (int other = sameStart[best]; other >= 0; other = sameStart[other]) {
            best = isBefore(here, back, places.at(to[other]), places.at(to[best])) ? other : best;
        }
        return best;
    }

    /** Whether, turning clockwise about {@code here} from {@code back}, {@code p} comes before {@code q}. */
    private static boolean isBefore(Coordinate here, Coordinate back, Coordinate p, Coordinate q) {
        boolean pFirst = PolygonNodeTopology.compareAngle(here, p, back) < 0;
        boolean qFirst = PolygonNodeTopology.compareAngle(here, q, back) < 0;
        return pFirst == qFirst ? PolygonNodeTopology.compareAngle(here, p, q) > 0 : pFirst;
    }

    private LinearRing ring(int loop, int end) {
        Coordinate[] ring = new Coordinate[end - loop + 1];
        int count = 0;
        for (int i = loop; i < end; i++) {
            int before = path[i == loop ? end - 1 : i - 1];
            if (!goesStraightOn(before, path[i])) {
                ring[count++] = places.at(from[path[i]]);
            }
        }
        ring[count++] = ring[0].copy();
        return FACTORY.createLinearRing(Arrays.copyOf(ring, count));
    }

    private boolean goesStraightOn(int side, int next) {
        if (side < firstRim || next < firstRim || sameStart[next] >= 0 || start[from[next]] != next) {
            return false;
        }
        int a = from[side];
        int b = from[next];
        int c = to[next];
        return (places.x(a) == places.x(b) && places.x(b) == places.x(c))
                || (places.y(a) == places.y(b) && places.y(b) == places.y(c));
    }

    private List<Polygon> polygons() {
        List<Polygon> polygons = new ArrayList<>();
        for (Nesting.Shell shell : nesting.shells()) {
            polygons.add((Polygon)
                    FACTORY.createPolygon(shell.outline(), shell.holes().toArray(LinearRing[]::new))
                            .norm());
        }
        polygons.sort(Comparator.comparingDouble(
                        (Polygon p) -> p.getEnvelopeInternal().getMinX())
                .thenComparingDouble(p -> p.getEnvelopeInternal().getMinY())
                .thenComparing(Comparator.naturalOrder()));
        return polygons;
    }
}
