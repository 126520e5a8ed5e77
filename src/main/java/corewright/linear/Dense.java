package corewright.linear;

/** Dense kernels on row-major blocks: all of the factorisation's work is done by {@link #subtractProducts}. */
final class Dense {
    /** Columns eliminated at a time; what is done inside a panel is slow, 8 to 16 time 6 % better than 48. */
    private static final int PANEL = 16;

    /** Rows of the second factor used together: 64 rows of a few hundred columns stay in the second-level cache. */
    private static final int TILE = 64;

    private Dense() {}

    /** Rows inside an array: row i begins at {@code at + i * stride}. */
    static final class Rows {
        final double[] data;
        final int at;
        final int stride;
        final int count;

        Rows(double[] data, int at, int stride, int count) {
            this.data = data;
            this.at = at;
            this.stride = stride;
            this.count = count;
        }

        Rows from(int row, int column, int rows) {
            return new Rows(data, at + row * stride + column, stride, rows);
        }
    }

    /**
     * Eliminates the first {@code pivots} columns of a symmetric matrix of which the lower triangle is given: on return
     * they hold L, and the rest holds what is left (the Schur complement). The upper triangle is scratch.
     */
    static void eliminate(Rows f, int pivots) {
        int m = f.count;
        for (int j0 = 0; j0 < pivots; j0 += PANEL) {
            int w = Math.min(PANEL, pivots - j0);
            Rows below = f.from(j0, 0, m - j0);
            subtractProducts(f.from(j0, j0, m - j0), below, f.from(j0, 0, w), j0, true);
            factorDiagonal(f.from(j0, j0, w));
            solveRows(f.from(j0 + w, j0, m - j0 - w), f.from(j0, j0, w));
        }
        subtractProducts(
                f.from(pivots, pivots, m - pivots),
                f.from(pivots, 0, m - pivots),
                f.from(pivots, 0, m - pivots),
                pivots,
                true);
    }

    /** X ← X L⁻ᵀ for L the lower triangle of {@code l}, blocked. Each row of X is one right-hand side. */
    static void forward(Rows x, Rows l) {
        for (int j0 = 0; j0 < l.count; j0 += PANEL) {
            int w = Math.min(PANEL, l.count - j0);
            subtractProducts(x.from(0, j0, x.count), x, l.from(j0, 0, w), j0, false);
            solveRows(x.from(0, j0, x.count), l.from(j0, j0, w));
        }
    }

    /**
     * C ← C - A Bᵀ, with rows of A and B of length {@code depth}. With {@code lower} only the part on and below the
     * diagonal of C is wanted; a few entries above it may change.
     */
    static void subtractProducts(Rows c, Rows a, Rows b, int depth, boolean lower) {
        if (depth == 0) {
            return;
        }
        for (int j0 = 0; j0 < b.count; j0 += TILE) {
            int j1 = Math.min(b.count, j0 + TILE);
            for (int i = lower ? j0 / 4 * 4 : 0; i < a.count; i += 4) {
                int end = lower ? Math.min(j1, i + 4) : j1;
                int j = j0;
                if (i + 4 <= a.count) {
                    for (; j + 4 <= end; j += 4) {
                        fourByFour(c, a, b, i, j, depth);
                    }
                }
                for (; j < end; j++) {
                    for (int r = i; r < Math.min(a.count, i + 4); r++) {
                        c.data[c.at + r * c.stride + j] -=
                                dot(a.data, a.at + r * a.stride, b.data, b.at + j * b.stride, depth);
                    }
                }
            }
        }
    }

    private static void fourByFour(Rows rc, Rows ra, Rows rb, int i, int j, int depth) {
        double[] a = ra.data;
        double[] b = rb.data;
        int a0 = ra.at + i * ra.stride;
        int a1 = a0 + ra.stride;
        int a2 = a1 + ra.stride;
        int a3 = a2 + ra.stride;
        int b0 = rb.at + j * rb.stride;
        int b1 = b0 + rb.stride;
        int b2 = b1 + rb.stride;
        int b3 = b2 + rb.stride;
        double c00 = 0, c01 = 0, c02 = 0, c03 = 0;
        double c10 = 0, c11 = 0, c12 = 0, c13 = 0;
        double c20 = 0, c21 = 0, c22 = 0, c23 = 0;
        double c30 = 0, c31 = 0, c32 = 0, c33 = 0;
        for (int p = 0; p < depth; p++) {
            double x0 = a[a0 + p];
            double x1 = a[a1 + p];
            double x2 = a[a2 + p];
            double x3 = a[a3 + p];
            double y0 = b[b0 + p];
            double y1 = b[b1 + p];
            double y2 = b[b2 + p];
            double y3 = b[b3 + p];
            c00 = Math.fma(x0, y0, c00);
            c01 = Math.fma(x0, y1, c01);
            c02 = Math.fma(x0, y2, c02);
            c03 = Math.fma(x0, y3, c03);
            c10 = Math.fma(x1, y0, c10);
            c11 = Math.fma(x1, y1, c11);
            c12 = Math.fma(x1, y2, c12);
            c13 = Math.fma(x1, y3, c13);
            c20 = Math.fma(x2, y0, c20);
            c21 = Math.fma(x2, y1, c21);
            c22 = Math.fma(x2, y2, c22);
            c23 = Math.fma(x2, y3, c23);
            c30 = Math.fma(x3, y0, c30);
            c31 = Math.fma(x3, y1, c31);
            c32 = Math.fma(x3, y2, c32);
            c33 = Math.fma(x3, y3, c33);
        }
        subtract(rc, i, j, c00, c01, c02, c03);
        subtract(rc, i + 1, j, c10, c11, c12, c13);
        subtract(rc, i + 2, j, c20, c21, c22, c23);
        subtract(rc, i + 3, j, c30, c31, c32, c33);
    }

    private static void subtract(Rows c, int row, int column, double v0, double v1, double v2, double v3) {
        int at = c.at + row * c.stride + column;
        c.data[at] -= v0;
        c.data[at + 1] -= v1;
        c.data[at + 2] -= v2;
        c.data[at + 3] -= v3;
    }

    /** Cholesky of a small block, in place. */
    private static void factorDiagonal(Rows f) {
        double[] a = f.data;
        for (int j = 0; j < f.count; j++) {
            int rowJ = f.at + j * f.stride;
            double pivot = a[rowJ + j] - dot(a, rowJ, a, rowJ, j);
            if (!(pivot > 0)) {
                throw new NotPositiveDefiniteException(pivot);
            }
            double root = Math.sqrt(pivot);
            a[rowJ + j] = root;
            for (int i = j + 1; i < f.count; i++) {
                int rowI = f.at + i * f.stride;
                a[rowI + j] = (a[rowI + j] - dot(a, rowI, a, rowJ, j)) / root;
            }
        }
    }

    /** X ← X L⁻ᵀ for a small L. */
    private static void solveRows(Rows x, Rows l) {
        for (int i = 0; i < x.count; i++) {
            int row = x.at + i * x.stride;
            for (int j = 0; j < l.count; j++) {
                int rowJ = l.at + j * l.stride;
                x.data[row + j] = (x.data[row + j] - dot(x.data, row, l.data, rowJ, j)) / l.data[rowJ + j];
            }
        }
    }

    static double dot(double[] a, int atA, double[] b, int atB, int length) {
        double sum = 0;
        for (int p = 0; p < length; p++) {
            sum = Math.fma(a[atA + p], b[atB + p], sum);
        }
        return sum;
    }
}
