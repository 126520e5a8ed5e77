package corewright.field;

import java.util.Arrays;

/**
 * Dense Cholesky factor {@code A = L L'} of a symmetric matrix, blocked so that the inner loops run over contiguous rows.
 * Source: Golub and Van Loan (2013), Matrix Computations, 4th ed., section 4.2.
 */
final class Cholesky {
    /** Rows eliminated at a time: 32 rows of 600 doubles (150 kB) stay in a second-level cache. Not tuned further. */
    private static final int PANEL = 32;

    /** Right-hand sides worked at a time: 64 columns of 300 rows (150 kB) stay in a second-level cache. Not tuned further. */
    private static final int STRIPE = 64;

    /** A pivot below this part of its diagonal is rounding: some hundred units of 1e-16 summed up. Judgement. */
    private static final double TINY = 1e-13;

    private final int n;
    /** Row-major; L in the lower triangle and its mirror image in the upper one. */
    private final double[] a;

    private Cholesky(int n, double[] a) {
        this.n = n;
        this.a = a;
    }

    /**
     * Factors a positive definite matrix. Where rounding makes it indefinite (a smooth variogram without nugget over close
     * samples) the diagonal is raised by 1e-12 of itself, then ten times that and so on: the least that factors.
     *
     * @param a row-major n x n, upper triangle read; kept as it is
     */
    static Cholesky of(int n, double[] a) {
        double raise = 0;
        while (true) {
            double[] work = a.clone();
            for (int i = 0; i < n; i++) {
                work[i * n + i] *= 1 + raise;
            }
            if (factor(n, work, a, false)) {
                return new Cholesky(n, work);
            }
            raise = raise == 0 ? 1e-12 : 10 * raise;
            if (!(raise <= 1e-3)) {
                throw new ArithmeticException("covariance of " + n + " samples is not positive definite");
            }
        }
    }

    /** Factors a positive semi-definite matrix: a pivot that vanishes gives a zero column (that node is certain). */
    static Cholesky ofSemiDefinite(int n, double[] a) {
        double[] work = a.clone();
        factor(n, work, a, true);
        return new Cholesky(n, work);
    }

    /** Works on the upper triangle (rows of L'), then mirrors it; false at a vanishing pivot unless they may vanish. */
    private static boolean factor(int n, double[] u, double[] original, boolean mayVanish) {
        for (int k0 = 0; k0 < n; k0 += PANEL) {
            int k1 = Math.min(k0 + PANEL, n);
            for (int k = k0; k < k1; k++) {
                subtract(u, n, k, k0, k, k);
                double pivot = u[k * n + k];
                boolean vanishes = !(pivot > TINY * original[k * n + k]);
                if (vanishes && !mayVanish) {
                    return false;
                }
                double scale = vanishes ? 0 : 1 / Math.sqrt(pivot);
                for (int j = k; j < n; j++) {
                    u[k * n + j] *= scale;
                }
            }
            for (int i = k1; i < n; i++) {
                subtract(u, n, i, k0, k1, i);
            }
        }
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                u[j * n + i] = u[i * n + j];
            }
        }
        return true;
    }

    /** Row i, from column {@code from}: minus the sum over rows k in [k0, k1) of u[k][i] times row k. */
    private static void subtract(double[] u, int n, int i, int k0, int k1, int from) {
        double[] factors = new double[k1 - k0];
        for (int k = k0; k < k1; k++) {
            factors[k - k0] = u[k * n + i];
        }
        minus(u, i * n + from, u, k0 * n + from, n, n - from, factors);
    }

    /** Solves {@code L y = b} for {@code columns} right-hand sides at once; b is row-major n x columns, overwritten. */
    void forward(double[] b, int columns) {
        for (int c0 = 0; c0 < columns; c0 += STRIPE) {
            int width = Math.min(STRIPE, columns - c0);
            for (int i = 0; i < n; i++) {
                int at = i * columns + c0;
                minus(b, at, b, c0, columns, width, Arrays.copyOfRange(a, i * n, i * n + i));
                double scale = 1 / a[i * n + i];
                for (int c = at; c < at + width; c++) {
                    b[c] *= scale;
                }
            }
        }
    }

    /** Solves {@code A x = b} in place, one right-hand side. */
    void solve(double[] b) {
        forward(b, 1);
        for (int i = n - 1; i >= 0; i--) {
            double sum = b[i];
            for (int j = i + 1; j < n; j++) {
                sum -= a[i * n + j] * b[j];
            }
            b[i] = sum / a[i * n + i];
        }
    }

    /** Logarithm of the product of L's diagonal: half that of the determinant. */
    double logDiagonal() {
        double sum = 0;
        for (int i = 0; i < n; i++) {
            sum += Math.log(a[i * n + i]);
        }
        return sum;
    }

    /** Diagonal of the inverse of A: column norms of the inverse of L, which is triangular too. */
    double[] inverseDiagonal() {
        double[] inverse = new double[n * n];
        double[] diagonal = new double[n];
        for (int i = 0; i < n; i++) {
            // row k of the inverse ends at column k, so a bundle of rows ends at its last one's
            for (int k0 = 0; k0 < i; k0 += PANEL) {
                int k1 = Math.min(k0 + PANEL, i);
                minus(inverse, i * n, inverse, k0 * n, n, k1, Arrays.copyOfRange(a, i * n + k0, i * n + k1));
            }
            inverse[i * n + i] = 1;
            double scale = 1 / a[i * n + i];
            for (int j = 0; j <= i; j++) {
                double e = inverse[i * n + j] * scale;
                inverse[i * n + j] = e;
                diagonal[j] += e * e;
            }
        }
        return diagonal;
    }

    /** {@code L e}, into a fresh array. */
    double[] times(double[] e) {
        double[] product = new double[n];
        for (int i = 0; i < n; i++) {
            double sum = 0;
            for (int j = 0; j <= i; j++) {
                sum += a[i * n + j] * e[j];
            }
            product[i] = sum;
        }
        return product;
    }

    /** {@code t - L e} for {@code columns} right-hand sides at once, into t; both row-major n x columns. */
    void subtractProduct(double[] t, double[] e, int columns) {
        for (int c0 = 0; c0 < columns; c0 += STRIPE) {
            int width = Math.min(STRIPE, columns - c0);
            for (int i = 0; i < n; i++) {
                double[] factors = Arrays.copyOfRange(a, i * n, i * n + i + 1);
                minus(t, i * columns + c0, e, c0, columns, width, factors);
            }
        }
    }

    /**
     * {@code t[at ..] -= sum over k of f[k] s[from + k stride ..]}, four rows a pass: the loop the compiler vectorises.
     */
    static void minus(double[] t, int at, double[] s, int from, int stride, int count, double[] f) {
        int k = 0;
        for (; k + 3 < f.length; k += 4) {
            double f0 = f[k];
            double f1 = f[k + 1];
            double f2 = f[k + 2];
            double f3 = f[k + 3];
            int r0 = from + k * stride;
            int r1 = r0 + stride;
            int r2 = r1 + stride;
            int r3 = r2 + stride;
            for (int j = 0; j < count; j++) {
                t[at + j] -= f0 * s[r0 + j] + f1 * s[r1 + j] + f2 * s[r2 + j] + f3 * s[r3 + j];
            }
        }
        for (; k < f.length; k++) {
            double f0 = f[k];
            int r0 = from + k * stride;
            for (int j = 0; j < count; j++) {
                t[at + j] -= f0 * s[r0 + j];
            }
        }
    }
}
