package corewright.linear;

import java.util.Arrays;

/**
 * A matrix in which nodes are parted in two: their first few unknowns, and the rest. Where the two hang together nowhere, as stretching and
 * bending of a plate do not, they fall apart into matrices of their own, and fronts are smaller. Unknowns keep their numbers.
 *
 * @param matrix with the blocks that hold anything
 * @param of the node of which each of its nodes is a part
 */
@SuppressWarnings("ArrayRecordComponent") // handed on, never compared
record Parted(BlockMatrix matrix, int[] of) {
    /** @param lead how many unknowns of each node come first; 0 where a node stays whole */
    static Parted of(BlockMatrix a, int[] lead) {
        int n = a.nodes();
        int[] first = new int[n + 1]; // number of each node's first part
        for (int v = 0; v < n; v++) {
            first[v + 1] = first[v] + (lead[v] > 0 ? 2 : 1);
        }
        int[] of = new int[first[n]];
        int[] start = new int[of.length]; // within its node
        int[] sizes = new int[of.length];
        for (int v = 0; v < n; v++) {
            Arrays.fill(of, first[v], first[v + 1], v);
            int rest = first[v + 1] - 1;
            sizes[first[v]] = lead[v];
            start[rest] = lead[v];
            sizes[rest] = a.size(v) - lead[v];
        }
        BlockMatrix.Builder parts = new BlockMatrix.Builder(sizes);
        for (int v = 0; v < n; v++) {
            for (int i = first[v]; i < first[v + 1]; i++) {
                for (int b : a.neighbours(v)) {
                    for (int j = first[b]; j < first[b + 1] && j <= i; j++) {
                        double[] part = a.part(v, start[i], sizes[i], b, start[j], sizes[j]);
                        if (i == j || holdsAnything(part)) {
                            parts.put(i, j, part);
                        }
                    }
                }
            }
        }
        return new Parted(parts.build(), of);
    }

    private static boolean holdsAnything(double[] part) {
        for (double value : part) {
            if (value != 0) {
                return true;
            }
        }
        return false;
    }

    /** A number of each node, by part. */
    double[] byPart(double[] x) {
        return Arrays.stream(of).mapToDouble(v -> x[v]).toArray();
    }

    /** The parts of some nodes, ascending. */
    int[] parts(int[] nodes) {
        int[] all = new int[2 * nodes.length];
        int n = 0;
        for (int k = 0; k < of.length; k++) {
            if (Arrays.binarySearch(nodes, of[k]) >= 0) {
                all[n++] = k;
            }
        }
        return Arrays.copyOf(all, n);
    }
}
