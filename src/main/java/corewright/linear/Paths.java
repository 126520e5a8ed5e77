package corewright.linear;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Forward substitution of a few sparse vectors through the fronts that they pass, all of them side by side. */
final class Paths {
    private final Cholesky factor;
    private final Fronts fronts;

    Paths(Cholesky factor, Fronts fronts) {
        this.factor = factor;
        this.fronts = fronts;
    }

    /** See {@link Cholesky#eliminate}. */
    double[][] eliminate(List<SparseVector> vectors, int top, double[] products) {
        BitSet visited = new BitSet();
        vectors.forEach(v -> markPath(v, top, visited));
        Map<Integer, double[][]> own = own(vectors);
        Map<Integer, double[][]> leftOver = new HashMap<>();
        for (int front = visited.nextSetBit(0); front >= 0; front = visited.nextSetBit(front + 1)) {
            double[][] mine = own.remove(front);
            passUp(front, mine == null ? new double[vectors.size()][fronts.pivots[front]] : mine, leftOver, products);
        }
        double[][] left = leftOver.get(top);
        return left == null ? new double[vectors.size()][fronts.rows[top].length - fronts.pivots[top]] : left;
    }

    private void markPath(SparseVector v, int top, BitSet visited) {
        for (int k = 0; k < v.length(); k++) {
            int f = fronts.frontOf[v.index(k)];
            while (!visited.get(f)) {
                visited.set(f);
                if (f == top) {
                    break;
                }
                f = fronts.parent[f];
            }
        }
    }

    /** What the vectors have at the pivots of each front they touch. */
    private Map<Integer, double[][]> own(List<SparseVector> vectors) {
        Map<Integer, double[][]> own = new HashMap<>();
        for (int r = 0; r < vectors.size(); r++) {
            SparseVector v = vectors.get(r);
            for (int k = 0; k < v.length(); k++) {
                int front = fronts.frontOf[v.index(k)];
                double[][] mine = own.computeIfAbsent(front, f -> new double[vectors.size()][fronts.pivots[f]]);
                mine[r][fronts.rowOf[v.index(k)]] += v.value(k);
            }
        }
        return own;
    }

    /**
     * One front: gathers, eliminates, adds to the products, leaves the rest to the parent.
     *
     * @param mine what the vectors have at the front's pivots
     */
    private void passUp(int f, double[][] mine, Map<Integer, double[][]> leftOver, double[] result) {
        int n = mine.length;
        int p = fronts.pivots[f];
        double[][] further = new double[n][fronts.rows[f].length - p];
        for (int child : fronts.children[f]) {
            double[][] from = leftOver.remove(child);
            if (from != null) {
                int[] map = fronts.rowInParent[child];
                for (int r = 0; r < n; r++) {
                    for (int i = 0; i < map.length; i++) {
                        if (map[i] < p) {
                            mine[r][map[i]] += from[r][i];
                        } else {
                            further[r][map[i] - p] += from[r][i];
                        }
                    }
                }
            }
        }
        Dense.forward(mine, further, factor.own(f), factor.rest(f));
        for (int k = 0; k < result.length; k++) {
            result[k] += Dense.dot(mine[k], mine[result.length + k], 0);
        }
        leftOver.put(f, further);
    }
}
