package corewright.repair.mix;

import corewright.repair.plan.Amounts;
import corewright.repair.plan.Batch;
import corewright.repair.plan.Hole;
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
     * The cups held back of a day, one after another, numbered on: when all others are in, felt and plugged, so that whoever
     * pours them has nothing else to do.
     *
     * @param plans of the day, in order
     */
    public static List<Batch> of(List<InjectionPlan> plans, Settings settings) {
        List<Batch> held = new ArrayList<>();
        int number = plans.stream().mapToInt(p -> p.batches().size()).sum();
        double freeS = plans.stream().mapToDouble(p -> doneS(p, settings)).max().orElse(0);
        for (InjectionPlan plan : plans) {
            Resin resin = settings.resin(plan.resin());
            double factor = resin.timeFactor(settings.climate().temperatureC());
            double heldG = plan.outlook().heldLikelyG();
            int cups = (int) Math.ceil(heldG
                    / Batches.largestCupG(
                            resin, settings.drilling(), settings.climate().temperatureC()));
            double partAG = heldG / (1 + resin.hardenerPerResin());
            for (int i = 0; i < cups; i++) {
                double atS = freeS;
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

    /** When nothing of a plan asks for a hand any more: its last cup is in, has risen and was felt, every vent is plugged. */
    private static double doneS(InjectionPlan plan, Settings settings) {
        Resin resin = settings.resin(plan.resin());
        Curing curing = Curing.of(resin, settings.climate().temperatureC());
        double firstS = plan.batches().stream().mapToDouble(Batch::mixAtS).min().orElse(0);
        double lastS = plan.batches().stream().mapToDouble(Batch::mixAtS).max().orElse(0);
        double pouredS =
                plan.batches().stream().mapToDouble(Batch::workUntilS).max().orElse(0);
        double risenS = curing.rises() ? lastS + Math.max(curing.riseEndS(), curing.warmUntilS()) : pouredS;
        double dueS = plan.holes().stream()
                .filter(h -> !h.fills())
                .mapToDouble(h -> plan.fill()
                        .arrivalS()
                        .map(r -> r.cellAt(h.spot().xMm(), h.spot().yMm()))
                        .orElse(Double.NaN))
                .filter(s -> !Double.isNaN(s))
                .max()
                .orElse(0);
        double plugging = Batches.HOLE_S * plan.count(Hole.Kind.VENT); // should they wait for one another
        return Math.max(Math.max(pouredS, risenS), firstS + dueS) + plugging;
    }

    /** P50 plus waste less what is mixed for the holes; nothing where that is only rounding. */
    public static double likelyG(double cavityMm3, Mix mixed, Resin resin, double wasteFraction) {
        double g = Mix.of(cavityMm3, resin, wasteFraction).grossG() - mixed.grossG();
        return g < LEAST_G ? 0 : g;
    }

    /** Where something is held back, why and how much. */
    public static List<String> told(double mixedG, double likelyG, double allG, Resin resin) {
        return likelyG > 0
                ? List.of(Amounts.grams(mixedG) + " of " + Amounts.grams(mixedG + likelyG)
                        + " are mixed for the holes, as mix of one hole "
                        + (resin.expansion() > 1 ? "rises" : "runs") + " into the place of the next; "
                        + Amounts.grams(likelyG) + " are held back, with what a large space takes "
                        + Amounts.grams(allG) + ".")
                : List.of();
    }
}
