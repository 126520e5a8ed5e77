package corewright.field;

import java.util.Arrays;

/**
 * The kriging equations for merged samples. With C the covariance of the samples (sill and error on its diagonal), k that
 * between samples and node, p the prior precision of the mean m:
 *
 * <pre>
 *   b   = (p m + 1' C^-1 z) / (p + 1' C^-1 1)            the mean, by generalised least squares
 *   est = b + k' C^-1 (z - b)
 *   var = c0 - k' C^-1 k + (1 - 1' C^-1 k)^2 / (p + 1' C^-1 1)
 * </pre>
 *
 * <p>p = 0 is ordinary, p infinite simple kriging. c0 is the sill for {@link Target#VALUE}, the partial sill for {@link
 * Target#SIGNAL}. Source: Chiles and Delfiner (2012), section 3.4; Omre (1987).
 *
 * <p>A variogram of sill 0 says that nothing varies: the estimate is b with equal weights, its variance 0.
 */
final class KrigingSystem {
    /** Nodes solved together: their 600 x 48 block (230 kB) fits a second-level cache. Not tuned further. */
    private static final int BLOCK = 48;

    final Samples samples;
    private final Variogram variogram;
    private final Correlation correlation;
    private final Mean mean;
    private final Target target;
    private final NeighbourIndex index;
    private final double samePlace;

    KrigingSystem(Samples merged, Variogram variogram, Mean mean, Target target) {
        this.samples = merged;
        this.variogram = variogram;
        this.correlation = new Correlation(variogram);
        this.mean = mean;
        this.target = target;
        index = new NeighbourIndex(merged.xs(), merged.ys());
        samePlace = merged.diagonal() * Samples.SAME_PLACE;
    }

    Estimates estimate(double[] nodesX, double[] nodesY, int neighbours) {
        if (nodesX.length != nodesY.length || neighbours < 0) {
            throw new IllegalArgumentException(
                    nodesX.length + " x, " + nodesY.length + " y of nodes, " + neighbours + " neighbours");
        }
        double[] estimate = new double[nodesX.length];
        double[] variance = new double[nodesX.length];
        if (neighbours == 0 || neighbours >= samples.size()) {
            fromAll(nodesX, nodesY, estimate, variance);
        } else {
            fromNearest(nodesX, nodesY, neighbours, estimate, variance);
        }
        return new Estimates(estimate, variance);
    }

    private void fromAll(double[] nodesX, double[] nodesY, double[] estimate, double[] variance) {
        Local all = all();
        for (int from = 0; from < nodesX.length; from += BLOCK) {
            int count = Math.min(BLOCK, nodesX.length - from);
            double[] k = all.toNodes(nodesX, nodesY, from, count);
            all.estimate(k, count, from, estimate, variance);
        }
        if (target == Target.VALUE) {
            for (int node = 0; node < nodesX.length; node++) {
                honour(node, sampleAt(nodesX[node], nodesY[node]), estimate, variance);
            }
        }
    }

    private void fromNearest(double[] nodesX, double[] nodesY, int neighbours, double[] estimate, double[] variance) {
        for (int node = 0; node < nodesX.length; node++) {
            int[] near = index.nearest(nodesX[node], nodesY[node], neighbours, -1);
            Local local = new Local(near);
            local.estimate(local.toNodes(nodesX, nodesY, node, 1), 1, node, estimate, variance);
            if (target == Target.VALUE) {
                honour(node, coincides(near[0], nodesX[node], nodesY[node]) ? near[0] : -1, estimate, variance);
            }
        }
    }

    private void honour(int node, int sample, double[] estimate, double[] variance) {
        if (sample >= 0) {
            estimate[node] = samples.value(sample);
            variance[node] = samples.errorVariance(sample);
        }
    }

    /** The sample at this place, or -1. */
    int sampleAt(double x, double y) {
        int[] nearest = index.nearest(x, y, 1, -1);
        return nearest.length > 0 && coincides(nearest[0], x, y) ? nearest[0] : -1;
    }

    private boolean coincides(int sample, double x, double y) {
        return Math.hypot(samples.x(sample) - x, samples.y(sample) - y) <= samePlace;
    }

    int[] nearestOthers(int sample, int neighbours) {
        return index.nearest(samples.x(sample), samples.y(sample), neighbours, sample);
    }

    /** All samples as one system. */
    Local all() {
        if (samples.size() > Kriging.MOST_SAMPLES_AT_ONCE) {
            throw new IllegalArgumentException(samples.size() + " samples at once, at most "
                    + Kriging.MOST_SAMPLES_AT_ONCE + ": ask for the nearest neighbours");
        }
        int[] everyone = new int[samples.size()];
        Arrays.setAll(everyone, i -> i);
        return new Local(everyone);
    }

    /** The nearest or any other samples as one system. */
    Local of(int[] members) {
        return new Local(members);
    }

    /** Puts a variance of the system back to the value's unit: 0 where the variogram says that nothing varies. */
    double scaled(double variance) {
        return variogram.sill() > 0 ? variance : 0;
    }

    /** Covariance of the structure; a variogram of sill 0 stands for pure nugget of height 1, scaled back by 0. */
    double covariance(double dx, double dy) {
        return variogram.partialSill() * correlation.at(dx, dy);
    }

    /** Variance of the target before any sample is heard. */
    double priorVariance() {
        return target == Target.VALUE ? variogram.sill() : variogram.partialSill();
    }

    /**
     * Covariance of the target between nodes once the samples are known: row-major, upper triangle; 0 in row and column of a
     * node at a sample.
     */
    double[] posterior(double[] nodesX, double[] nodesY) {
        int m = nodesX.length;
        Local all = all();
        double[] k = all.toNodes(nodesX, nodesY, 0, m); // samples x nodes
        double[] open = new double[m]; // 1 - 1' C^-1 k
        Arrays.fill(open, 1);
        Cholesky.minus(open, 0, k, 0, m, m, all.ones);
        double[] s = new double[m * m];
        double[] column = new double[samples.size()];
        for (int a = 0; a < m; a++) {
            for (int b = a; b < m; b++) {
                double prior = a == b ? priorVariance() : covariance(nodesX[a] - nodesX[b], nodesY[a] - nodesY[b]);
                s[a * m + b] = prior + open[a] * open[b] / all.precision;
            }
            for (int i = 0; i < column.length; i++) {
                column[i] = k[i * m + a];
            }
            Cholesky.minus(s, a * m + a, k, a, m, m - a, column);
        }
        for (int a = 0; a < m; a++) {
            if (variogram.sill() == 0 || (target == Target.VALUE && sampleAt(nodesX[a], nodesY[a]) >= 0)) {
                clear(s, m, a);
            }
        }
        return s;
    }

    private static void clear(double[] s, int m, int node) {
        Arrays.fill(s, node * m + node, (node + 1) * m, 0);
        for (int a = 0; a < node; a++) {
            s[a * m + node] = 0;
        }
    }

    /** The factored system of some of the samples. */
    final class Local {
        private final int[] member;
        final Cholesky factor;
        /** {@code L^-1 1}, {@code L^-1 (z - b)}. */
        final double[] ones;

        final double[] residual;
        /** The mean b and the precision {@code p + 1' C^-1 1} it has. */
        final double fittedMean;

        final double precision;

        Local(int[] member) {
            this.member = member;
            int n = member.length;
            factor = Cholesky.of(n, covariances());
            ones = new double[n];
            Arrays.fill(ones, 1);
            factor.forward(ones, 1);
            residual = new double[n];
            Arrays.setAll(residual, i -> samples.value(member[i]) - reference());
            factor.forward(residual, 1);
            double information = dot(ones, ones);
            double shift;
            if (mean.variance() == 0) {
                precision = Double.POSITIVE_INFINITY;
                shift = 0;
            } else {
                precision = mean.precision() + information;
                shift = (mean.precision() * (mean.value() - reference()) + dot(ones, residual)) / precision;
            }
            fittedMean = reference() + shift;
            for (int i = 0; i < n; i++) {
                residual[i] -= shift * ones[i];
            }
        }

        /** Values are taken from here before products are formed, so that a large constant costs no digits. */
        private double reference() {
            return mean.variance() == 0 || member.length == 0 ? mean.value() : samples.value(member[0]);
        }

        /** Row-major covariance of the members. */
        private double[] covariances() {
            int n = member.length;
            double[] c = new double[n * n];
            double diagonal = variogram.sill() > 0 ? variogram.sill() : 1;
            for (int i = 0; i < n; i++) {
                int p = member[i];
                c[i * n + i] = diagonal + samples.errorVariance(p);
                for (int j = i + 1; j < n; j++) {
                    int q = member[j];
                    c[i * n + j] = covariance(samples.x(p) - samples.x(q), samples.y(p) - samples.y(q));
                }
            }
            return c;
        }

        /** {@code L^-1 k} for nodes {@code from .. from + count}: row-major, members x count. */
        double[] toNodes(double[] nodesX, double[] nodesY, int from, int count) {
            double[] k = new double[member.length * count];
            for (int i = 0; i < member.length; i++) {
                double x = samples.x(member[i]);
                double y = samples.y(member[i]);
                for (int c = 0; c < count; c++) {
                    k[i * count + c] = covariance(x - nodesX[from + c], y - nodesY[from + c]);
                }
            }
            factor.forward(k, count);
            return k;
        }

        /** From {@code L^-1 k}, into {@code estimate} and {@code variance} from position {@code to} on. */
        void estimate(double[] k, int count, int to, double[] estimate, double[] variance) {
            double[] explained = new double[count];
            double[] weightSum = new double[count];
            double[] departure = new double[count];
            for (int i = 0; i < member.length; i++) {
                for (int c = 0; c < count; c++) {
                    double v = k[i * count + c];
                    explained[c] += v * v;
                    weightSum[c] += v * ones[i];
                    departure[c] += v * residual[i];
                }
            }
            for (int c = 0; c < count; c++) {
                double open = 1 - weightSum[c];
                double fromMean = variogram.sill() > 0 || member.length == 0 ? open * open / precision : 0;
                estimate[to + c] = fittedMean + departure[c];
                variance[to + c] = Math.max(0, priorVariance() - explained[c] + fromMean);
            }
        }
    }

    static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
