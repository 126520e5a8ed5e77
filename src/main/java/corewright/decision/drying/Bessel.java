package corewright.decision.drying;

/**
 * Bessel functions of order 0 and 1 of a positive argument, to some 1e-10: power series below 12, Hankel's asymptotic series
 * above (Abramowitz and Stegun 1964, 9.1.10 to 9.1.13 and 9.2.5 to 9.2.10).
 */
final class Bessel {
    /** Up to here the power series loses fewer digits than the asymptotic one leaves out. */
    private static final double FAR = 12;

    private static final double EULER = 0.57721566490153286;

    private Bessel() {}

    static double j(int order, double x) {
        return x < FAR ? series(order, x) : far(order, x, true);
    }

    static double y(int order, double x) {
        return x >= FAR ? far(order, x, false) : order == 0 ? y0(x) : y1(x);
    }

    private static double series(int order, double x) {
        double q = -x * x / 4;
        double term = order == 0 ? 1 : x / 2;
        double sum = term;
        for (int k = 1; Math.abs(term) > 1e-17 || k < x; k++) {
            term *= q / (k * (double) (k + order));
            sum += term;
        }
        return sum;
    }

    /** Y0 = 2/pi [ (ln(x/2) + C) J0 - sum of H_k (-x^2/4)^k / k!^2 ]. */
    private static double y0(double x) {
        double q = -x * x / 4;
        double term = 1;
        double harmonic = 0;
        double sum = 0;
        for (int k = 1; Math.abs(term) > 1e-17 || k < x; k++) {
            term *= q / (k * (double) k);
            harmonic += 1.0 / k;
            sum += harmonic * term;
        }
        return 2 / Math.PI * ((Math.log(x / 2) + EULER) * series(0, x) - sum);
    }

    /** Y1 = -2/(pi x) + 2/pi ln(x/2) J1 - x/(2 pi) sum of (psi(k+1) + psi(k+2)) (-x^2/4)^k / (k! (k+1)!). */
    private static double y1(double x) {
        double q = -x * x / 4;
        double term = 1;
        double psi = -2 * EULER + 1;
        double sum = psi;
        for (int k = 1; Math.abs(term) > 1e-17 || k < x; k++) {
            term *= q / (k * (double) (k + 1));
            psi += 1.0 / k + 1.0 / (k + 1);
            sum += psi * term;
        }
        return (-2 / x + 2 * Math.log(x / 2) * series(1, x) - x / 2 * sum) / Math.PI;
    }

    private static double far(int order, double x, boolean first) {
        double mu = 4.0 * order * order;
        double p = 1;
        double q = 0;
        double term = 1;
        for (int k = 1; k < 40; k++) {
            double next = term * (mu - (2.0 * k - 1) * (2.0 * k - 1)) / (8 * k * x);
            if (Math.abs(next) > Math.abs(term)) {
                break; // from here on the series grows again
            }
            term = next;
            switch (k % 4) {
                case 1 -> q += term;
                case 2 -> p -= term;
                case 3 -> q -= term;
                default -> p += term;
            }
        }
        double chi = x - (order / 2.0 + 0.25) * Math.PI;
        double root = Math.sqrt(2 / (Math.PI * x));
        return first ? root * (p * Math.cos(chi) - q * Math.sin(chi)) : root * (p * Math.sin(chi) + q * Math.cos(chi));
    }
}
