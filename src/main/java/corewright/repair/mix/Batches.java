package corewright.repair.mix;

import corewright.repair.plan.Batch;
import corewright.repair.plan.Hole;
import corewright.survey.settings.Drilling;
import corewright.survey.settings.Resin;
import corewright.survey.settings.Settings;
import java.util.ArrayList;
import java.util.List;

/**
 * Splits the mix of a region into cups and puts them on the clock.
 *
 * <p>A cup holds at most the exotherm limit, and at most what goes in within 0.8 of the work time less the time of mixing. Holes share a cup in working order as long as it holds their grams; a hole that needs more gets equal cups of its
 * own, one straight after the other. Any other cup waits until the cups before it have risen whose served areas touch its own.
 * Times of the mix are for the planned temperature. One person mixes, pours and clears away before the next cup; a second
 * mixes while the first pours.
 */
public final class Batches {
    /** Share of the work time that is planned for. Practice. */
    private static final double USED_SHARE = 0.8;

    /** From hole to hole. Practice. */
    public static final double HOLE_S = 15;

    /** To clear away a cup and set out the next. Practice. */
    private static final double TURNROUND_S = 120;

    /**
     * One pot.
     *
     * @param pouringS into its holes
     * @param goesOn into the hole of the cup before it
     */
    private record Cup(List<Hole> holes, double grossG, double pouringS, boolean goesOn) {
        boolean touches(Cup other) {
            return holes.stream().anyMatch(h -> other.holes.stream().anyMatch(o -> touch(h, o)));
        }

        private static boolean touch(Hole a, Hole b) {
            return a.spot().coordinate().distance(b.spot().coordinate()) <= a.reachMm() + b.reachMm();
        }
    }

    private Batches() {}

    /** Largest cup, mixed grams; nothing or less where the work time does not even allow mixing. */
    public static double largestCupG(Resin resin, Drilling drilling, double temperatureC) {
        double toolG =
                pouringS(resin, drilling, temperatureC) * drilling.rateMlPerS() * 1000 * ReachLaw.densityGPerMm3(resin);
        return Math.min(drilling.largestBatchG(), toolG / (1 - drilling.wasteFraction()));
    }

    private static double pouringS(Resin resin, Drilling drilling, double temperatureC) {
        return USED_SHARE * resin.workS() * resin.timeFactor(temperatureC) - drilling.mixingS();
    }

    /**
     * @param holes injection holes in working order
     * @param mix grams of the whole region
     */
    public static List<Batch> of(String region, List<Hole> holes, Mix mix, Resin resin, Settings settings) {
        double temperatureC = settings.climate().temperatureC();
        double factor = resin.timeFactor(temperatureC);
        Pour pour = new Pour(resin, settings.drilling(), temperatureC);
        List<Cup> cups = cups(holes, mix.grossG(), pour);
        double riseS = resin.expansion() > 1 ? factor * resin.riseEndS() : 0;
        List<Batch> batches = new ArrayList<>();
        double startS = 0;
        for (int i = 0; i < cups.size(); i++) {
            Cup cup = cups.get(i);
            for (int before = 0; before < i && !cup.goesOn; before++) {
                if (cup.touches(cups.get(before))) {
                    startS = Math.max(startS, batches.get(before).mixAtS() + riseS);
                }
            }
            double share = cup.grossG / mix.grossG();
            batches.add(new Batch(
                    i + 1,
                    region,
                    cup.holes.stream().map(Hole::id).toList(),
                    mix.partAG() * share,
                    mix.partBG() * share,
                    startS,
                    startS + factor * resin.workS(),
                    startS + factor * resin.firstRiseS(),
                    startS + factor * resin.hardS()));
            startS += cycleS(cup, settings);
        }
        return batches;
    }

    private static List<Cup> cups(List<Hole> holes, double grossG, Pour pour) {
        double cavity = holes.stream().mapToDouble(Hole::servedMm3).sum();
        double mostG = pour.drilling().largestBatchG() * (1 + 1e-9);
        double mostS = pouringS(pour.resin(), pour.drilling(), pour.temperatureC()) * (1 + 1e-9);
        List<Cup> cups = new ArrayList<>();
        List<Hole> open = new ArrayList<>();
        double openG = 0;
        double openS = 0;
        for (Hole hole : holes) {
            double g = grossG * hole.servedMm3() / cavity;
            double s = pour.seconds(hole, g * (1 - pour.drilling().wasteFraction()));
            if (!open.isEmpty() && (openG + g > mostG || openS + s > mostS)) {
                cups.add(new Cup(List.copyOf(open), openG, openS, false));
                open.clear();
                openG = 0;
                openS = 0;
            }
            int own = (int) Math.ceil(Math.max(g / mostG, s / mostS));
            if (own > 1) {
                for (int i = 0; i < own; i++) {
                    cups.add(new Cup(List.of(hole), g / own, s / own, i > 0));
                }
            } else {
                open.add(hole);
                openG += g;
                openS += s;
            }
        }
        if (!open.isEmpty()) {
            cups.add(new Cup(List.copyOf(open), openG, openS, false));
        }
        return cups;
    }

    private static double cycleS(Cup cup, Settings settings) {
        double mixingS = settings.drilling().mixingS();
        double placingS = cup.pouringS + HOLE_S * cup.holes.size() + TURNROUND_S;
        return settings.crew().people() > 1 ? Math.max(mixingS, placingS) : mixingS + placingS;
    }
}
