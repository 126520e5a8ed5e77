package corewright.field;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Places parted into blocks of few enough members, by halving along the longer side. The parting lines can be put to other
 * places later, so that one place more or less leaves the other blocks as they are.
 */
final class Blocks {
    /** Up to this many places are one block: the exact solution still takes little time. */
    static final int WHOLE = 180;

    /** Members of a block beyond {@link #WHOLE}; a hundred tell range and sill about as well as any number. */
    private static final int MOST = 100;

    /**
     * Members of other blocks that are heard as well, the nearest: more than a ring of a square grid about a block. On the
     * trial decks 44, 60 and 100 give the same overlaps to 0.001; how little the rest matters is held by LatentFieldTest.
     */
    private static final int HALO = 60;

    /** A parting line or, with {@code low} null, a block. */
    private record Line(int axis, double at, List<Line> sides) {}

    private final Line top;

    private Blocks(Line top) {
        this.top = top;
    }

    static Blocks of(Places places) {
        int[] all = IntStream.range(0, places.size()).toArray();
        return new Blocks(all.length <= WHOLE ? new Line(0, 0, List.of()) : halve(places, all));
    }

    private static Line halve(Places p, int[] members) {
        if (members.length <= MOST) {
            return new Line(0, 0, List.of());
        }
        double width = spread(Arrays.stream(members).mapToDouble(p::x).toArray());
        double height = spread(Arrays.stream(members).mapToDouble(p::y).toArray());
        int axis = width >= height ? 0 : 1;
        double[] sorted = Arrays.stream(members)
                .mapToDouble(i -> along(p, i, axis))
                .sorted()
                .toArray();
        double at = 0.5 * (sorted[sorted.length / 2 - 1] + sorted[sorted.length / 2]);
        int[] low = side(p, members, axis, at, true);
        int[] high = side(p, members, axis, at, false);
        if (low.length == 0 || high.length == 0) {
            return new Line(0, 0, List.of()); // all at one place
        }
        return new Line(axis, at, List.of(halve(p, low), halve(p, high)));
    }

    private static double spread(double[] values) {
        return Arrays.stream(values).max().orElse(0)
                - Arrays.stream(values).min().orElse(0);
    }

    private static double along(Places p, int i, int axis) {
        return axis == 0 ? p.x(i) : p.y(i);
    }

    private static int[] side(Places p, int[] members, int axis, double at, boolean low) {
        return Arrays.stream(members).filter(i -> along(p, i, axis) < at == low).toArray();
    }

    /** The members of each block, in a fixed order of blocks; a block may be empty. */
    List<int[]> members(Places places) {
        List<int[]> blocks = new ArrayList<>();
        collect(places, top, IntStream.range(0, places.size()).toArray(), blocks);
        return blocks;
    }

    private static void collect(Places p, Line line, int[] members, List<int[]> blocks) {
        if (line.sides.isEmpty()) {
            blocks.add(members);
            return;
        }
        collect(p, line.sides.get(0), side(p, members, line.axis, line.at, true), blocks);
        collect(p, line.sides.get(1), side(p, members, line.axis, line.at, false), blocks);
    }

    /**
     * The members, then the nearest places outside their bounding box.
     *
     * @param index of all places
     */
    static int[] withHalo(Places p, int[] members, NeighbourIndex index) {
        if (members.length == p.size()) {
            return members;
        }
        double[] box = {Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
        for (int i : members) {
            box[0] = Math.min(box[0], p.x(i));
            box[1] = Math.min(box[1], p.y(i));
            box[2] = Math.max(box[2], p.x(i));
            box[3] = Math.max(box[3], p.y(i));
        }
        int wanted = members.length == 0 ? 0 : Math.min(HALO, p.size() - members.length);
        List<Far> others = new ArrayList<>();
        double first = Math.max(1, 0.25 * (box[2] - box[0] + box[3] - box[1]));
        for (double reach = first; others.size() < wanted; reach *= 2) {
            others = around(p, box, reach, members, index);
        }
        others.sort(Comparator.comparingDouble(Far::squared));
        IntStream halo = others.stream().limit(HALO).mapToInt(Far::place).sorted();
        return IntStream.concat(Arrays.stream(members), halo).toArray();
    }

    private record Far(int place, double squared) {}

    /** Those no farther from the box than {@code reach}, in order of place. */
    private static List<Far> around(Places p, double[] box, double reach, int[] members, NeighbourIndex index) {
        List<Far> found = new ArrayList<>();
        int next = 0;
        for (int i : index.within(box[0] - reach, box[1] - reach, box[2] + reach, box[3] + reach)) {
            while (next < members.length && members[next] < i) {
                next++;
            }
            double dx = Math.max(0, Math.max(box[0] - p.x(i), p.x(i) - box[2]));
            double dy = Math.max(0, Math.max(box[1] - p.y(i), p.y(i) - box[3]));
            boolean own = next < members.length && members[next] == i;
            if (!own && dx * dx + dy * dy <= reach * reach) {
                found.add(new Far(i, dx * dx + dy * dy));
            }
        }
        return found;
    }
}
