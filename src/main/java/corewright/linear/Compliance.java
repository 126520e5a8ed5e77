package corewright.linear;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The products {@code v_i' K⁻¹ v_j = (U⁻ᵀ v_i)·(U⁻ᵀ v_j)} of all pairs of sparse vectors. A vector takes part from the lowest
 * front it touches up to the root. Every sum has a fixed order.
 */
final class Compliance {
    private final Cholesky factor;
    private final Fronts fronts;
    private final List<SparseVector> vectors;

    /** The vectors that touch what a front eliminates. */
    private final Map<Integer, BitSet> touching = new HashMap<>();

    private final double[][] rows;

    /** @param first rows wanted */
    Compliance(Cholesky factor, Fronts fronts, List<SparseVector> vectors, int first) {
        this.factor = factor;
        this.fronts = fronts;
        this.vectors = vectors;
        rows = new double[first][vectors.size()];
        for (int v = 0; v < vectors.size(); v++) {
            for (int k = 0; k < vectors.get(v).length(); k++) {
                touching.computeIfAbsent(fronts.frontOf[vectors.get(v).index(k)], f -> new BitSet())
                        .set(v);
            }
        }
    }

    /** What vectors leave on a front's boundary. */
    @SuppressWarnings("ArrayRecordComponent") // two handles passed together, never compared
    private record Left(int[] vectors, double[][] boundary) {}

    double[][] rows() {
        Map<Integer, Left> left = new HashMap<>();
        for (int f = 0; f <= fronts.root; f++) {
            BitSet here = new BitSet();
            here.or(touching.getOrDefault(f, new BitSet()));
            for (int child : fronts.children[f]) {
                if (left.containsKey(child)) {
                    Arrays.stream(left.get(child).vectors).forEach(here::set);
                }
            }
            if (!here.isEmpty()) {
                left.put(f, eliminate(f, here.stream().toArray(), left));
            }
        }
        for (int i = 0; i < rows.length; i++) {
            for (int j = 0; j < i; j++) {
                rows[i][j] = rows[j][i];
            }
        }
        return rows;
    }

    private Left eliminate(int f, int[] here, Map<Integer, Left> left) {
        int p = fronts.pivots[f];
        int r = fronts.rows[f].length - p;
        double[][] mine = new double[here.length][p];
        double[][] further = new double[here.length][r];
        for (int k = 0; k < here.length; k++) {
            takeOwn(f, vectors.get(here[k]), mine[k]);
        }
        for (int child : fronts.children[f]) {
            Left from = left.remove(child);
            if (from != null) {
                takeLeft(from, fronts.rowInParent[child], here, mine, further);
            }
        }
        IntStream.range(0, here.length)
                .parallel()
                .forEach(k -> Dense.forward(
                        new double[][] {mine[k]}, new double[][] {further[k]}, factor.own(f), factor.rest(f)));
        addProducts(here, mine, p);
        return new Left(here, further);
    }

    private void takeOwn(int f, SparseVector v, double[] x) {
        for (int k = 0; k < v.length(); k++) {
            if (fronts.frontOf[v.index(k)] == f) {
                x[fronts.rowOf[v.index(k)]] += v.value(k);
            }
        }
    }

    private static void takeLeft(Left from, int[] map, int[] here, double[][] mine, double[][] further) {
        for (int k = 0; k < from.vectors.length; k++) {
            int at = Arrays.binarySearch(here, from.vectors[k]);
            int p = mine[at].length;
            for (int i = 0; i < map.length; i++) {
                if (map[i] < p) {
                    mine[at][map[i]] += from.boundary[k][i];
                } else {
                    further[at][map[i] - p] += from.boundary[k][i];
                }
            }
        }
    }

    private void addProducts(int[] here, double[][] mine, int p) {
        double[][] across = new double[p][here.length];
        for (int k = 0; k < here.length; k++) {
            for (int i = 0; i < p; i++) {
                across[i][k] = mine[k][i];
            }
        }
        int some = (int) Arrays.stream(here).filter(v -> v < rows.length).count(); // they come first
        IntStream.range(0, some).parallel().forEach(k -> {
            double[] less = new double[here.length];
            Dense.subtract(less, across, mine[k], 0, k);
            for (int j = k; j < less.length; j++) {
                rows[here[k]][here[j]] -= less[j];
            }
        });
    }
}
