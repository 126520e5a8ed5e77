package corewright.field;

import corewright.field.LatentPrior.Coefficient;
import java.util.Arrays;
import java.util.List;

/**
 * A latent field's prior with range and sill settled: mean {@code sum m_k g_k(x)}, covariance
 * {@code sill rho(|x - x'| / range) + sum V_kl g_k(x) g_l(x')}.
 *
 * <p>The drift coefficients' covariance V is full, since what readings elsewhere said of them ties them together.
 */
final class Model {
    private final Matern kernel;
    final double range;
    final double sill;
    private final double[] drift;
    /** Row-major, coefficients by coefficients. */
    private final double[] driftCovariance;

    private final boolean unknown;

    Model(Matern kernel, double range, double sill, double[] drift, double[] driftCovariance) {
        this.kernel = kernel;
        this.range = range;
        this.sill = sill;
        this.drift = drift;
        this.driftCovariance = driftCovariance;
        unknown = Arrays.stream(driftCovariance).anyMatch(v -> v != 0);
    }

    /** The prior as it stands, coefficients independent of each other. */
    static Model of(LatentPrior prior, double range, double sill) {
        List<Coefficient> coefficients = prior.drift();
        int k = coefficients.size();
        double[] mean = new double[k];
        double[] covariance = new double[k * k];
        for (int i = 0; i < k; i++) {
            mean[i] = coefficients.get(i).mean();
            covariance[i * k + i] = coefficients.get(i).variance();
        }
        return new Model(prior.kernel(), range, sill, mean, covariance);
    }

    /** The same with other coefficients. */
    Model with(double[] mean, double[] covariance) {
        return new Model(kernel, range, sill, mean, covariance);
    }

    int terms() {
        return drift.length;
    }

    double drift(int k) {
        return drift[k];
    }

    double driftCovariance(int k, int l) {
        return driftCovariance[k * drift.length + l];
    }

    double mean(Places p, int i) {
        double sum = 0;
        for (int k = 0; k < drift.length; k++) {
            sum += drift[k] * p.term(k, i);
        }
        return sum;
    }

    double[] mean(Places p) {
        double[] mean = new double[p.size()];
        for (int i = 0; i < mean.length; i++) {
            mean[i] = mean(p, i);
        }
        return mean;
    }

    double covariance(Places a, int i, Places b, int j) {
        return covariance(a, i, b, j, drawn(b, j));
    }

    private double covariance(Places a, int i, Places b, int j, double[] drawn) {
        double dx = a.x(i) - b.x(j);
        double dy = a.y(i) - b.y(j);
        double sum = sill * kernel.correlation(Math.sqrt(dx * dx + dy * dy) / range);
        for (int k = 0; k < drawn.length; k++) {
            sum += a.term(k, i) * drawn[k];
        }
        return sum;
    }

    /** V times the terms at a place; empty where all coefficients are known. */
    private double[] drawn(Places p, int i) {
        double[] drawn = new double[unknown ? drift.length : 0];
        for (int k = 0; k < drawn.length; k++) {
            drawn[k] = withCoefficient(p, i, k);
        }
        return drawn;
    }

    /** Places by those of the targets that are asked for. */
    double[][] cross(Places places, Places targets, int[] which) {
        double[][] cross = new double[places.size()][which.length];
        for (int j = 0; j < which.length; j++) {
            double[] drawn = drawn(targets, which[j]);
            for (int i = 0; i < places.size(); i++) {
                cross[i][j] = covariance(places, i, targets, which[j], drawn);
            }
        }
        return cross;
    }

    /** Of places among each other. */
    double[][] covariance(Places p) {
        int n = p.size();
        double[][] c = new double[n][n];
        for (int i = 0; i < n; i++) {
            double[] drawn = drawn(p, i);
            for (int j = i; j < n; j++) {
                c[i][j] = covariance(p, j, p, i, drawn);
                c[j][i] = c[i][j];
            }
        }
        return c;
    }

    /** Prior covariance of the places with coefficient k: {@code sum_l V_kl g_l}. */
    double withCoefficient(Places p, int i, int k) {
        double sum = 0;
        for (int l = 0; l < drift.length; l++) {
            sum += driftCovariance(k, l) * p.term(l, i);
        }
        return sum;
    }
}
