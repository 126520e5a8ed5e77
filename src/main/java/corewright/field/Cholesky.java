package corewright.field;

import corewright.linear.Dense;
import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * Dense Cholesky factor {@code A = L L'} of a symmetric matrix. Source: Golub and Van Loan (2013), Matrix Computations,
 * 4th ed., section 4.2. Matrices are arrays of rows.
 */
final class Cholesky {
    /** Rows applied together: 32 rows of 1000 doubles (256 kB) stay in a second-level cache. Not tuned further. */
    private static final int PANEL = 32;

    /** A pivot below this part of its diagonal is rounding: some hundred units of 1e-16 summed up. Judgement. */
    private static final double TINY = 1e-13;

    /** L in the lower triangle and its mirror image in the upper one. */
    private final double[][] l;

    private Cholesky(double[][] l) {
        this.l = l;
    }

    /**
     * Factors a positive definite matrix. Where rounding makes it indefinite (a smooth variogram without nugget over close
     * samples) the diagonal is raised by 1e-12 of itself, then ten times that and so on: the least that factors.
     *
     * @param a upper triangle read; kept as it is
     */
    static Cholesky of(double[][] a) {
        double raise = 0;
        while (true) {
            try {
                return factor(a, raise, pivot -> {
                    throw new ArithmeticException("vanishing pivot " + pivot);
                });
            } catch (ArithmeticException e) {
                raise = raise == 0 ? 1e-12 : 10 * raise;
                if (!(raise <= 1e-3)) {
                    throw new ArithmeticException("covariance of " + a.length + " samples is not positive definite");
                }
            }
        }
    }

    /** Factors a positive semi-definite matrix: a pivot that vanishes gives a zero column (that node is certain). */
    static Cholesky ofSemiDefinite(double[][] a) {
        return factor(a, 0, pivot -> 0);
    }

    /**
     * Factors a matrix known to be well positive definite, in its own place.
     *
     * @param a upper triangle read; becomes the factor's
     */
    static Cholesky in(double[][] a) {
        Dense.eliminate(a, (k, pivot) -> {
            if (!(pivot > 0)) {
                throw new ArithmeticException("pivot " + pivot + " of a matrix that is positive definite");
            }
            return 1 / Math.sqrt(pivot);
        });
        return mirrored(a);
    }

    private static Cholesky factor(double[][] a, double raise, DoubleUnaryOperator vanished) {
        int n = a.length;
        double[][] u = new double[n][];
        for (int i = 0; i < n; i++) {
            u[i] = a[i].clone();
            u[i][i] *= 1 + raise;
        }
        Dense.eliminate(u, (k, pivot) -> pivot > TINY * a[k][k] ? 1 / Math.sqrt(pivot) : vanished.applyAsDouble(pivot));
        return mirrored(u);
    }

    private static Cholesky mirrored(double[][] u) {
        int n = u.length;
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                u[j][i] = u[i][j];
            }
        }
        return new Cholesky(u);
    }

    /** Solves {@code L y = b} for many right-hand sides at once, the columns of b; overwritten. */
    void forward(double[][] b) {
        for (int k0 = 0; k0 < l.length; k0 += PANEL) {
            int k1 = Math.min(k0 + PANEL, l.length);
            for (int i = k0; i < l.length; i++) {
                double[] factors = Arrays.copyOfRange(l[i], k0, Math.min(i, k1));
                Dense.subtractRounded(b[i], b, factors, k0, 0, b[i].length);
                if (i < k1) {
                    scale(b[i], b[i].length, 1 / l[i][i]);
                }
            }
        }
    }

    private static void scale(double[] row, int count, double factor) {
        for (int j = 0; j < count; j++) {
            row[j] *= factor;
        }
    }

    /** Solves {@code L y = b} in place, one right-hand side. */
    void forward(double[] b) {
        double[][] column = Arrays.stream(b).mapToObj(e -> new double[] {e}).toArray(double[][]::new);
        forward(column);
        Arrays.setAll(b, i -> column[i][0]);
    }

    /** Solves {@code A x = b} in place, one right-hand side. */
    void solve(double[] b) {
        forward(b);
        for (int i = b.length - 1; i >= 0; i--) {
            double sum = b[i];
            for (int j = i + 1; j < b.length; j++) {
                sum -= l[i][j] * b[j];
            }
            b[i] = sum / l[i][i];
        }
    }

    /** Logarithm of the product of L's diagonal: half that of the determinant. */
    double logDiagonal() {
        double sum = 0;
        for (int i = 0; i < l.length; i++) {
            sum += Math.log(l[i][i]);
        }
        return sum;
    }

    /**
     * Diagonal of the inverse of A: column norms of the inverse of L.
     *
     * @param scratch n × n, overwritten
     */
    double[] inverseDiagonal(double[][] scratch) {
        double[] diagonal = new double[l.length];
        for (double[] row : scratch) {
            Arrays.fill(row, 0);
        }
        invert(scratch);
        for (int i = 0; i < l.length; i++) {
            for (int j = 0; j <= i; j++) {
                diagonal[j] += scratch[i][j] * scratch[i][j];
            }
        }
        return diagonal;
    }

    /** The inverse of L, lower triangle. */
    double[][] inverse() {
        double[][] inverse = new double[l.length][l.length];
        invert(inverse);
        return inverse;
    }

    private void invert(double[][] zeros) {
        for (int i = 0; i < l.length; i++) {
            // row k of the inverse ends at column k, so a bundle of rows ends at its last one's
            for (int k0 = 0; k0 < i; k0 += PANEL) {
                int k1 = Math.min(k0 + PANEL, i);
                Dense.subtractRounded(zeros[i], zeros, Arrays.copyOfRange(l[i], k0, k1), k0, 0, k1);
            }
            zeros[i][i] = 1;
            scale(zeros[i], i + 1, 1 / l[i][i]);
        }
    }

    /** {@code t - L e} for many right-hand sides at once, the columns of e, into t. */
    void subtractProduct(double[][] t, double[][] e) {
        for (int k0 = 0; k0 < l.length; k0 += PANEL) {
            for (int i = k0; i < l.length; i++) {
                double[] factors = Arrays.copyOfRange(l[i], k0, Math.min(i + 1, k0 + PANEL));
                Dense.subtractRounded(t[i], e, factors, k0, 0, t[i].length);
            }
        }
    }

    /** Sum of products, as plain sums make it. */
    static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
