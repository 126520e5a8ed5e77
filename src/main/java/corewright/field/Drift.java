package corewright.field;

import java.util.stream.IntStream;

/**
 * What several blocks of observations say of the drift coefficients together, each block being taken as independent of the
 * others: precisions and precision-weighted means beyond the prior's add up.
 *
 * <p>Within a block with sites (t, v): mean {@code m + V G' alpha}, covariance {@code V - X'X}, {@code X = L⁻¹ T½ G V}, G the
 * terms (Rasmussen and Williams 2006, section 2.7, for explicit basis functions with a normal prior).
 */
final class Drift {
    private final Model prior;
    /** Coefficients that are not known beforehand. */
    private final int[] free;

    private final double[][] precision;
    private final double[] weighted;
    private final double[] priorPrecision;

    Drift(Model prior) {
        this.prior = prior;
        free = IntStream.range(0, prior.terms())
                .filter(k -> prior.driftCovariance(k, k) > 0)
                .toArray();
        int f = free.length;
        priorPrecision = new double[f];
        precision = new double[f][f];
        weighted = new double[f];
        for (int a = 0; a < f; a++) {
            priorPrecision[a] = 1 / prior.driftCovariance(free[a], free[a]);
            precision[a][a] = priorPrecision[a];
            weighted[a] = prior.drift(free[a]) * priorPrecision[a];
        }
    }

    /** Hears one more block. */
    void add(Places places, ExpectationPropagation sites) {
        int f = free.length;
        int n = places.size();
        if (f == 0 || n == 0) {
            return;
        }
        double[][] x = new double[n][f];
        double[] mean = new double[f];
        for (int a = 0; a < f; a++) {
            mean[a] = prior.drift(free[a]);
            for (int i = 0; i < n; i++) {
                x[i][a] = prior.withCoefficient(places, i, free[a]);
                mean[a] += x[i][a] * sites.alpha(i);
            }
        }
        sites.reduce(x);
        double[][] covariance = new double[f][f];
        for (int a = 0; a < f; a++) {
            for (int b = 0; b < f; b++) {
                covariance[a][b] = a == b ? prior.driftCovariance(free[a], free[a]) : 0;
                for (int i = 0; i < n; i++) {
                    covariance[a][b] -= x[i][a] * x[i][b];
                }
            }
        }
        double[][] own = inverse(covariance);
        for (int a = 0; a < f; a++) {
            weighted[a] -= priorPrecision[a] * prior.drift(free[a]);
            for (int b = 0; b < f; b++) {
                precision[a][b] += own[a][b] - (a == b ? priorPrecision[a] : 0);
                weighted[a] += own[a][b] * mean[b];
            }
        }
    }

    /** The model with the coefficients as all blocks leave them. */
    Model informed() {
        int f = free.length;
        int k = prior.terms();
        double[] mean = IntStream.range(0, k).mapToDouble(prior::drift).toArray();
        double[] full = new double[k * k];
        double[][] covariance = inverse(precision);
        for (int a = 0; a < f; a++) {
            mean[free[a]] = 0;
            for (int b = 0; b < f; b++) {
                full[free[a] * k + free[b]] = covariance[a][b];
                mean[free[a]] += covariance[a][b] * weighted[b];
            }
        }
        return prior.with(mean, full);
    }

    private static double[][] inverse(double[][] symmetric) {
        double[][] inverse = new double[symmetric.length][symmetric.length];
        Cholesky factor = Cholesky.of(symmetric);
        for (int a = 0; a < inverse.length; a++) {
            double[] unit = new double[inverse.length];
            unit[a] = 1;
            factor.solve(unit);
            for (int b = 0; b < unit.length; b++) {
                inverse[b][a] = unit[b];
            }
        }
        return inverse;
    }
}
