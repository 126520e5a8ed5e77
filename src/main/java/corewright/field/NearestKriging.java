package corewright.field;

import java.util.Arrays;

/**
 * {@link OrdinaryKriging} of one node after the other from a few near samples each: the same equations with nothing allocated on the
 * way, and the samples' system kept while the next node has the same samples. One thread at a time.
 *
 * <p>The factor is held by columns, two rows below it: what elimination leaves there is {@code L^-1 1} and {@code L^-1 (z - z0)}.
 */
final class NearestKriging {
    /** A pivot below this part of its diagonal is left to {@link Cholesky#of}, which knows what to do. */
    private static final double TINY = 1e-13;

    /** Samples up to which the plain elimination here is the quicker one. Judgement. */
    static final int MOST = 128;

    private static final int MORE = 2;

    private final Samples samples;
    private final Correlation correlation;
    private final Variogram variogram;
    private final int n;
    private final int stride;

    /** Sample numbers, ascending, so that the figures do not depend on the node that asked first. */
    private int[] member = {};

    private final double[] x;
    private final double[] y;
    private final double[] l;
    private final double[] inverse;
    private final double[] ones;
    private final double[] residual;
    private final double[] k;
    private double mean;
    private double precision;

    NearestKriging(Samples samples, Variogram variogram, Correlation correlation, int n) {
        this.samples = samples;
        this.variogram = variogram;
        this.correlation = correlation;
        this.n = n;
        stride = n + MORE;
        x = new double[n];
        y = new double[n];
        l = new double[n * stride];
        inverse = new double[n];
        ones = new double[n];
        residual = new double[n];
        k = new double[n];
    }

    /**
     * Whether the samples' system could be factored as it is; if so {@link #at} speaks of them.
     *
     * @param near n sample numbers, in any order
     */
    boolean from(int[] near) {
        int[] sorted = near.clone();
        Arrays.sort(sorted);
        if (Arrays.equals(sorted, member)) {
            return true;
        }
        member = sorted;
        assemble();
        if (!eliminate()) {
            member = new int[0];
            return false;
        }
        settle();
        return true;
    }

    private void assemble() {
        double sill = variogram.sill() > 0 ? variogram.sill() : 1;
        double partial = variogram.partialSill();
        double reference = samples.value(member[0]);
        for (int i = 0; i < n; i++) {
            x[i] = samples.x(member[i]);
            y[i] = samples.y(member[i]);
        }
        for (int j = 0; j < n; j++) {
            int column = j * stride;
            l[column + j] = sill + samples.errorVariance(member[j]);
            for (int i = j + 1; i < n; i++) {
                l[column + i] = partial * correlation.at(x[j] - x[i], y[j] - y[i]);
            }
            l[column + n] = 1;
            l[column + n + 1] = samples.value(member[j]) - reference;
        }
    }

    private boolean eliminate() {
        for (int j = 0; j < n; j++) {
            inverse[j] = l[j * stride + j];
        }
        for (int j = 0; j < n; j++) {
            int column = j * stride;
            double pivot = l[column + j];
            if (!(pivot > TINY * inverse[j])) {
                return false;
            }
            inverse[j] = 1 / Math.sqrt(pivot);
            for (int i = j; i < stride; i++) {
                l[column + i] *= inverse[j];
            }
            for (int c = j + 1; c < n; c++) {
                subtract(l[column + c], column, c * stride, c, stride);
            }
        }
        return true;
    }

    private void subtract(double factor, int from, int to, int first, int end) {
        for (int i = first; i < end; i++) {
            l[to + i] -= factor * l[from + i];
        }
    }

    private void settle() {
        precision = 0;
        double sum = 0;
        for (int j = 0; j < n; j++) {
            ones[j] = l[j * stride + n];
            residual[j] = l[j * stride + n + 1];
            precision += ones[j] * ones[j];
            sum += ones[j] * residual[j];
        }
        double shift = sum / precision;
        mean = samples.value(member[0]) + shift;
        for (int j = 0; j < n; j++) {
            residual[j] -= shift * ones[j];
        }
    }

    /** Of a node at this place, into position {@code to}. */
    void at(double px, double py, int to, double[] estimate, double[] variance) {
        double partial = variogram.partialSill();
        for (int i = 0; i < n; i++) {
            k[i] = partial * correlation.at(x[i] - px, y[i] - py);
        }
        double explained = 0;
        double weights = 0;
        double departure = 0;
        for (int j = 0; j < n; j++) {
            double v = k[j] * inverse[j];
            int column = j * stride;
            for (int i = j + 1; i < n; i++) {
                k[i] -= v * l[column + i];
            }
            explained += v * v;
            weights += v * ones[j];
            departure += v * residual[j];
        }
        double open = 1 - weights;
        double unknown = variogram.sill() > 0 ? open * open / precision : 0;
        estimate[to] = mean + departure;
        variance[to] = Math.max(0, variogram.sill() - explained + unknown);
    }
}
