package corewright.repair;

import corewright.survey.Drilling;
import corewright.survey.Resin;
import corewright.survey.Settings;
import java.util.ArrayList;
import java.util.List;

/**
 * Splits the mix of a region into equal cups and puts them on the clock.
 *
 * <p>A cup holds at most the exotherm limit, and at most what the tool delivers in 0.8 of the work time less the time of
 * mixing. Times of the mix are for the planned temperature. One person mixes, pours and clears away before the next cup;
 * a second mixes while the first pours.
 */
final class Batches {
    /** Share of the work time that is planned for. Practice. */
    private static final double USED_SHARE = 0.8;

    /** From hole to hole. Practice. */
    static final double HOLE_S = 15;

    /** To clear away a cup and set out the next. Practice. */
    private static final double TURNROUND_S = 120;

    /** A hole gets less than this only from a cup that is its own. */
    private static final double LEAST_SHARE_G = 0.5;

    private Batches() {}

    /** Largest cup, mixed grams; nothing or less where the work time does not even allow mixing. */
    static double largestCupG(Resin resin, Drilling drilling, double temperatureC) {
        double pouringS = USED_SHARE * resin.workS() * resin.timeFactor(temperatureC) - drilling.mixingS();
        double nozzleG = pouringS * drilling.rateMlPerS() * 1000 * ReachLaw.densityGPerMm3(resin);
        return Math.min(drilling.largestBatchG(), nozzleG / (1 - drilling.wasteFraction()));
    }

    /**
     * @param holes injection holes in working order
     * @param mix grams of the whole region
     */
    static List<Batch> of(String region, List<Hole> holes, Mix mix, Resin resin, Settings settings) {
        double temperatureC = settings.climate().temperatureC();
        double factor = resin.timeFactor(temperatureC);
        double cupLimitG = largestCupG(resin, settings.drilling(), temperatureC);
        int cups = (int) Math.max(1, Math.ceil(mix.grossG() / cupLimitG - 1e-9));
        double cupG = mix.grossG() / cups;
        double startS = 0;
        List<Batch> batches = new ArrayList<>();
        for (int cup = 0; cup < cups; cup++) {
            List<String> into = holesOf(holes, mix.grossG(), cup * cupG, (cup + 1) * cupG);
            batches.add(new Batch(
                    cup + 1,
                    region,
                    into,
                    mix.partAG() / cups,
                    mix.partBG() / cups,
                    startS,
                    startS + factor * resin.workS(),
                    startS + factor * resin.firstRiseS(),
                    startS + factor * resin.hardS()));
            startS += cycleS(cupG, into.size(), resin, settings);
        }
        return batches;
    }

    private static double cycleS(double cupG, int holes, Resin resin, Settings settings) {
        Drilling drilling = settings.drilling();
        double liquidMl = cupG * (1 - drilling.wasteFraction()) / ReachLaw.densityGPerMm3(resin) / 1000;
        double placingS = liquidMl / drilling.rateMlPerS() + HOLE_S * holes + TURNROUND_S;
        return settings.crew().people() > 1 ? Math.max(drilling.mixingS(), placingS) : drilling.mixingS() + placingS;
    }

    /** The holes that a stretch of the whole mix goes into, when it is poured hole after hole. */
    private static List<String> holesOf(List<Hole> holes, double grossG, double fromG, double toG) {
        double cavity = holes.stream().mapToDouble(Hole::servedMm3).sum();
        List<String> ids = new ArrayList<>();
        double begin = 0;
        for (Hole hole : holes) {
            double end = begin + grossG * hole.servedMm3() / cavity;
            double overlap = Math.min(end, toG) - Math.max(begin, fromG);
            double least = Math.min(LEAST_SHARE_G, Math.min(end - begin, toG - fromG) / 2);
            if (overlap >= least * (1 - 1e-9) && overlap > 0) {
                ids.add(hole.id());
            }
            begin = end;
        }
        return ids;
    }
}
