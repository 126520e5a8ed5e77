package corewright.stiffness;

import corewright.damage.Quantiles;
import java.util.stream.DoubleStream;

/**
 * In which range what a panel has of its stiffness truly lies. The outlooks ({@link Outlook}) say what extent, depth, water and foam
 * make of it. They do not say that damage has another shape than the map's: the place is chosen where the map is at its worst, so the truth
 * there is stiffer more often than softer. And the calculation errs, by up to 3 % against solids on voids. Both are parts of what was lost, so
 * they are told as parts of the loss in logarithms, and joined with the outlooks' as things that do not hang together, by the root of
 * the squares. The parts are those that hold the truth in eight of ten invented decks; docs/stiffness.md tells the count on others.
 */
final class Likely {
    private static final double STIFFER = 0.15;
    private static final double SOFTER = 0.05;

    private Likely() {}

    /**
     * @param middle of as built, as estimated
     * @param outlooks the same as in the better and the worse tenth of cases; where the place lies at a rim, more damage elsewhere can make
     *     it stiffer, so either may be either end
     */
    static Quantiles range(double middle, double... outlooks) {
        double least = DoubleStream.concat(DoubleStream.of(middle), DoubleStream.of(outlooks))
                .min()
                .orElseThrow();
        double most = DoubleStream.concat(DoubleStream.of(middle), DoubleStream.of(outlooks))
                .max()
                .orElseThrow();
        double lost = Math.max(0, -Math.log(middle));
        return new Quantiles(
                middle * Math.exp(-Math.hypot(Math.log(middle / least), SOFTER * lost)),
                middle,
                middle * Math.exp(Math.hypot(Math.log(most / middle), STIFFER * lost)));
    }
}
