package corewright.linear;

import java.util.Arrays;
import java.util.BitSet;

/** What the factorisation needs to know before it sees a number: the fronts, their rows, and where left-overs go. */
final class Fronts {
    /** The root, and the number of fronts less one. */
    final int root;

    final int[] parent;

    /** Fronts that hand their left-over to each front. */
    final int[][] children;

    /** Unknowns of each front's rows: the ones it eliminates first, then its boundary by elimination position. */
    final int[][] rows;

    /** How many unknowns each front eliminates. */
    final int[] pivots;

    /** For each boundary row of a front, its row in the parent. */
    final int[][] rowInParent;

    /** Where each unknown is eliminated. */
    final int[] frontOf;

    final int[] rowOf;

    /** Unknowns in the whole subtree under each front. */
    final int[] subtree;

    private final int[] position;
    private final int[] order;
    private final int[][] nodes;
    private final int[][] own;

    /** Elimination positions of each front's boundary nodes, and the first row of each. */
    private final int[][] boundary;

    private final int[][] boundaryRow;

    Fronts(BlockMatrix a, Dissection tree) {
        int n = tree.own.size();
        root = n - 1;
        parent = new int[n];
        children = tree.children.toArray(int[][]::new);
        rows = new int[n][];
        pivots = new int[n];
        rowInParent = new int[n][];
        frontOf = new int[a.size()];
        rowOf = new int[a.size()];
        subtree = new int[n];
        nodes = new int[n][];
        own = tree.own.toArray(int[][]::new);
        boundary = new int[n][];
        boundaryRow = new int[n][];
        order = tree.own.stream().flatMapToInt(Arrays::stream).toArray();
        position = new int[order.length];
        for (int p = 0; p < order.length; p++) {
            position[order[p]] = p;
        }
        Arrays.fill(parent, -1);
        Arrays.fill(frontOf, -1);
        int start = 0;
        for (int f = 0; f < n; f++) {
            int end = start + own[f].length;
            boundary[f] = boundary(a, f, start, end);
            number(a, f);
            start = end;
        }
    }

    /** Positions of the nodes that remain coupled with a front's own once these are eliminated. */
    private int[] boundary(BlockMatrix a, int f, int start, int end) {
        BitSet later = new BitSet();
        for (int p = start; p < end; p++) {
            mark(a.neighbours(order[p]), end, later);
        }
        for (int child : children[f]) {
            mark(nodes[child], end, later);
        }
        int[] found = new int[later.cardinality()];
        int next = 0;
        for (int p = later.nextSetBit(end); p >= 0; p = later.nextSetBit(p + 1)) {
            found[next++] = p;
        }
        return found;
    }

    private void mark(int[] some, int end, BitSet later) {
        for (int v : some) {
            if (position[v] >= end) {
                later.set(position[v]);
            }
        }
    }

    private void number(BlockMatrix a, int f) {
        int n = boundary[f].length;
        nodes[f] = new int[n];
        boundaryRow[f] = new int[n];
        pivots[f] = unknowns(a, own[f]);
        int next = pivots[f];
        for (int b = 0; b < n; b++) {
            nodes[f][b] = order[boundary[f][b]];
            boundaryRow[f][b] = next;
            next += a.size(nodes[f][b]);
        }
        rows[f] = new int[next];
        fill(a, own[f], rows[f], 0);
        fill(a, nodes[f], rows[f], pivots[f]);
        for (int row = 0; row < pivots[f]; row++) {
            frontOf[rows[f][row]] = f;
            rowOf[rows[f][row]] = row;
        }
        subtree[f] = pivots[f];
        for (int child : children[f]) {
            parent[child] = f;
            subtree[f] += subtree[child];
            rowInParent[child] = rowsIn(f, a, nodes[child]);
        }
    }

    private static int unknowns(BlockMatrix a, int[] some) {
        int n = 0;
        for (int v : some) {
            n += a.size(v);
        }
        return n;
    }

    /** Writes the unknowns of nodes one after the other. */
    private static void fill(BlockMatrix a, int[] some, int[] to, int from) {
        int next = from;
        for (int v : some) {
            for (int k = 0; k < a.size(v); k++) {
                to[next++] = a.first(v) + k;
            }
        }
    }

    private int[] rowsIn(int f, BlockMatrix a, int[] some) {
        int[] found = new int[unknowns(a, some)];
        int next = 0;
        for (int v : some) {
            int row = a.size(v) == 0 ? 0 : rowIn(f, a, v);
            for (int k = 0; k < a.size(v); k++) {
                found[next++] = row + k;
            }
        }
        return found;
    }

    /** The nodes a front eliminates, in their order. */
    int[] ownNodes(int f) {
        return own[f];
    }

    /** The first row that a node, eliminated in a front or on its boundary, has in it. */
    int rowIn(int f, BlockMatrix a, int node) {
        int first = a.first(node);
        return frontOf[first] == f ? rowOf[first] : boundaryRow[f][Arrays.binarySearch(boundary[f], position[node])];
    }

    int positionOf(int node) {
        return position[node];
    }
}
