package corewright.stiffness;

import corewright.damage.Quantiles;
import java.util.stream.DoubleStream;

/**
 * In which range what a panel has of its stiffness truly lies. The outlooks ({@link Outlook}) say what extent, depth, water and foam
 * make of it. They do not say that damage has another shape than the map's, and that the calculation errs, by up to 3 % against solids on voids.
 * Both go with what was lost, so they are told as one part of the loss in logarithms, and joined with the outlooks' as things that do not
 * hang together, by the root of the squares.
 */
final class Likely {
    /** Holds the truth on 21 of 23 panels of invented decks, 0.15 on 19; docs/stiffness.md tells the count on others. */
    private static final double OF_THE_LOSS = 0.2;

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
        double part = OF_THE_LOSS * Math.max(0, -Math.log(middle));
        return new Quantiles(
                middle * Math.exp(-Math.hypot(Math.log(middle / least), part)),
                middle,
                middle * Math.exp(Math.hypot(Math.log(most / middle), part)));
    }
}
