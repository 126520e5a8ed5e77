package corewright.linear;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Forward substitution {@code U⁻ᵀ v} of many sparse vectors. A vector takes part from the lowest front it touches up to the root; those
 * that meet at a front are eliminated side by side.
 */
abstract class Climb {
    private final Cholesky factor;
    private final Fronts fronts;
    private final List<SparseVector> vectors;

    /** The vectors that take part in each front, ascending. */
    private final int[][] here;

    Climb(Cholesky factor, Fronts fronts, List<SparseVector> vectors) {
        this.factor = factor;
        this.fronts = fronts;
        this.vectors = vectors;
        BitSet[] touching = new BitSet[fronts.root + 1];
        Arrays.setAll(touching, f -> new BitSet());
        for (int v = 0; v < vectors.size(); v++) {
            for (int k = 0; k < vectors.get(v).length(); k++) {
                touching[fronts.frontOf[vectors.get(v).index(k)]].set(v);
            }
        }
        here = new int[fronts.root + 1][];
        for (int f = 0; f <= fronts.root; f++) { // parents come after their children
            here[f] = touching[f].stream().toArray();
            if (f < fronts.root) {
                touching[fronts.parent[f]].or(touching[f]);
            }
        }
    }

    /**
     * Told of every front that vectors take part in, from the leaves to the root.
     *
     * @param some numbers of the vectors, ascending
     * @param mine what {@code U⁻ᵀ v} of each is at the front's pivots
     */
    abstract void take(int[] some, double[][] mine);

    /** Multiplications that {@link #climb} takes. */
    final double work() {
        double sum = 0;
        for (int f = 0; f <= fronts.root; f++) {
            double p = fronts.pivots[f];
            sum += here[f].length * p * (fronts.rows[f].length - p / 2);
        }
        return sum;
    }

    final void climb() {
        Map<Integer, double[][]> left = new HashMap<>();
        for (int f = 0; f <= fronts.root; f++) {
            if (here[f].length > 0) {
                left.put(f, eliminate(f, left));
            }
        }
    }

    /** What the vectors leave on a front's boundary. */
    private double[][] eliminate(int f, Map<Integer, double[][]> left) {
        int p = fronts.pivots[f];
        double[][] mine = new double[here[f].length][p];
        double[][] further = new double[here[f].length][fronts.rows[f].length - p];
        for (int k = 0; k < mine.length; k++) {
            takeOwn(f, vectors.get(here[f][k]), mine[k]);
        }
        for (int child : fronts.children[f]) {
            double[][] from = left.remove(child);
            if (from != null) {
                takeLeft(here[child], from, fronts.rowInParent[child], here[f], mine, further);
            }
        }
        IntStream.range(0, mine.length)
                .parallel()
                .forEach(k -> Dense.forward(
                        new double[][] {mine[k]}, new double[][] {further[k]}, factor.own(f), factor.rest(f)));
        take(here[f], mine);
        return further;
    }

    private void takeOwn(int f, SparseVector v, double[] x) {
        for (int k = 0; k < v.length(); k++) {
            if (fronts.frontOf[v.index(k)] == f) {
                x[fronts.rowOf[v.index(k)]] += v.value(k);
            }
        }
    }

    private static void takeLeft(
            int[] some, double[][] from, int[] map, int[] all, double[][] mine, double[][] further) {
        for (int k = 0; k < some.length; k++) {
            int at = Arrays.binarySearch(all, some[k]);
            int p = mine[at].length;
            for (int i = 0; i < map.length; i++) {
                if (map[i] < p) {
                    mine[at][map[i]] += from[k][i];
                } else {
                    further[at][map[i] - p] += from[k][i];
                }
            }
        }
    }
}
