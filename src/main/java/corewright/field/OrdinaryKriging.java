package corewright.field;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Ordinary kriging: the mean is unknown and constant, the weights sum to one. Immutable.
 *
 * <p>With C the covariance of the samples (sill and error on its diagonal) and k that between samples and node:
 *
 * <pre>
 *   b   = 1' C^-1 z / 1' C^-1 1                         the mean, by generalised least squares
 *   est = b + k' C^-1 (z - b)
 *   var = sill - k' C^-1 k + (1 - 1' C^-1 k)^2 / 1' C^-1 1
 * </pre>
 *
 * <p>which is the same thing as the bordered system of Isaaks and Srivastava (1989), ch. 12. Source: Chiles and Delfiner
 * (2012), section 3.4.
 *
 * <p>Coincident samples are merged first; a node at a sample gets that sample's value and its error variance. A variogram
 * of sill 0 says that nothing varies: the estimate is b with equal weights, its variance 0.
 */
public final class OrdinaryKriging {
    /** Beyond this many samples the all-samples form would need gigabytes and minutes: ask for neighbours. */
    public static final int MOST_SAMPLES_AT_ONCE = 6000;

    /** Nodes solved together: their 600 x 48 block (230 kB) fits a second-level cache. Not tuned further. */
    private static final int BLOCK = 48;

    /** Nodes that one thread does in a row. Judgement. */
    private static final int RUN = 512;

    final Samples samples;
    private final Variogram variogram;
    private final Correlation correlation;
    private final NeighbourIndex index;
    private final double samePlace;

    public OrdinaryKriging(Samples all, Variogram variogram) {
        samples = all.merged();
        if (samples.size() == 0) {
            throw new IllegalArgumentException(
                    "ordinary kriging needs at least one sample: with none the mean is unknown");
        }
        this.variogram = variogram;
        correlation = new Correlation(variogram);
        index = new NeighbourIndex(samples.xs(), samples.ys());
        samePlace = samples.diagonal() * Samples.SAME_PLACE;
    }

    /**
     * Estimates at nodes, in their order.
     *
     * @param nodesX coordinate unit, same length as nodesY
     * @param neighbours how many nearest samples each node uses; 0 uses all
     */
    public Estimates estimate(double[] nodesX, double[] nodesY, int neighbours) {
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
            all.estimate(all.toNodes(nodesX, nodesY, from, count), from, estimate, variance);
        }
        for (int node = 0; node < nodesX.length; node++) {
            int[] nearest = index.nearest(nodesX[node], nodesY[node], 1, -1);
            honour(node, nearest[0], nodesX[node], nodesY[node], estimate, variance);
        }
    }

    /** Runs of nodes side by side; what a node gets depends on itself alone. */
    private void fromNearest(double[] nodesX, double[] nodesY, int neighbours, double[] estimate, double[] variance) {
        IntStream.range(0, (nodesX.length + RUN - 1) / RUN).parallel().forEach(run -> {
            int few = Math.min(neighbours, NearestKriging.MOST);
            NearestKriging nearest = new NearestKriging(samples, variogram, correlation, few);
            for (int node = run * RUN; node < Math.min(nodesX.length, (run + 1) * RUN); node++) {
                int[] near = index.nearest(nodesX[node], nodesY[node], neighbours, -1);
                if (few == neighbours && nearest.from(near)) {
                    nearest.at(nodesX[node], nodesY[node], node, estimate, variance);
                } else {
                    Local local = new Local(near);
                    local.estimate(local.toNodes(nodesX, nodesY, node, 1), node, estimate, variance);
                }
                honour(node, near[0], nodesX[node], nodesY[node], estimate, variance);
            }
        });
    }

    /** Exact where the node stands at its nearest sample. */
    private void honour(int node, int nearest, double x, double y, double[] estimate, double[] variance) {
        if (Math.hypot(samples.x(nearest) - x, samples.y(nearest) - y) <= samePlace) {
            estimate[node] = samples.value(nearest);
            variance[node] = samples.errorVariance(nearest);
        }
    }

    /** All samples as one system. */
    Local all() {
        if (samples.size() > MOST_SAMPLES_AT_ONCE) {
            throw new IllegalArgumentException(samples.size() + " samples at once, at most " + MOST_SAMPLES_AT_ONCE
                    + ": ask for the nearest neighbours");
        }
        int[] everyone = new int[samples.size()];
        Arrays.setAll(everyone, i -> i);
        return new Local(everyone);
    }

    /** The samples nearest to one of them, itself left out, as one system. */
    Local around(int sample, int neighbours) {
        return new Local(index.nearest(samples.x(sample), samples.y(sample), neighbours, sample));
    }

    /** Puts a variance of the system back to the value's unit: 0 where the variogram says that nothing varies. */
    double scaled(double variance) {
        return variogram.sill() > 0 ? variance : 0;
    }

    private double covariance(double dx, double dy) {
        return variogram.partialSill() * correlation.at(dx, dy);
    }

    /** The factored system of some of the samples. */
    final class Local {
        private final int[] member;
        final Cholesky factor;
        /** {@code L^-1 1}, {@code L^-1 (z - b)}. */
        final double[] ones;

        final double[] residual;
        /** The mean b and the precision {@code 1' C^-1 1} it has. */
        private final double fittedMean;

        final double precision;

        Local(int[] member) {
            this.member = member;
            int n = member.length;
            factor = Cholesky.of(covariances());
            ones = new double[n];
            Arrays.fill(ones, 1);
            factor.forward(ones);
            // Values are taken from one of them before products are formed, so that a large constant costs no digits.
            double reference = samples.value(member[0]);
            residual = new double[n];
            Arrays.setAll(residual, i -> samples.value(member[i]) - reference);
            factor.forward(residual);
            precision = Cholesky.dot(ones, ones);
            double shift = Cholesky.dot(ones, residual) / precision;
            fittedMean = reference + shift;
            for (int i = 0; i < n; i++) {
                residual[i] -= shift * ones[i];
            }
        }

        /** Of the members; a variogram of sill 0 stands for pure nugget of height 1, scaled back by 0. */
        private double[][] covariances() {
            int n = member.length;
            double[][] c = new double[n][n];
            double diagonal = variogram.sill() > 0 ? variogram.sill() : 1;
            for (int i = 0; i < n; i++) {
                int p = member[i];
                c[i][i] = diagonal + samples.errorVariance(p);
                for (int j = i + 1; j < n; j++) {
                    int q = member[j];
                    c[i][j] = covariance(samples.x(p) - samples.x(q), samples.y(p) - samples.y(q));
                }
            }
            return c;
        }

        /** {@code L^-1 k} for nodes {@code from .. from + count}: members by nodes. */
        double[][] toNodes(double[] nodesX, double[] nodesY, int from, int count) {
            double[][] k = new double[member.length][count];
            for (int i = 0; i < member.length; i++) {
                double x = samples.x(member[i]);
                double y = samples.y(member[i]);
                for (int c = 0; c < count; c++) {
                    k[i][c] = covariance(x - nodesX[from + c], y - nodesY[from + c]);
                }
            }
            factor.forward(k);
            return k;
        }

        /** From {@code L^-1 k}, into {@code estimate} and {@code variance} from position {@code to} on. */
        void estimate(double[][] k, int to, double[] estimate, double[] variance) {
            int count = k[0].length;
            double[] explained = new double[count];
            double[] weightSum = new double[count];
            double[] departure = new double[count];
            for (int i = 0; i < member.length; i++) {
                for (int c = 0; c < count; c++) {
                    double v = k[i][c];
                    explained[c] += v * v;
                    weightSum[c] += v * ones[i];
                    departure[c] += v * residual[i];
                }
            }
            for (int c = 0; c < count; c++) {
                double open = 1 - weightSum[c];
                estimate[to + c] = fittedMean + departure[c];
                variance[to + c] = Math.max(0, variogram.sill() - explained[c] + scaled(open * open / precision));
            }
        }
    }
}
