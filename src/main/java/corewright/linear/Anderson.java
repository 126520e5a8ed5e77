package corewright.linear;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Finds a vector that a map leaves as it is faster than by applying the map again and again: of the last few steps the mixture is
 * taken on which the map changes least, were it linear (D. G. Anderson, Iterative procedures for nonlinear integral equations,
 * J. ACM 12, 1965). Converges where plain repetition runs away, if few directions do.
 */
public final class Anderson {
    /** Steps that are mixed: as many directions as stiffen much. */
    private static final int DEPTH = 5;

    /** Keeps mixtures of like steps apart, as part of the largest step's square: rounding of squares is a thousandth of it. */
    private static final double RIDGE = 1e-13;

    private final Deque<double[]> changes = new ArrayDeque<>();
    private final Deque<double[]> images = new ArrayDeque<>();
    private double[] lastChange = new double[0];
    private double[] lastImage = new double[0];

    /** The next vector to try, from one and what the map makes of it. */
    public double[] next(double[] from, double[] image) {
        double[] change = less(image, from);
        if (lastImage.length > 0) {
            changes.addLast(less(change, lastChange));
            images.addLast(less(image, lastImage));
            if (changes.size() > DEPTH) {
                changes.removeFirst();
                images.removeFirst();
            }
        }
        lastChange = change;
        lastImage = image;
        double[] share = shares(change);
        double[] next = image.clone();
        int k = 0;
        for (double[] moved : images) {
            double part = share[k++];
            for (int i = 0; i < next.length; i++) {
                next[i] -= part * moved[i];
            }
        }
        return next;
    }

    /** How much of each step before takes most of the change away: least squares. */
    private double[] shares(double[] change) {
        int n = changes.size();
        if (n == 0) {
            return new double[0];
        }
        double[][] rows = changes.toArray(double[][]::new);
        double[][] squares = new double[n][n];
        double[] right = new double[n];
        double most = 0;
        for (int i = 0; i < n; i++) {
            for (int j = i; j < n; j++) {
                squares[i][j] = Dense.dot(rows[i], rows[j], 0);
            }
            most = Math.max(most, squares[i][i]);
            right[i] = Dense.dot(rows[i], change, 0);
        }
        if (most == 0) {
            return right; // nothing moves any more
        }
        for (int i = 0; i < n; i++) {
            squares[i][i] += RIDGE * most;
        }
        return DenseFactor.over(squares).solve(right);
    }

    private static double[] less(double[] a, double[] b) {
        double[] c = new double[a.length];
        for (int i = 0; i < c.length; i++) {
            c[i] = a[i] - b[i];
        }
        return c;
    }
}
