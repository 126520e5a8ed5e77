package corewright.linear;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** The products {@code v_i' K⁻¹ v_j = (U⁻ᵀ v_i)·(U⁻ᵀ v_j)} of all pairs of sparse vectors. Every sum has a fixed order. */
final class Compliance extends Climb {
    private final double[][] rows;

    /** @param first rows wanted */
    Compliance(Cholesky factor, Fronts fronts, List<SparseVector> vectors, int first) {
        super(factor, fronts, vectors);
        rows = new double[first][vectors.size()];
    }

    double[][] rows() {
        climb();
        for (int i = 0; i < rows.length; i++) {
            for (int j = 0; j < i; j++) {
                rows[i][j] = rows[j][i];
            }
        }
        return rows;
    }

    @Override
    void take(int[] here, double[][] mine) {
        int p = mine[0].length;
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
