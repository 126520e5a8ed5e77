package corewright.field;

import corewright.linear.Dense;

/**
 * The field anywhere, given normal sites: precision t and, relative to zero, shift v at each place. Exact kriging with
 * pseudo-values v/t of error variance 1/t.
 *
 * <p>Source: Rasmussen and Williams, Gaussian Processes for Machine Learning (2006), section 3.6 (prediction).
 */
final class Posterior {
    private final Model model;
    private final Places places;
    private final double[] root;
    private final double[] weights;
    private final Cholesky factor;

    Posterior(Model model, Places places, Sites sites) {
        this.model = model;
        this.places = places;
        int n = places.size();
        double[][] k = model.covariance(places);
        root = new double[n];
        weights = new double[n];
        double[][] b = new double[n][n];
        for (int i = 0; i < n; i++) {
            root[i] = Math.sqrt(sites.precision(i));
            weights[i] = sites.shift(i) - sites.precision(i) * model.mean(places, i);
        }
        double[] scaled = new double[n];
        for (int i = 0; i < n; i++) {
            double sum = 0;
            for (int j = 0; j < n; j++) {
                b[i][j] = root[i] * k[i][j] * root[j];
                sum += k[i][j] * weights[j];
            }
            b[i][i] += 1;
            scaled[i] = root[i] * sum;
        }
        factor = Cholesky.of(b);
        factor.solve(scaled);
        for (int i = 0; i < n; i++) {
            weights[i] -= root[i] * scaled[i];
        }
    }

    /** Mean and standard deviation of the field at some of the targets, into the slots of the same index. */
    void estimate(Places targets, int[] which, double[] mean, double[] sd) {
        int width = which.length;
        double[][] cross = model.cross(places, targets, which);
        for (int j = 0; j < width; j++) {
            mean[which[j]] = model.mean(targets, which[j]);
            sd[which[j]] = model.covariance(targets, which[j], targets, which[j]);
        }
        for (int i = 0; i < root.length; i++) {
            for (int j = 0; j < width; j++) {
                mean[which[j]] += weights[i] * cross[i][j];
            }
        }
        reduce(cross);
        for (int i = 0; i < root.length; i++) {
            for (int j = 0; j < width; j++) {
                double e = cross[i][j];
                sd[which[j]] -= e * e;
            }
        }
        for (int j : which) {
            sd[j] = Math.sqrt(Math.max(0, sd[j]));
        }
    }

    /** Covariance of all targets with each other; upper triangle filled. */
    double[][] covariance(Places targets) {
        int m = targets.size();
        int[] all = java.util.stream.IntStream.range(0, m).toArray();
        double[][] cross = model.cross(places, targets, all);
        reduce(cross);
        double[][] covariance = new double[m][m];
        for (int i = 0; i < m; i++) {
            for (int j = i; j < m; j++) {
                covariance[i][j] = model.covariance(targets, i, targets, j);
            }
            double[] factors = new double[root.length];
            for (int k = 0; k < factors.length; k++) {
                factors[k] = cross[k][i];
            }
            Dense.subtractRounded(covariance[i], cross, factors, 0, i, m);
        }
        return covariance;
    }

    /** Turns prior covariances, sites by targets, into L⁻¹ T½ times them. */
    private void reduce(double[][] cross) {
        for (int i = 0; i < root.length; i++) {
            for (int j = 0; j < cross[i].length; j++) {
                cross[i][j] *= root[i];
            }
        }
        factor.forward(cross);
    }
}
