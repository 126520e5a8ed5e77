package corewright.linear;

import java.util.Arrays;
import java.util.List;

/**
 * What is left of a matrix K on some nodes k when all others r are eliminated, {@code K_kk - K_kr K_rr⁻¹ K_rk}, and of forces f
 * anywhere, {@code f_k - K_kr K_rr⁻¹ f_r}. Nodes that have eliminated neighbours are all coupled in it.
 */
public final class Condensation {
    private final Eliminated others;

    /** Of each unknown of K, its number among those kept; -1 if it is eliminated. */
    private final int[] kept;

    private final BlockMatrix matrix;

    Condensation(BlockMatrix a, int[] keep, Eliminated.Left left) {
        others = left.others();
        int[] rows = others.rows();
        int[] nodeOf = a.nodesOf(rows);
        matrix = a.among(keep, Arrays.stream(nodeOf).sorted().distinct().toArray());
        kept = new int[a.size()];
        Arrays.fill(kept, -1);
        for (int k = 0; k < keep.length; k++) {
            for (int i = 0; i < a.size(keep[k]); i++) {
                kept[a.first(keep[k]) + i] = matrix.first(k) + i;
            }
        }
        int[] node =
                Arrays.stream(nodeOf).map(v -> Arrays.binarySearch(keep, v)).toArray();
        int[] within = new int[rows.length];
        Arrays.setAll(within, i -> rows[i] - a.first(nodeOf[i]));
        for (int i = 0; i < rows.length; i++) {
            int block = -1;
            for (int j = 0; j <= i; j++) {
                if (j == 0 || node[j] != node[j - 1]) {
                    block = matrix.blockAt(Math.max(node[i], node[j]), Math.min(node[i], node[j]));
                }
                double value = left.lower()[i][j];
                matrix.add(block, node[i], within[i], node[j], within[j], value);
                if (node[i] == node[j] && i != j) {
                    matrix.add(block, node[j], within[j], node[i], within[i], value);
                }
            }
        }
    }

    /**
     * @param x place of each node, for the elimination order
     * @param y place of each node
     * @param keep nodes, ascending
     * @throws NotPositiveDefiniteException if the eliminated part is not positive definite
     */
    public static Condensation of(BlockMatrix a, double[] x, double[] y, int[] keep) {
        return new Condensation(a, keep, Cholesky.eliminated(a, x, y, keep));
    }

    /** The matrix that is left; nodes are numbered from 0 in the order of those kept. */
    public BlockMatrix matrix() {
        return matrix;
    }

    /** Values of the unknowns kept among all of K, the others zero. */
    double[] onWhole(double[] values) {
        double[] whole = new double[kept.length];
        for (int i = 0; i < whole.length; i++) {
            whole[i] = kept[i] < 0 ? 0 : values[kept[i]];
        }
        return whole;
    }

    /** The front that eliminates the last of the others; {@link Eliminated#NONE} without one. */
    int eliminated() {
        return others.front();
    }

    /** What is left of forces, by rows; unknowns are numbered as in the matrix. */
    public double[][] carried(List<SparseVector> forces) {
        return others.carried(forces, kept, matrix.size());
    }
}
