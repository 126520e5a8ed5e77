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
 * <p>A cup holds at most the exotherm limit, and at most what goes in, by the tool's rate or as the gap lets it through, within 0.8
 * of the work time less the time of mixing, the way from hole to hole within the whole of it. Holes share a cup in working order
 * as long as it holds their grams; of a space in lifts each lift has its cups, and waits until the one before is hard. A hole that needs more gets equal cups of its own, one straight after the other. Any other cup waits until the cups before it have risen whose served areas touch its own.
 * Times of the mix are for the planned temperature. One person mixes, pours and clears away before the next cup; a second
 * mixes while the first pours.
 */
public final class Batches {
    /** Share of the work time that is planned for. Practice. */
    private static final double USED_SHARE = 0.8;

    /** From hole to hole. Practice. */
    public static final double HOLE_S = 15;

    /** Vents and holes at which mix shows before their turn, a hole, of a mix that does not rise. Practice. */
    private static final double PLUGS_A_HOLE = 1.2;

    /** To clear away a cup and set out the next. Practice. */
    private static final double TURNROUND_S = 120;

    /**
     * One pot.
     *
     * @param pouringS into its holes
     * @param goesOn into the hole of the cup before it
     * @param lift number from 1
     */
    private record Cup(List<Hole> holes, double grossG, double pouringS, boolean goesOn, int lift) {
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
        return of(region, holes, mix, resin, settings, Lifts.NONE);
    }

    /** The same of a space that may be higher than one lift: a hole gets equal parts in each of its lifts, the last together with the others. */
    public static List<Batch> of(
            String region, List<Hole> holes, Mix mix, Resin resin, Settings settings, Lifts lifts) {
        double temperatureC = settings.climate().temperatureC();
        double factor = resin.timeFactor(temperatureC);
        Pour pour = new Pour(resin, settings.drilling(), temperatureC);
        Limits most = new Limits(pour, settings.crew().people());
        List<Cup> cups = cups(holes, mix.grossG(), most, lifts);
        double riseS = resin.expansion() > 1 ? factor * resin.riseEndS() : 0;
        List<Batch> batches = new ArrayList<>();
        double startS = 0;
        for (int i = 0; i < cups.size(); i++) {
            Cup cup = cups.get(i);
            if (i > 0 && cup.lift > cups.get(i - 1).lift) {
                startS = Math.max(
                        startS,
                        batches.stream().mapToDouble(Batch::hardAtS).max().orElse(0));
            }
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
            startS += cycleS(cup, most.wayS, settings);
        }
        return batches;
    }

    private static List<Cup> cups(List<Hole> holes, double grossG, Limits most, Lifts lifts) {
        double cavity = holes.stream().mapToDouble(Hole::servedMm3).sum();
        int all = lifts.most(holes);
        List<Cup> cups = new ArrayList<>();
        for (int lift = 1; lift <= all; lift++) {
            for (int of = all;
                    of > all - lift;
                    of--) { // a cup's holes have as many lifts: they share it by what they serve
                int parts = of;
                List<Hole> own =
                        holes.stream().filter(h -> lifts.at(h) == parts).toList();
                cups.addAll(cups(own, grossG / cavity / parts, most, lift));
            }
        }
        return cups;
    }

    private static List<Cup> cups(List<Hole> holes, double gPerMm3, Limits most, int lift) {
        Pour pour = most.pour;
        List<Cup> cups = new ArrayList<>();
        List<Hole> open = new ArrayList<>();
        double openG = 0;
        double openS = 0;
        for (Hole hole : holes) {
            double g = gPerMm3 * hole.servedMm3();
            double s = pour.seconds(hole, most.netG(g), most.ageS(open.size(), openS), 0);
            if (!open.isEmpty() && (openG + g > most.g || !most.inTime(open.size(), openS + s))) {
                cups.add(new Cup(List.copyOf(open), openG, openS, false, lift));
                open.clear();
                openG = 0;
                openS = 0;
                s = pour.seconds(hole, most.netG(g));
            }
            int own = most.cups(hole, g, s);
            if (own > 1) {
                for (int i = 0; i < own; i++) {
                    cups.add(new Cup(List.of(hole), g / own, most.oneOfS(hole, g, own, i), i > 0, lift));
                }
            } else {
                open.add(hole);
                openG += g;
                openS += s;
            }
        }
        if (!open.isEmpty()) {
            cups.add(new Cup(List.copyOf(open), openG, openS, false, lift));
        }
        return cups;
    }

    /** What a cup may hold and how long it may take. */
    private static final class Limits {
        /** More cups for one hole would not get more in: the gap is too thin for that share. Practice. */
        private static final int MOST_CUPS = 12;

        private final Pour pour;
        private final double g;
        private final double s;
        private final double workS;

        /** From hole to hole; one who is alone with a mix that does not rise plugs meanwhile too. */
        private final double wayS;

        Limits(Pour pour, int people) {
            this.pour = pour;
            wayS = people < 2 && pour.resin().expansion() <= 1 ? HOLE_S * (1 + PLUGS_A_HOLE) : HOLE_S;
            g = pour.drilling().largestBatchG() * (1 + 1e-9);
            s = pouringS(pour.resin(), pour.drilling(), pour.temperatureC()) * (1 + 1e-9);
            workS = pour.resin().timeFactor(pour.temperatureC()) * pour.resin().workS();
        }

        double netG(double grossG) {
            return grossG * (1 - pour.drilling().wasteFraction());
        }

        /** Of the mix after so many holes and so long a time of pouring. */
        double ageS(int holes, double pouredS) {
            return pour.drilling().mixingS() + pouredS + wayS * holes;
        }

        /** Whether another hole is done and plugged before the mix is too old. */
        boolean inTime(int holesBefore, double pouredS) {
            return pouredS <= s && ageS(holesBefore + 1, pouredS) <= workS;
        }

        /** How many cups a hole needs for itself. */
        int cups(Hole hole, double grossG, double seconds) {
            int own = (int) Math.ceil(Math.max(1, grossG / g));
            boolean fits = own == 1 && seconds <= s;
            while (!fits && own < MOST_CUPS && oneOfS(hole, grossG, own, own - 1) > s) {
                own++;
            }
            return own;
        }

        /** The last of some equal cups takes longest: the front is far. The flow gives a hole no more than goes in in time. */
        double oneOfS(Hole hole, double grossG, int of, int number) {
            double part = netG(grossG) / of;
            double seconds = pour.seconds(hole, part, pour.drilling().mixingS(), number * part);
            return of < MOST_CUPS ? seconds : Math.min(s, seconds);
        }
    }

    private static double cycleS(Cup cup, double wayS, Settings settings) {
        double mixingS = settings.drilling().mixingS();
        double placingS = cup.pouringS + wayS * cup.holes.size() + TURNROUND_S;
        return settings.crew().people() > 1 ? Math.max(mixingS, placingS) : mixingS + placingS;
    }
}
