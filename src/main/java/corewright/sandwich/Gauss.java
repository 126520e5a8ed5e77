package corewright.sandwich;

/** Gauss points on -1 .. 1 as {place, weight}. Source: M. Abramowitz and I. A. Stegun (1964), table 25.4. */
final class Gauss {
    private static final double[][] TWO = {{-1 / Math.sqrt(3), 1}, {1 / Math.sqrt(3), 1}};
    private static final double[][] THREE = {{-Math.sqrt(0.6), 5 / 9.0}, {0, 8 / 9.0}, {Math.sqrt(0.6), 5 / 9.0}};
    private static final double[][] FOUR = {
        {-0.861136311594053, 0.347854845137454},
        {-0.339981043584856, 0.652145154862546},
        {0.339981043584856, 0.652145154862546},
        {0.861136311594053, 0.347854845137454}
    };

    private Gauss() {}

    static double[][] line(int points) {
        return switch (points) {
            case 2 -> TWO;
            case 3 -> THREE;
            case 4 -> FOUR;
            default -> throw new IllegalArgumentException("no rule of " + points + " points");
        };
    }
}
