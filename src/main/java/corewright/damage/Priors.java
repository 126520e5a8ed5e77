package corewright.damage;

import corewright.field.LatentPrior;
import corewright.field.LatentPrior.Coefficient;
import corewright.field.LatentPrior.Scale;
import corewright.field.Matern;
import java.util.List;

/**
 * What is believed of a deck before it is read. The figures are those that did well on simulated decks with leaks at
 * fittings (docs/damage.md); a fit to the readings overrides range and sill, and enough readings override the means.
 */
final class Priors {
    /** Ranges tried, mm: patches from a hand's breadth to a whole bay; a surveyor's grid is 75 to 300 mm. */
    private static final List<Double> RANGES_MM = List.of(50.0, 75.0, 110.0, 160.0, 230.0);

    private static final double RANGE_LOG_SD = 0.5;
    private static final double SILL_LOG_SD = 0.7;

    /** Logit of the moisture share. Mean −2.5 is a share of 0.08: dry core, with the meter's usual scatter above dry. */
    static final LatentPrior WET = new LatentPrior(
            Matern.FIVE_HALVES,
            List.of(new Coefficient(-2.5, 0)),
            new Scale(RANGES_MM, 110, RANGE_LOG_SD),
            new Scale(List.of(2.0, 4.0, 8.0, 16.0), 8, SILL_LOG_SD));

    /**
     * Looseness; term 1 is the moisture latent above dry core, term 2 the distance inside the wet outline: rot is oldest
     * where water has stood longest. Either coefficient may well be zero, as it is where skins let go of dry core.
     */
    static final LatentPrior LOOSE = new LatentPrior(
            Matern.FIVE_HALVES,
            List.of(new Coefficient(-2.5, 4), new Coefficient(0, 1), new Coefficient(0.25, 0.5)),
            new Scale(RANGES_MM, 110, RANGE_LOG_SD),
            new Scale(List.of(2.0, 4.0, 8.0, 16.0, 32.0), 8, SILL_LOG_SD));

    /** u of void depth; term 1 is looseness, term 2 the distance inside the loose outline. */
    static final LatentPrior VOID = new LatentPrior(
            Matern.FIVE_HALVES,
            List.of(new Coefficient(0.25, 0.25), new Coefficient(0.25, 0.25), new Coefficient(0.25, 0.25)),
            new Scale(List.of(40.0, 60.0, 90.0, 120.0, 170.0), 120, RANGE_LOG_SD),
            new Scale(List.of(0.25, 0.5, 1.0), 0.5, SILL_LOG_SD));

    private Priors() {}

    /** The moisture latent as a drift of looseness: 0 over dry core, 3 where it is wet beyond doubt. */
    static double moistureTerm(double logit) {
        return (Math.max(-4, Math.min(4, logit)) + 2.5) / 2;
    }

    /** Distance inside the wet outline as a drift of looseness: 0 over dry core, 3 well inside. */
    static double soakedTerm(double insideMm) {
        return Math.max(0, Math.min(300, insideMm)) / 100;
    }

    /** Looseness as a drift of void depth. */
    static double loosenessTerm(double looseness) {
        return Math.max(-3, Math.min(8, looseness)) / 3;
    }

    /** Distance inside the loose outline (negative outside) as a drift of void depth. */
    static double insideTerm(double insideMm) {
        return Math.max(-100, Math.min(300, insideMm)) / 100;
    }
}
