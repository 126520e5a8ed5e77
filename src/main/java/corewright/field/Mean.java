package corewright.field;

/**
 * What is known of the field's mean before the samples speak: a normal prior. Source: Omre (1987), Math. Geology
 * 19:25-39 (Bayesian kriging); its limits are simple kriging (variance 0) and ordinary kriging (infinite).
 *
 * @param value value unit; without effect when the variance is infinite
 * @param variance value unit squared, 0 or more, may be infinite
 */
public record Mean(double value, double variance) {
    public Mean {
        if (!Double.isFinite(value) || !(variance >= 0)) {
            throw new IllegalArgumentException("mean " + value + " with variance " + variance);
        }
    }

    /** Known for certain: simple kriging. */
    public static Mean known(double value) {
        return new Mean(value, 0);
    }

    /** Nothing known: ordinary kriging. */
    public static Mean unknown() {
        return new Mean(0, Double.POSITIVE_INFINITY);
    }

    double precision() {
        return 1 / variance;
    }
}
