package corewright.linear;

import corewright.linear.Dense.Front;

/** A factored dense matrix, symmetric and positive definite. Immutable; any number of threads may solve with it. */
public final class DenseFactor {
    private final double[][] u;

    private DenseFactor(double[][] a) {
        u = a;
        Dense.eliminate(new Front(a, new double[a.length][0], new double[0][0]));
    }

    /**
     * Factors a matrix, of which the upper triangle is read.
     *
     * @throws NotPositiveDefiniteException if it is not positive definite
     */
    public static DenseFactor of(double[][] a) {
        double[][] copy = new double[a.length][];
        for (int i = 0; i < a.length; i++) {
            copy[i] = a[i].clone();
        }
        return over(copy);
    }

    /** The same in the matrix's own place. */
    public static DenseFactor over(double[][] a) {
        return new DenseFactor(a);
    }

    public double[] solve(double[] b) {
        int n = u.length;
        double[] x = b.clone();
        Dense.forward(new double[][] {x}, new double[1][0], u, new double[n][0]);
        for (int j = n - 1; j >= 0; j--) {
            x[j] = (x[j] - Dense.dot(u[j], x, j + 1)) / u[j][j];
        }
        return x;
    }
}
