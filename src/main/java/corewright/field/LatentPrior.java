package corewright.field;

import java.util.List;

/**
 * What is believed of a latent field before any observation: mean = sum of drift coefficients times terms, covariance =
 * sill times a Matern correlation. Coefficients are normal; range and sill are log-normal and tried at a few values.
 *
 * @param drift one for the constant, then one for each further term
 */
public record LatentPrior(Matern kernel, List<Coefficient> drift, Scale range, Scale sill) {
    public LatentPrior {
        drift = List.copyOf(drift);
    }

    /** The same with range and sill held at their modes, for too few observations to say anything of them. */
    public LatentPrior held() {
        return new LatentPrior(kernel, drift, Scale.fixed(range.mode), Scale.fixed(sill.mode));
    }

    /** Probability that the field lies above a bound at a place whose further drift terms are zero. */
    public double above(double bound) {
        Coefficient constant = drift.get(0);
        return Normal.below((constant.mean - bound) / Math.sqrt(constant.variance + sill.mode));
    }

    /** A drift coefficient's normal prior. */
    public record Coefficient(double mean, double variance) {}

    /**
     * A positive quantity's log-normal prior and the values tried, ascending.
     *
     * @param logSd standard deviation of its logarithm
     */
    public record Scale(List<Double> trials, double mode, double logSd) {
        public Scale {
            trials = List.copyOf(trials);
            if (!trials.contains(mode)) {
                throw new IllegalArgumentException("mode " + mode + " is not among the trials " + trials);
            }
        }

        /** A known quantity. */
        public static Scale fixed(double value) {
            return new Scale(List.of(value), value, 1);
        }

        double logPrior(double value) {
            double z = Math.log(value / mode) / logSd;
            return -0.5 * z * z;
        }
    }
}
