package corewright.linear;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A nested dissection: the nodes in elimination order, cut into fronts that form a tree. Children come before parents,
 * the root is last.
 */
final class Dissection {
    /** Nodes in a leaf. Fewer make many tiny fronts, more waste work on zeros; 6 to 16 time alike at ten unknowns a node. */
    private static final int LEAF = 9;

    private final BlockMatrix graph;
    private final double[] x;
    private final double[] y;
    private final int[] label;
    private int labels;

    /** The nodes each front eliminates, and the fronts whose left-overs it takes in. */
    final List<int[]> own = new ArrayList<>();

    final List<int[]> children = new ArrayList<>();

    /**
     * @param x place of each node, any unit
     * @param y place of each node
     */
    Dissection(BlockMatrix graph, double[] x, double[] y) {
        this(graph, x, y, List.of(IntStream.range(0, graph.nodes()).toArray()), new int[0]);
    }

    /**
     * @param parts the nodes but the last ones, in parts that do not touch each other; each has a front that holds it
     * @param last nodes that make the root's front; none for a root of its own choice, where there is one part
     */
    Dissection(BlockMatrix graph, double[] x, double[] y, List<int[]> parts, int[] last) {
        this.graph = graph;
        this.x = x;
        this.y = y;
        label = new int[graph.nodes()];
        int[] branches = parts.stream()
                .filter(part -> part.length > 0)
                .mapToInt(this::cutPieces)
                .toArray();
        if (last.length > 0 || branches.length != 1) {
            close(last, branches);
        }
    }

    /** The same of nodes that may hang together in pieces: each has fronts of its own. */
    private int cutPieces(int[] nodes) {
        int[] branches = pieces(nodes).stream().mapToInt(this::cut).toArray();
        return branches.length == 1 ? branches[0] : close(new int[0], branches);
    }

    private List<int[]> pieces(int[] nodes) {
        int open = ++labels;
        int taken = ++labels;
        Arrays.stream(nodes).forEach(v -> label[v] = open);
        List<int[]> pieces = new ArrayList<>();
        int[] queue = new int[nodes.length];
        for (int start : nodes) {
            int end = 0;
            if (label[start] == open) {
                label[start] = taken;
                queue[end++] = start;
            }
            for (int k = 0; k < end; k++) {
                for (int b : graph.neighbours(queue[k])) {
                    if (label[b] == open) {
                        label[b] = taken;
                        queue[end++] = b;
                    }
                }
            }
            if (end > 0) {
                pieces.add(Arrays.stream(queue, 0, end).sorted().toArray());
            }
        }
        return pieces;
    }

    /** Adds the fronts of these nodes; returns the last one, their root. */
    private int cut(int[] nodes) {
        double[] key = extent(nodes, x) >= extent(nodes, y) ? x : y;
        double line = nodes.length <= LEAF ? Double.NaN : median(nodes, key);
        int left = ++labels;
        int right = ++labels;
        int separator = ++labels;
        for (int v : nodes) {
            label[v] = key[v] < line ? left : right;
        }
        int[] near = where(nodes, left);
        if (near.length == 0) { // few nodes, or all at one place
            return close(nodes);
        }
        for (int v : where(nodes, right)) {
            label[v] = touches(v, left) ? separator : right;
        }
        int[] between = where(nodes, separator);
        int[] far = where(nodes, right);
        return far.length == 0 ? close(between, cut(near)) : close(between, cut(near), cut(far));
    }

    private int close(int[] nodes, int... branches) {
        own.add(nodes);
        children.add(branches);
        return own.size() - 1;
    }

    private int[] where(int[] nodes, int wanted) {
        int[] found = new int[nodes.length];
        int n = 0;
        for (int v : nodes) {
            if (label[v] == wanted) {
                found[n++] = v;
            }
        }
        return Arrays.copyOf(found, n);
    }

    private boolean touches(int node, int wanted) {
        for (int b : graph.neighbours(node)) {
            if (label[b] == wanted) {
                return true;
            }
        }
        return false;
    }

    private static double extent(int[] nodes, double[] key) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int v : nodes) {
            low = Math.min(low, key[v]);
            high = Math.max(high, key[v]);
        }
        return high - low;
    }

    /** The middle value; where half or more share the smallest value, the next larger one. */
    private static double median(int[] nodes, double[] key) {
        double[] sorted = new double[nodes.length];
        for (int k = 0; k < nodes.length; k++) {
            sorted[k] = key[nodes[k]];
        }
        Arrays.sort(sorted);
        double middle = sorted[sorted.length / 2];
        for (int k = sorted.length / 2; middle == sorted[0] && k < sorted.length; k++) {
            middle = sorted[k];
        }
        return middle;
    }
}
