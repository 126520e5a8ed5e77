package corewright.linear;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A sparse symmetric matrix made of dense blocks, one for each pair of adjacent nodes; blocks (a, b) with a ≥ b are kept.
 * Node a owns the unknowns {@code first(a) .. first(a + 1) - 1}; a node may own none.
 */
public final class BlockMatrix {
    private final int[] first;
    private final int[] neighbourStart;
    private final int[] neighbour;
    private final int[] blockAt;
    private final double[] value;

    private BlockMatrix(BlockMatrix other) {
        first = other.first;
        neighbourStart = other.neighbourStart;
        neighbour = other.neighbour;
        blockAt = other.blockAt;
        value = other.value.clone();
    }

    /**
     * A zero matrix.
     *
     * @param sizes unknowns of each node
     * @param cliques sets of nodes that are coupled with each other (the nodes of each element)
     */
    public BlockMatrix(int[] sizes, int[][] cliques) {
        int nodes = sizes.length;
        first = new int[nodes + 1];
        for (int a = 0; a < nodes; a++) {
            first[a + 1] = first[a] + sizes[a];
        }
        int[][] lists = neighbours(nodes, cliques);
        neighbourStart = new int[nodes + 1];
        for (int a = 0; a < nodes; a++) {
            neighbourStart[a + 1] = neighbourStart[a] + lists[a].length;
        }
        neighbour = new int[neighbourStart[nodes]];
        blockAt = new int[neighbour.length];
        int length = 0;
        for (int a = 0; a < nodes; a++) {
            System.arraycopy(lists[a], 0, neighbour, neighbourStart[a], lists[a].length);
            for (int k = neighbourStart[a]; k < neighbourStart[a + 1] && neighbour[k] <= a; k++) {
                blockAt[k] = length;
                length = Math.addExact(length, sizes[a] * sizes[neighbour[k]]);
            }
        }
        value = new double[length];
    }

    private BlockMatrix(Builder b) {
        int nodes = b.first.length - 1;
        first = b.first;
        value = Arrays.copyOf(b.value, b.length);
        neighbourStart = new int[nodes + 1];
        for (int[] pair : b.pairs) {
            neighbourStart[pair[0] + 1]++;
            neighbourStart[pair[1] + 1] += pair[0] == pair[1] ? 0 : 1;
        }
        for (int a = 0; a < nodes; a++) {
            neighbourStart[a + 1] += neighbourStart[a];
        }
        neighbour = new int[neighbourStart[nodes]];
        blockAt = new int[neighbour.length];
        int[] next = Arrays.copyOf(neighbourStart, nodes);
        for (int[] pair : b.pairs) { // by row: so neighbours before a node come first, then those after it
            blockAt[next[pair[0]]] = pair[2];
            neighbour[next[pair[0]]++] = pair[1];
            if (pair[0] != pair[1]) {
                neighbour[next[pair[1]]++] = pair[0];
            }
        }
    }

    /** Puts a matrix together from its blocks, row by row of the lower triangle. */
    static final class Builder {
        private final int[] first;
        private final List<int[]> pairs = new ArrayList<>();
        private double[] value = new double[1 << 16];
        private int length;

        /** @param sizes unknowns of each node */
        Builder(int[] sizes) {
            first = new int[sizes.length + 1];
            for (int a = 0; a < sizes.length; a++) {
                first[a + 1] = first[a] + sizes[a];
            }
        }

        /** Adds the block (a, b), a ≥ b; blocks come in ascending order of a, then b, and each diagonal one comes. */
        void put(int a, int b, double[] block) {
            if (length + block.length > value.length) {
                value = Arrays.copyOf(value, Math.addExact(value.length, value.length));
            }
            System.arraycopy(block, 0, value, length, block.length);
            pairs.add(new int[] {a, b, length});
            length += block.length;
        }

        BlockMatrix build() {
            return new BlockMatrix(this);
        }
    }

    /** A matrix with the same entries that can be changed on its own. */
    public BlockMatrix copy() {
        return new BlockMatrix(this);
    }

    public int nodes() {
        return first.length - 1;
    }

    /** Number of unknowns. */
    public int size() {
        return first[nodes()];
    }

    /** First unknown of a node. */
    public int first(int node) {
        return first[node];
    }

    /** Number of unknowns of a node. */
    public int size(int node) {
        return first[node + 1] - first[node];
    }

    /**
     * Adds a dense block between the unknowns of nodes a and b; only a ≥ b is kept, the rest is symmetry.
     *
     * @param block row-major, size(a) × size(b)
     */
    public void add(int a, int b, double[] block) {
        if (a < b) {
            return;
        }
        int at = blockAt(a, b);
        int length = size(a) * size(b);
        for (int k = 0; k < length; k++) {
            value[at + k] += block[k];
        }
    }

    /** Sets one entry of the block (a, b), a ≥ b; on the diagonal the mirror image is another one. */
    void set(int a, int row, int b, int column, double amount) {
        value[blockAt(a, b) + row * size(b) + column] = amount;
    }

    /** Adds to one entry of the block (a, a), and to its mirror image. */
    public void addToDiagonalBlock(int a, int row, int column, double amount) {
        int at = blockAt(a, a);
        value[at + row * size(a) + column] += amount;
        if (row != column) {
            value[at + column * size(a) + row] += amount;
        }
    }

    /** The product with a vector. */
    public double[] times(double[] x) {
        double[] y = new double[size()];
        for (int a = 0; a < nodes(); a++) {
            for (int k = neighbourStart[a]; k < neighbourStart[a + 1] && neighbour[k] <= a; k++) {
                multiplyBlock(a, neighbour[k], blockAt[k], x, y);
            }
        }
        return y;
    }

    /** An entry of the matrix. */
    @FunctionalInterface
    interface Entry {
        void at(int row, int column, double value);
    }

    /** Visits every entry that is kept, those of the diagonal's blocks on both sides. */
    void forEach(Entry visitor) {
        for (int a = 0; a < nodes(); a++) {
            for (int k = neighbourStart[a]; k < neighbourStart[a + 1] && neighbour[k] <= a; k++) {
                int b = neighbour[k];
                for (int e = 0; e < size(a) * size(b); e++) {
                    visitor.at(first[a] + e / size(b), first[b] + e % size(b), value[blockAt[k] + e]);
                }
            }
        }
    }

    private void multiplyBlock(int a, int b, int at, double[] x, double[] y) {
        int rows = size(a);
        int columns = size(b);
        for (int i = 0; i < rows; i++) {
            for (int j = 0; j < columns; j++) {
                double v = value[at + i * columns + j];
                y[first[a] + i] += v * x[first[b] + j];
                if (a != b) {
                    y[first[b] + j] += v * x[first[a] + i];
                }
            }
        }
    }

    /**
     * The entries between some nodes, with room for entries between all of a part of them.
     *
     * @param nodes ascending; numbered from 0 in this order
     * @param coupled the part, a subset
     */
    BlockMatrix among(int[] nodes, int[] coupled) {
        List<int[]> cliques = new ArrayList<>();
        cliques.add(
                Arrays.stream(coupled).map(v -> Arrays.binarySearch(nodes, v)).toArray());
        for (int a = 0; a < nodes.length; a++) {
            for (int b : neighbours(nodes[a])) {
                int at = Arrays.binarySearch(nodes, b);
                if (at >= 0 && at <= a) {
                    cliques.add(new int[] {a, at});
                }
            }
        }
        BlockMatrix part =
                new BlockMatrix(Arrays.stream(nodes).map(this::size).toArray(), cliques.toArray(int[][]::new));
        for (int a = 0; a < nodes.length; a++) {
            for (int b : neighbours(nodes[a])) {
                int at = Arrays.binarySearch(nodes, b);
                if (at >= 0 && at <= a) {
                    int from = blockAt(nodes[a], b);
                    part.add(a, at, Arrays.copyOfRange(value, from, from + size(nodes[a]) * size(b)));
                }
            }
        }
        return part;
    }

    /** Rows and columns of the block (a, b), whichever of the two is kept; of a diagonal block too. */
    double[] part(int a, int row, int rows, int b, int column, int columns) {
        int at = blockAt(Math.max(a, b), Math.min(a, b));
        double[] part = new double[rows * columns];
        for (int i = 0; i < rows; i++) {
            for (int j = 0; j < columns; j++) {
                part[i * columns + j] = a >= b
                        ? value[at + (row + i) * size(b) + column + j]
                        : value[at + (column + j) * size(a) + row + i];
            }
        }
        return part;
    }

    /** Adds to an entry between two nodes; only a ≥ b is kept, and of a diagonal block both halves. */
    void add(int at, int a, int row, int b, int column, double amount) {
        if (a >= b) {
            value[at + row * size(b) + column] += amount;
        } else {
            value[at + column * size(a) + row] += amount;
        }
    }

    /** The nodes adjacent to a node, itself among them, ascending. */
    int[] neighbours(int node) {
        return Arrays.copyOfRange(neighbour, neighbourStart[node], neighbourStart[node + 1]);
    }

    /** The node of each of some unknowns. */
    int[] nodesOf(int[] unknowns) {
        int[] node = new int[size()];
        for (int a = 0; a < nodes(); a++) {
            Arrays.fill(node, first[a], first[a + 1], a);
        }
        return Arrays.stream(unknowns).map(i -> node[i]).toArray();
    }

    /** Where the block (a, b), a ≥ b, begins in {@link #values}. */
    int blockAt(int a, int b) {
        int k = Arrays.binarySearch(neighbour, neighbourStart[a], neighbourStart[a + 1], b);
        if (k < 0) {
            throw new IllegalArgumentException("nodes " + a + " and " + b + " are in no common clique");
        }
        return blockAt[k];
    }

    double[] values() {
        return value;
    }

    private static int[][] neighbours(int nodes, int[][] cliques) {
        int[] count = new int[nodes];
        for (int[] clique : cliques) {
            for (int a : clique) {
                count[a] += clique.length;
            }
        }
        int[][] lists = new int[nodes][];
        for (int a = 0; a < nodes; a++) {
            lists[a] = new int[count[a] + 1];
            lists[a][count[a]] = a;
        }
        for (int[] clique : cliques) {
            for (int a : clique) {
                for (int b : clique) {
                    lists[a][--count[a]] = b;
                }
            }
        }
        for (int a = 0; a < nodes; a++) {
            lists[a] = distinct(lists[a]);
        }
        return lists;
    }

    /** The numbers of a list, each once, ascending. */
    private static int[] distinct(int[] list) {
        Arrays.sort(list);
        int n = 0;
        for (int number : list) {
            if (n == 0 || list[n - 1] != number) {
                list[n++] = number;
            }
        }
        return Arrays.copyOf(list, n);
    }
}
