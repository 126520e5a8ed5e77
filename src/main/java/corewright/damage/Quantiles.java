package corewright.damage;

/** Ten, fifty and ninety per cent of realisations lie below these. */
public record Quantiles(double p10, double p50, double p90) {
    public static final Quantiles ZERO = new Quantiles(0, 0, 0);

    public Quantiles {
        if (!(p10 <= p50 && p50 <= p90)) {
            throw new IllegalArgumentException("quantiles out of order: " + p10 + ", " + p50 + ", " + p90);
        }
    }

    /** The same in another unit. */
    public Quantiles times(double factor) {
        return new Quantiles(p10 * factor, p50 * factor, p90 * factor);
    }
}
