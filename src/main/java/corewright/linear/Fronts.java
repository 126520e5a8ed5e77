package corewright.linear;

import java.util.Arrays;
import java.util.stream.IntStream;

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
        IntStream later = IntStream.range(start, end).flatMap(p -> Arrays.stream(a.neighbours(order[p])));
        for (int child : children[f]) {
            later = IntStream.concat(later, Arrays.stream(nodes[child]));
        }
        return later.map(v -> position[v])
                .filter(p -> p >= end)
                .sorted()
                .distinct()
                .toArray();
    }

    private void number(BlockMatrix a, int f) {
        nodes[f] = Arrays.stream(boundary[f]).map(p -> order[p]).toArray();
        int[] eliminated = Arrays.stream(own[f]).flatMap(v -> unknowns(a, v)).toArray();
        pivots[f] = eliminated.length;
        subtree[f] = eliminated.length;
        rows[f] = IntStream.concat(
                        Arrays.stream(eliminated), Arrays.stream(nodes[f]).flatMap(v -> unknowns(a, v)))
                .toArray();
        boundaryRow[f] = new int[nodes[f].length];
        int next = pivots[f];
        for (int b = 0; b < nodes[f].length; b++) {
            boundaryRow[f][b] = next;
            next += a.size(nodes[f][b]);
        }
        for (int row = 0; row < eliminated.length; row++) {
            frontOf[eliminated[row]] = f;
            rowOf[eliminated[row]] = row;
        }
        for (int child : children[f]) {
            parent[child] = f;
            subtree[f] += subtree[child];
            rowInParent[child] = Arrays.stream(nodes[child])
                    .flatMap(v -> IntStream.range(0, a.size(v)).map(k -> rowIn(f, a, v) + k))
                    .toArray();
        }
    }

    /** The nodes on a front's boundary, by elimination position. */
    int[] boundaryNodes(int f) {
        return nodes[f];
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

    private static IntStream unknowns(BlockMatrix a, int node) {
        return IntStream.range(a.first(node), a.first(node) + a.size(node));
    }
}
