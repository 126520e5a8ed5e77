package corewright.field;

/**
 * How correlation falls with distance; {@code a} is distance over range.
 *
 * <p>Sources: spherical, exponential, gaussian: Chiles and Delfiner (2012), section 2.5, in the scaling of the R package
 * gstat (no factor 3 in the exponents); Matern with smoothness 3/2: Rasmussen and Williams (2006), Gaussian Processes for
 * Machine Learning, section 4.2.1, with the root of 3 taken into the range.
 */
public enum Shape {
    /** {@code 1 - 1.5 a + 0.5 a^3}, and 0 from {@code a = 1} on. */
    SPHERICAL {
        @Override
        public double correlation(double a) {
            return a < 1 ? 1 - a * (1.5 - 0.5 * a * a) : 0;
        }
    },
    /** {@code exp(-a)}. */
    EXPONENTIAL {
        @Override
        public double correlation(double a) {
            return Math.exp(-a);
        }
    },
    /** {@code exp(-a^2)}. */
    GAUSSIAN {
        @Override
        public double correlation(double a) {
            return Math.exp(-a * a);
        }
    },
    /** {@code (1 + a) exp(-a)}. */
    MATERN32 {
        @Override
        public double correlation(double a) {
            return (1 + a) * Math.exp(-a);
        }
    };

    /**
     * Correlation at a scaled distance.
     *
     * @param a distance over range, 0 or more
     * @return 1 at 0, falling to 0
     */
    public abstract double correlation(double a);
}
