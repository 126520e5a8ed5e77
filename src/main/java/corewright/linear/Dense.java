package corewright.linear;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Dense kernels on matrices whose rows are arrays of their own. All work is done by {@link #subtractFour}, whose loop the
 * Java compiler turns into vector instructions: it does so for plain indices into whole arrays, and not for offsets into
 * one long array (measured on JDK 17: 20 against 4 Gflop/s).
 */
public final class Dense {
    /** Pivots applied together: 32 rows of 2000 columns stay in the second-level cache; 16 to 64 time alike. */
    private static final int PANEL = 32;

    /** Columns that a panel's rows are applied to together: 32 rows of 128 stay in the first-level cache (a third faster than whole rows of 400). */
    private static final int BLOCK = 128;

    /** Fronts with more work than this in one panel's update share it among threads: about 2 ms. */
    private static final long SHARED_WORK = 20_000_000;

    private Dense() {}

    /**
     * A symmetric matrix in the parts it has once its pivots are eliminated.
     *
     * @param own p × p, upper triangle by rows, then U of the pivots
     * @param rest p × r, then U right of the pivots
     * @param left r × r, lower triangle by rows, then what is left (the Schur complement)
     */
    @SuppressWarnings("ArrayRecordComponent") // three handles passed together, never compared
    record Front(double[][] own, double[][] rest, double[][] left) {
        static Front zero(int pivots, int boundary) {
            return new Front(new double[pivots][pivots], new double[pivots][boundary], triangle(boundary));
        }

        private static double[][] triangle(int n) {
            double[][] rows = new double[n][];
            Arrays.setAll(rows, i -> new double[i + 1]);
            return rows;
        }
    }

    /** What a pivot's row is multiplied by. */
    @FunctionalInterface
    public interface PivotRule {
        /** The inverse of the pivot's root; or 0, which gives the pivot up; or an exception. */
        double inverseRoot(int k, double pivot);
    }

    /**
     * Eliminates all pivots of a symmetric matrix, upper triangle by rows: A = Uᵀ U. Below the diagonal is scratch. Sums
     * are those of {@link #subtractRounded}.
     */
    public static void eliminate(double[][] a, PivotRule rule) {
        int p = a.length;
        for (int from = 0; from < p; from += PANEL) {
            int to = Math.min(p, from + PANEL);
            for (int k = from; k < to; k++) {
                subtractRounded(a[k], a, columns(a, from, k, k, k + 1)[0], from, k, p);
                scale(a[k], k, rule.inverseRoot(k, a[k][k]));
            }
            double[][] factors = columns(a, from, to, to, p);
            for (int column = to; column < p; column += BLOCK) {
                int end = Math.min(p, column + BLOCK);
                for (int row = to; row < end; row++) {
                    subtractRounded(a[row], a, factors[row - to], from, Math.max(row, column), end);
                }
            }
        }
    }

    /** Eliminates the pivots of a front: A = Uᵀ U. What lies below the diagonal is scratch. */
    static void eliminate(Front f) {
        int p = f.own.length;
        int r = f.left.length;
        for (int k0 = 0; k0 < p; k0 += PANEL) {
            int from = k0;
            int to = Math.min(p, k0 + PANEL);
            for (int k = from; k < to; k++) {
                eliminate(f, from, k);
            }
            double[][] inside = columns(f.own, from, to, to, p);
            for (int column = to; column < p; column += BLOCK) {
                int end = Math.min(p, column + BLOCK);
                for (int row = to; row < end; row++) {
                    subtract(f.own[row], f.own, inside[row - to], from, Math.max(row, column), end);
                }
            }
            double[][] beyond = columns(f.rest, from, to, 0, r);
            IntStream blocks = IntStream.range(0, (r + BLOCK - 1) / BLOCK);
            long work = (long) (to - from) * (p + r - to) * (p + r - to);
            (work > SHARED_WORK ? blocks.parallel() : blocks)
                    .forEach(block -> update(f, from, inside, beyond, BLOCK * block));
        }
    }

    /** Makes a pivot's row of A one of U, once the pivots before its panel are applied to it. */
    private static void eliminate(Front f, int from, int k) {
        double[] factor = columns(f.own, from, k, k, k + 1)[0];
        subtract(f.own[k], f.own, factor, from, k, f.own.length);
        subtract(f.rest[k], f.rest, factor, from, 0, f.left.length);
        double pivot = f.own[k][k];
        if (!(pivot > 0)) {
            throw new NotPositiveDefiniteException(pivot);
        }
        scale(f.own[k], k, 1 / Math.sqrt(pivot));
        scale(f.rest[k], 0, 1 / Math.sqrt(pivot));
    }

    /** What rows {@code from .. to - 1} have in columns {@code left .. right - 1}, by columns. */
    private static double[][] columns(double[][] rows, int from, int to, int left, int right) {
        double[][] columns = new double[right - left][to - from];
        for (int k = from; k < to; k++) {
            double[] row = rows[k];
            for (int j = left; j < right; j++) {
                columns[j - left][k - from] = row[j];
            }
        }
        return columns;
    }

    /**
     * Applies a panel's pivots to a block of columns right of all pivots.
     *
     * @param inside what the panel has in the columns of the pivots after it
     * @param beyond the same in those right of all pivots
     */
    private static void update(Front f, int from, double[][] inside, double[][] beyond, int column) {
        int to = f.own.length - inside.length;
        int end = Math.min(f.left.length, column + BLOCK);
        for (int row = to; row < f.own.length; row++) {
            subtract(f.rest[row], f.rest, inside[row - to], from, column, end);
        }
        for (int row = column; row < f.left.length; row++) {
            subtract(f.left[row], f.rest, beyond[row], from, column, Math.min(end, row + 1));
        }
    }

    private static void scale(double[] row, int from, double by) {
        for (int j = from; j < row.length; j++) {
            row[j] *= by;
        }
    }

    /**
     * Forward substitution of many right-hand sides: {@code y Uown = x} in the pivots, the rest less {@code y Urest}.
     *
     * @param own right-hand sides by rows, at the pivots; then y
     * @param rest the same at the boundary
     */
    static void forward(double[][] own, double[][] rest, double[][] ownU, double[][] restU) {
        int p = ownU.length;
        for (int k0 = 0; k0 < p; k0 += PANEL) {
            int to = Math.min(p, k0 + PANEL);
            for (int v = 0; v < own.length; v++) {
                for (int k = k0; k < to; k += 4) {
                    int end = Math.min(to, k + 4);
                    solveFew(own[v], ownU, k, end);
                    subtract(own[v], ownU, Arrays.copyOfRange(own[v], k, end), k, end);
                }
                subtract(rest[v], restU, Arrays.copyOfRange(own[v], k0, to), k0, 0);
            }
        }
    }

    private static void solveFew(double[] x, double[][] u, int from, int to) {
        for (int k = from; k < to; k++) {
            double sum = x[k];
            for (int q = from; q < k; q++) {
                sum -= x[q] * u[q][k];
            }
            x[k] = sum / u[k][k];
        }
    }

    /** {@code c -= Σ factor[q] b[first + q]}, from a column on. */
    public static void subtract(double[] c, double[][] b, double[] factor, int first, int column) {
        subtract(c, b, factor, first, column, c.length);
    }

    private static void subtract(double[] c, double[][] b, double[] factor, int first, int from, int to) {
        for (int q = 0; q < factor.length; q += 4) {
            subtractFour(c, b, factor, first, q, from, to);
        }
    }

    /** Four rows, or as many as are left, the last of them again then with zeros: one loop costs less than two. */
    private static void subtractFour(double[] c, double[][] b, double[] factor, int first, int q, int from, int to) {
        int last = factor.length - 1;
        double[] b0 = b[first + q];
        double[] b1 = b[first + Math.min(q + 1, last)];
        double[] b2 = b[first + Math.min(q + 2, last)];
        double[] b3 = b[first + Math.min(q + 3, last)];
        double x0 = -factor[q];
        double x1 = q + 1 > last ? 0 : -factor[q + 1];
        double x2 = q + 2 > last ? 0 : -factor[q + 2];
        double x3 = q + 3 > last ? 0 : -factor[q + 3];
        for (int j = from; j < to; j++) {
            c[j] = Math.fma(x0, b0[j], Math.fma(x1, b1[j], Math.fma(x2, b2[j], Math.fma(x3, b3[j], c[j]))));
        }
    }

    /**
     * {@code c -= Σ factor[q] b[first + q]} over columns {@code from .. to - 1}, every product rounded. Where a plan hangs
     * on the last digit, as holes at equal distances do, the digits stay those of plain sums.
     */
    public static void subtractRounded(double[] c, double[][] b, double[] factor, int first, int from, int to) {
        int q = 0;
        for (; q + 4 <= factor.length; q += 4) {
            double[] b0 = b[first + q];
            double[] b1 = b[first + q + 1];
            double[] b2 = b[first + q + 2];
            double[] b3 = b[first + q + 3];
            double x0 = factor[q];
            double x1 = factor[q + 1];
            double x2 = factor[q + 2];
            double x3 = factor[q + 3];
            for (int j = from; j < to; j++) {
                c[j] -= x0 * b0[j] + x1 * b1[j] + x2 * b2[j] + x3 * b3[j];
            }
        }
        for (; q < factor.length; q++) {
            double[] b0 = b[first + q];
            double x0 = factor[q];
            for (int j = from; j < to; j++) {
                c[j] -= x0 * b0[j];
            }
        }
    }

    /** {@code y -= a x}, a by rows: four rows at a time, which read x once. */
    static void subtractRows(double[] y, double[][] a, double[] x) {
        int i = 0;
        for (; i + 4 <= y.length; i += 4) {
            double[] a0 = a[i];
            double[] a1 = a[i + 1];
            double[] a2 = a[i + 2];
            double[] a3 = a[i + 3];
            double s0 = 0;
            double s1 = 0;
            double s2 = 0;
            double s3 = 0;
            for (int j = 0; j < x.length; j++) {
                double xj = x[j];
                s0 = Math.fma(a0[j], xj, s0);
                s1 = Math.fma(a1[j], xj, s1);
                s2 = Math.fma(a2[j], xj, s2);
                s3 = Math.fma(a3[j], xj, s3);
            }
            y[i] -= s0;
            y[i + 1] -= s1;
            y[i + 2] -= s2;
            y[i + 3] -= s3;
        }
        for (; i < y.length; i++) {
            y[i] -= dot(a[i], x, 0);
        }
    }

    /** Sum of products from an entry on: four sums side by side, as each waits for the product before it. */
    public static double dot(double[] a, double[] b, int from) {
        double s0 = 0;
        double s1 = 0;
        double s2 = 0;
        double s3 = 0;
        int j = from;
        for (; j + 3 < a.length; j += 4) {
            s0 = Math.fma(a[j], b[j], s0);
            s1 = Math.fma(a[j + 1], b[j + 1], s1);
            s2 = Math.fma(a[j + 2], b[j + 2], s2);
            s3 = Math.fma(a[j + 3], b[j + 3], s3);
        }
        for (; j < a.length; j++) {
            s0 = Math.fma(a[j], b[j], s0);
        }
        return (s0 + s1) + (s2 + s3);
    }
}
