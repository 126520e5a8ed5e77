package corewright.field;

/**
 * Matern correlation of two half-integer orders, as functions of distance over range.
 *
 * <p>Source: Rasmussen and Williams, Gaussian Processes for Machine Learning (2006), section 4.2.1; the range here is
 * theirs divided by the square root of 2 nu, so that the exponent is exp(-a).
 */
public enum Matern {
    /** (1 + a) exp(-a): continuous slope. */
    THREE_HALVES(4.744) {
        @Override
        public double correlation(double a) {
            return (1 + a) * Math.exp(-a);
        }
    },
    /** (1 + a + a²/3) exp(-a): continuous curvature. */
    FIVE_HALVES(5.918) {
        @Override
        public double correlation(double a) {
            return (1 + a + a * a / 3) * Math.exp(-a);
        }
    };

    private final double reach;

    Matern(double reach) {
        this.reach = reach;
    }

    /** Correlation at a distance of {@code a} ranges. */
    public abstract double correlation(double a);

    /** Ranges at which the correlation has fallen to 0.05: beyond it readings tell next to nothing of each other. */
    public double reach() {
        return reach;
    }
}
