package corewright.damage;

import java.util.List;

/**
 * How the map of one face stands up to the readings it rests on: whether near readings are as alike as the fit holds, and
 * whether readings come out as the rest of them foretell.
 *
 * @param water meter readings, as a moisture index cut off at {@link #LEAST_INDEX} and {@link #MOST_INDEX}, beyond which
 *     a reading only says dry or wet; what comes true is "wet"
 * @param bond taps: 0 sound, 0.5 dull, 1 hollow; what comes true is "dull or hollow"
 * @param voidMm3 empty space under the whole face, draw by draw
 */
public record Insight(Quantity water, Quantity bond, List<Double> voidMm3) {
    public static final double LEAST_INDEX = 20;
    public static final double MOST_INDEX = 180;

    public Insight {
        voidMm3 = List.copyOf(voidMm3);
    }

    /** One quantity as read. */
    public record Quantity(List<Lag> lags, List<Foretold> foretold) {
        public Quantity {
            lags = List.copyOf(lags);
            foretold = List.copyOf(foretold);
        }
    }

    /**
     * A class of distances between two readings of one bay.
     *
     * @param lagMm mean distance of the pairs
     * @param seen mean squared half-difference of the pairs
     * @param model the same as the fitted fields would have it, averaged over the bays
     */
    public record Lag(int pairs, double lagMm, double seen, double model) {}

    /**
     * One reading foretold from the others, ranges and sills held.
     *
     * @param seen as read
     * @param low below it in one case of ten, the reading's own scatter counted in
     * @param middle as often below as above
     * @param high above it in one case of ten
     * @param within foretold that the reading lies between low and high: 0.8, more where they lie at an end
     * @param probability foretold that it comes true
     * @param came whether it did
     */
    public record Foretold(
            double seen, double low, double middle, double high, double within, double probability, boolean came) {}
}
