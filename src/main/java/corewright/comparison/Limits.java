package corewright.comparison;

import java.util.Arrays;
import java.util.List;

/**
 * Between what a difference lies.
 *
 * @param low one of two hundred pairs of draws gives less
 * @param high one of two hundred gives more
 */
public record Limits(double low, double high) {
    /**
     * Share of the pairs beyond each limit. Many questions are asked of one pair of surveys at once; of a hundred pairs of the same deck
     * at most five may have any of them answered wrongly: with one in a hundred it was six (docs/performance.md).
     */
    private static final double BEYOND = 0.005;

    /** How often each draw of one survey is put beside one of the other. */
    private static final int TURNS = 20;

    /** Fewer draws do not tell one in two hundred, put together as often as they are. */
    static final int LEAST_DRAWS = 100;

    /**
     * The difference of two quantities whose errors have nothing in common: draws put together in many ways, but never a draw with that of
     * its own number, since both surveys are drawn from the same random numbers.
     */
    static Limits ofDifference(List<Double> before, List<Double> after) {
        int n = before.size();
        int m = after.size();
        double[] differences = new double[TURNS * n];
        for (int turn = 0; turn < TURNS; turn++) {
            int shift = 1 + (turn * (m - 1)) / TURNS;
            for (int d = 0; d < n; d++) {
                differences[turn * n + d] = after.get((d + shift) % m) - before.get(d);
            }
        }
        Arrays.sort(differences);
        int last = differences.length - 1;
        return new Limits(
                differences[(int) Math.floor(BEYOND * last)], differences[(int) Math.ceil((1 - BEYOND) * last)]);
    }

    /** Farther from their middle by a factor. */
    Limits widened(double factor) {
        double middle = (low + high) / 2;
        return new Limits(middle + factor * (low - middle), middle + factor * (high - middle));
    }

    /** Wide enough for a difference that the draws do not hold. */
    Limits with(double difference) {
        return new Limits(Math.min(low, difference), Math.max(high, difference));
    }

    /** Whether nothing can have changed. */
    boolean holdsNought() {
        return low <= 0 && high >= 0;
    }
}
