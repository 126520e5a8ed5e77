package corewright.field;

import java.util.List;

/**
 * Normal approximation to a latent field seen through bounded observations.
 *
 * <p>Each observation is replaced by a normal site of precision t and shift v, refined in rounds until the approximation
 * and the observation agree on mean and variance. With prior covariance K: B = I + T½ K T½ = L L', posterior covariance
 * K − V'V with V = L⁻¹ T½ K, posterior mean K v − V'V v; all relative to the prior mean.
 *
 * <p>Source: Rasmussen and Williams, Gaussian Processes for Machine Learning (2006), section 3.6 and algorithm 3.5; all
 * sites are renewed together, with damping.
 */
final class ExpectationPropagation {
    /**
     * A site never sharpens the field by less. Its part of the prior variance is then some 1e-8, from which rounding (n
     * times 1e-16) leaves the marginal variance right to five digits; what it adds to the field is below notice.
     */
    private static final double LEAST_PRECISION = 1e-8;

    private static final double DAMPING = 0.7;

    private final List<Site> sites;
    private final double[] mean;
    private final double[][] covariance;
    private final int n;
    private final double[] precision;
    private final double[] shift;
    private final double[] marginalMean;
    private final double[] marginalVariance;
    private double[] weights = {};
    private final double[][] b;
    private Cholesky factor = Cholesky.of(new double[0][0]);

    /** @param covariance prior, symmetric; not written to */
    ExpectationPropagation(List<Site> sites, double[] mean, double[][] covariance) {
        this.sites = sites;
        this.mean = mean;
        this.covariance = covariance;
        n = mean.length;
        precision = new double[n];
        shift = new double[n];
        marginalMean = new double[n];
        marginalVariance = new double[n];
        b = new double[n][n];
        for (int i = 0; i < n; i++) {
            precision[i] = LEAST_PRECISION;
            if (sites.get(i) instanceof Site.Value s) {
                precision[i] = 1 / (s.error() * s.error());
                shift[i] = (s.value() - mean[i]) * precision[i];
            }
        }
    }

    /** Starts from the sites of a run with other scales. */
    void startFrom(ExpectationPropagation other) {
        System.arraycopy(other.precision, 0, precision, 0, n);
        System.arraycopy(other.shift, 0, shift, 0, n);
    }

    /** Starts from sites known roughly; those not heard yet stay as they are. */
    void startFrom(Sites sites) {
        for (int i = 0; i < n; i++) {
            if (sites.precision(i) > 0 && this.sites.get(i) instanceof Site.Interval) {
                precision[i] = sites.precision(i);
                shift[i] = sites.shift(i) - precision[i] * mean[i];
            }
        }
    }

    /** Notes the first sites under these numbers of others. */
    void noteIn(Sites others, int[] members) {
        for (int i = 0; i < members.length; i++) {
            others.note(members[i], precision(i), shift(i));
        }
    }

    /** Rounds until settled; true when the sites stopped moving. */
    boolean run(int rounds, double tolerance) {
        double[][] scratch = new double[n][n];
        update(scratch);
        boolean settled = false;
        for (int round = 0; round < rounds && !settled; round++) {
            settled = renewSites() <= tolerance;
            update(scratch);
        }
        return settled;
    }

    /** Posterior at the sites from the present precisions and shifts. The variance is (1 − (B⁻¹)_ii) / t_i. */
    private void update(double[][] scratch) {
        double[] root = new double[n];
        for (int i = 0; i < n; i++) {
            root[i] = Math.sqrt(precision[i]);
        }
        for (int i = 0; i < n; i++) {
            for (int j = i; j < n; j++) {
                b[i][j] = root[i] * covariance[i][j] * root[j];
            }
            b[i][i] += 1;
        }
        factor = Cholesky.in(b);
        double[] inverse = factor.inverseDiagonal(scratch);
        weights = weights();
        for (int i = 0; i < n; i++) {
            marginalVariance[i] = (1 - inverse[i]) / precision[i];
            marginalMean[i] = Cholesky.dot(covariance[i], weights);
        }
    }

    /** alpha = v − T½ B⁻¹ T½ K v: the posterior mean anywhere is the prior mean plus k'alpha. */
    private double[] weights() {
        double[] scaled = new double[n];
        for (int i = 0; i < n; i++) {
            scaled[i] = Math.sqrt(precision[i]) * Cholesky.dot(covariance[i], shift);
        }
        factor.solve(scaled);
        for (int i = 0; i < n; i++) {
            scaled[i] = shift[i] - Math.sqrt(precision[i]) * scaled[i];
        }
        return scaled;
    }

    private double renewSites() {
        double change = 0;
        for (int i = 0; i < n; i++) {
            if (!(sites.get(i) instanceof Site.Interval s)) {
                continue;
            }
            Cavity c = cavity(i);
            Tilted tilted = Tilted.of(s, mean[i] + c.mean, c.variance);
            double newVariance =
                    c.variance + c.variance * c.variance * (tilted.curvature - tilted.slope * tilted.slope);
            double newMean = c.mean + c.variance * tilted.slope;
            double t = Math.max(LEAST_PRECISION, 1 / newVariance - 1 / c.variance);
            double v = newMean * (t + 1 / c.variance) - c.mean / c.variance;
            double stepT = DAMPING * (t - precision[i]);
            double stepV = DAMPING * (v - shift[i]);
            precision[i] += stepT;
            shift[i] += stepV;
            change = Math.max(change, Math.abs(stepT) / (1 + t));
            change = Math.max(change, Math.abs(stepV) / (1 + Math.abs(v)));
        }
        return change;
    }

    /** Logarithm of the approximate probability of all observations (Rasmussen and Williams, equation 3.65). */
    double logEvidence() {
        double sum = -factor.logDiagonal();
        for (int i = 0; i < n; i++) {
            Cavity c = cavity(i);
            double t = precision[i];
            double v = shift[i];
            double one = 1 + t * c.variance;
            sum += Math.log(probability(i, c)) + 0.5 * Math.log(one) + 0.5 * v * marginalMean[i];
            sum += 0.5 * (c.mean * (t * c.mean - 2 * v) - v * v * c.variance) / one;
        }
        return sum;
    }

    /** Probability that observation i has nothing to do with the field, given all others. */
    double doubt(int i) {
        if (!(sites.get(i) instanceof Site.Interval s)) {
            return 0;
        }
        return s.doubt() * s.chance() / probability(i, cavity(i));
    }

    /** How many standard deviations a value site lies from what all others say; 0 for an interval. */
    double surprise(int i) {
        if (!(sites.get(i) instanceof Site.Value s)) {
            return 0;
        }
        Cavity c = cavity(i);
        return (s.value() - mean[i] - c.mean) / Math.sqrt(c.variance + s.error() * s.error());
    }

    private double probability(int i, Cavity c) {
        Site site = sites.get(i);
        if (site instanceof Site.Value s) {
            double sd = Math.sqrt(c.variance + s.error() * s.error());
            return Math.max(Double.MIN_NORMAL, Normal.density((s.value() - mean[i] - c.mean) / sd) / sd);
        }
        return Tilted.of((Site.Interval) site, mean[i] + c.mean, c.variance).probability;
    }

    /** The posterior at site i with its own observation taken out, relative to the prior mean. */
    private Cavity cavity(int i) {
        double variance = 1 / Math.max(1e-12, 1 / marginalVariance[i] - precision[i]);
        return new Cavity(variance * (marginalMean[i] / marginalVariance[i] - shift[i]), variance);
    }

    /** A site's precision. */
    double precision(int i) {
        return precision[i];
    }

    /** A site's shift, relative to zero instead of the prior mean. */
    double shift(int i) {
        return shift[i] + precision[i] * mean[i];
    }

    /** k'alpha is the posterior mean, less the prior one, wherever the prior covariance with the sites is k. */
    double alpha(int i) {
        return weights[i];
    }

    /** Turns prior covariances with other places, sites by places, into L⁻¹ T½ times them. */
    void reduce(double[][] cross) {
        for (int i = 0; i < n; i++) {
            double root = Math.sqrt(precision[i]);
            for (int j = 0; j < cross[i].length; j++) {
                cross[i][j] *= root;
            }
        }
        factor.forward(cross);
    }

    private record Cavity(double mean, double variance) {}

    /** Probability of an interval observation under a normal, and the two derivatives that move the normal. */
    private record Tilted(double probability, double slope, double curvature) {
        static Tilted of(Site.Interval s, double mean, double variance) {
            double d = Math.sqrt(variance + s.noise() * s.noise());
            double a = (s.low() - mean) / d;
            double b = (s.high() - mean) / d;
            double sure = 1 - s.doubt();
            double z = Math.max(Double.MIN_NORMAL, sure * Normal.between(a, b) + s.doubt() * s.chance());
            double atLow = Normal.density(a);
            double atHigh = Normal.density(b);
            double slope = sure * (atLow - atHigh) / (d * z);
            double curvature = sure * (weighted(a, atLow) - weighted(b, atHigh)) / (d * d * z);
            return new Tilted(z, slope, curvature);
        }

        private static double weighted(double bound, double density) {
            return density == 0 ? 0 : bound * density;
        }
    }
}
