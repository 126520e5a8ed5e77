package corewright.repair.mix;

import corewright.repair.plan.Amounts;
import corewright.repair.plan.Batch;
import corewright.repair.plan.InjectionPlan;
import corewright.survey.settings.Resin;
import corewright.survey.settings.Settings;
import java.util.ArrayList;
import java.util.List;

/**
 * Cups that are held back of the most likely space: where mix of one cup rises into the place of the next, its holes take
 * less than P50 plus waste. The rest is mixed when the last cup has risen, and only where nothing shows at a place.
 *
 * <p>With them the cups of a region add up to P50 plus waste.
 */
public final class HeldCups {
    /** Holes take whole grams; less than this is their rounding. */
    private static final double LEAST_G = 1;

    private HeldCups() {}

    /** Whether a cup is one of these: it is for no hole yet. */
    public static boolean heldBack(Batch cup) {
        return cup.holes().isEmpty();
    }

    /**
     * The cups held back of a day, after all others and one after another, numbered on.
     *
     * @param plans of the day, in order
     */
    public static List<Batch> of(List<InjectionPlan> plans, Settings settings) {
        List<Batch> held = new ArrayList<>();
        int number = plans.stream().mapToInt(p -> p.batches().size()).sum();
        double freeS = plans.stream()
                .flatMap(p -> p.batches().stream())
                .mapToDouble(Batch::workUntilS)
                .max()
                .orElse(0);
        for (InjectionPlan plan : plans) {
            Resin resin = settings.resin(plan.resin());
            double factor = resin.timeFactor(settings.climate().temperatureC());
            double heldG = plan.outlook().heldLikelyG();
            int cups = (int) Math.ceil(heldG
                    / Batches.largestCupG(
                            resin, settings.drilling(), settings.climate().temperatureC()));
            double partAG = heldG / (1 + resin.hardenerPerResin());
            double riseS = resin.expansion() > 1 ? factor * resin.riseEndS() : 0;
            double risenS =
                    plan.batches().stream().mapToDouble(Batch::mixAtS).max().orElse(0) + riseS;
            for (int i = 0; i < cups; i++) {
                double atS = Math.max(freeS, risenS);
                held.add(new Batch(
                        ++number,
                        plan.region(),
                        List.of(),
                        partAG / cups,
                        (heldG - partAG) / cups,
                        atS,
                        atS + factor * resin.workS(),
                        atS + factor * resin.firstRiseS(),
                        atS + factor * resin.hardS()));
                freeS = atS + factor * resin.workS();
            }
        }
        return held;
    }

    /** P50 plus waste less what is mixed for the holes; nothing where that is only rounding. */
    public static double likelyG(double cavityMm3, Mix mixed, Resin resin, double wasteFraction) {
        double g = Mix.of(cavityMm3, resin, wasteFraction).grossG() - mixed.grossG();
        return g < LEAST_G ? 0 : g;
    }

    /** Where something is held back, why and how much. */
    public static List<String> told(double mixedG, double likelyG, double allG) {
        return likelyG > 0
                ? List.of(Amounts.grams(mixedG) + " of " + Amounts.grams(mixedG + likelyG)
                        + " are mixed for the holes, as mix of one hole rises into the place of the next; "
                        + Amounts.grams(likelyG) + " are held back, with what a large space takes "
                        + Amounts.grams(allG) + ".")
                : List.of();
    }
}
