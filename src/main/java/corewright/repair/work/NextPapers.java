package corewright.repair.work;

import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.survey.Survey;
import corewright.survey.settings.Drilling;
import corewright.survey.settings.Resin;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is left of one region once its filling has begun: grams of every hole, and the cups that hold them. All in tenths of a
 * gram, so that holes, cups and sums agree as they are printed.
 *
 * @param region that leads
 * @param holes every injection hole and place of the nozzle, in working order
 * @param cups for those that are open
 * @param leftG into the open holes, without waste
 */
public record NextPapers(String region, List<Line> holes, List<Cup> cups, BigDecimal leftG) {
    public NextPapers {
        holes = List.copyOf(holes);
        cups = List.copyOf(cups);
    }

    /**
     * A hole.
     *
     * @param takenG into it by the log; 0 while it is open
     * @param leftG still to go in; 0 once it was filled
     * @param logged whether the log names it
     */
    public record Line(String hole, BigDecimal plannedG, BigDecimal takenG, BigDecimal leftG, boolean logged) {}

    /** @param holes in order; one that needs more than a cup stands in several */
    public record Cup(int number, List<String> holes, BigDecimal partAG, BigDecimal partBG) {
        public Cup {
            holes = List.copyOf(holes);
        }

        public BigDecimal bothG() {
            return partAG.add(partBG);
        }
    }

    /** What went into all its holes. */
    public BigDecimal takenG() {
        return holes.stream().map(Line::takenG).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Mixed grams of all cups. */
    public BigDecimal mixedG() {
        return cups.stream().map(Cup::bothG).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** @param log of the plan's region */
    public static NextPapers of(Survey survey, InjectionPlan plan, WorkLog log) {
        Drilling drilling = survey.settings().drilling();
        Map<String, Double> planned = WorkLog.planned(plan, drilling.wasteFraction());
        Map<String, WorkLog.Filled> filled = new LinkedHashMap<>();
        log.holes().forEach(f -> filled.put(f.hole(), f));
        List<Line> lines = new ArrayList<>();
        for (Hole hole : plan.holes()) {
            if (hole.fills()) {
                double grams = planned.getOrDefault(hole.id(), 0.0);
                WorkLog.Filled done = filled.get(hole.id());
                lines.add(new Line(
                        hole.id(),
                        tenths(grams),
                        tenths(done == null ? 0 : done.takenG()),
                        tenths(done == null ? grams * log.factor() : 0),
                        done != null));
            }
        }
        Resin resin = survey.settings().resin(plan.resin());
        BigDecimal left = lines.stream().map(Line::leftG).reduce(BigDecimal.ZERO, BigDecimal::add);
        return new NextPapers(plan.region(), lines, cups(lines, resin, drilling), left);
    }

    /** Holes share a cup in working order while it holds their grams. */
    private static List<Cup> cups(List<Line> lines, Resin resin, Drilling drilling) {
        double most = drilling.largestBatchG() * (1 - drilling.wasteFraction());
        List<Cup> cups = new ArrayList<>();
        List<String> holes = new ArrayList<>();
        double in = 0;
        for (Line line : lines) {
            double toGo = line.leftG.doubleValue();
            while (toGo > 0) {
                double now = Math.min(toGo, most - in);
                if (now < toGo && in > 0) { // a hole begins in a cup that holds it, or in one of its own
                    cups.add(cup(cups.size() + 1, holes, in, resin, drilling));
                    holes.clear();
                    in = 0;
                    continue;
                }
                holes.add(line.hole);
                in += now;
                toGo -= now;
                if (toGo > 0) {
                    cups.add(cup(cups.size() + 1, holes, in, resin, drilling));
                    holes.clear();
                    in = 0;
                }
            }
        }
        if (in > 0) {
            cups.add(cup(cups.size() + 1, holes, in, resin, drilling));
        }
        return cups;
    }

    private static Cup cup(int number, List<String> holes, double netG, Resin resin, Drilling drilling) {
        BigDecimal both = tenths(netG / (1 - drilling.wasteFraction()));
        BigDecimal partA = tenths(both.doubleValue() / (1 + resin.hardenerPerResin()));
        return new Cup(number, List.copyOf(holes), partA, both.subtract(partA));
    }

    private static BigDecimal tenths(double grams) {
        return BigDecimal.valueOf(grams).setScale(1, RoundingMode.HALF_UP);
    }
}
