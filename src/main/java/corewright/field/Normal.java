package corewright.field;

/** The standard normal distribution. */
public final class Normal {
    private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

    /** Beyond this the rational form loses digits and a continued fraction takes over. */
    private static final double FAR = 7.07106781186547;

    private static final double[] TOP = {
        3.52624965998911e-02,
        0.700383064443688,
        6.37396220353165,
        33.912866078383,
        112.079291497871,
        221.213596169931,
        220.206867912376
    };
    private static final double[] BOTTOM = {
        8.83883476483184e-02,
        1.75566716318264,
        16.064177579207,
        86.7807322029461,
        296.564248779674,
        637.333633378831,
        793.826512519948,
        440.413735824752
    };

    private Normal() {}

    /** Density. */
    public static double density(double x) {
        return Math.exp(-0.5 * x * x) / ROOT_TWO_PI;
    }

    /**
     * Probability of a value below {@code x}, to about 1e-15.
     *
     * <p>Source: Hart, Computer Approximations (1968), algorithm 5666, in the double-precision arrangement of West,
     * "Better approximations to cumulative normal functions", Wilmott (2005).
     */
    public static double below(double x) {
        double a = Math.abs(x);
        if (a > 37) {
            return x > 0 ? 1 : 0;
        }
        double bell = Math.exp(-0.5 * a * a);
        double tail =
                a < FAR ? bell * polynomial(TOP, a) / polynomial(BOTTOM, a) : bell / ROOT_TWO_PI / continuedFraction(a);
        return x > 0 ? 1 - tail : tail;
    }

    /** Probability of a value between, taken in the lower tail so that no digits cancel. */
    public static double between(double low, double high) {
        return low > 0 ? below(-low) - below(-high) : below(high) - below(low);
    }

    /** a + 1/(a + 2/(a + ...)), Abramowitz and Stegun 26.2.14; 40 steps settle the last digit beyond {@link #FAR}. */
    private static double continuedFraction(double a) {
        double sum = a;
        for (int k = 40; k > 0; k--) {
            sum = a + k / sum;
        }
        return sum;
    }

    private static double polynomial(double[] coefficients, double x) {
        double sum = 0;
        for (double c : coefficients) {
            sum = sum * x + c;
        }
        return sum;
    }
}
