package corewright.damage;

import java.util.Arrays;

/** Ten, fifty and ninety per cent of realisations lie below these. */
public record Quantiles(double p10, double p50, double p90) {
    public static final Quantiles ZERO = new Quantiles(0, 0, 0);

    public Quantiles {
        if (!(p10 <= p50 && p50 <= p90)) {
            throw new IllegalArgumentException("quantiles out of order: " + p10 + ", " + p50 + ", " + p90);
        }
    }

    /** Of equally likely outcomes, linear between their order statistics. */
    static Quantiles of(double[] outcomes) {
        if (outcomes.length == 0) {
            return ZERO;
        }
        double[] sorted = outcomes.clone();
        Arrays.sort(sorted);
        return new Quantiles(at(sorted, 0.1), at(sorted, 0.5), at(sorted, 0.9));
    }

    private static double at(double[] sorted, double share) {
        double place = share * (sorted.length - 1);
        int low = (int) place;
        int high = Math.min(low + 1, sorted.length - 1);
        return sorted[low] + (place - low) * (sorted[high] - sorted[low]);
    }

    /** Of the sum of two quantities that are large or small together. */
    public Quantiles plus(Quantiles other) {
        return new Quantiles(p10 + other.p10, p50 + other.p50, p90 + other.p90);
    }

    /** The same in another unit. */
    public Quantiles times(double factor) {
        return new Quantiles(p10 * factor, p50 * factor, p90 * factor);
    }
}
