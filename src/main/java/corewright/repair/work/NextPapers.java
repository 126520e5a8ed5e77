package corewright.repair.work;

import corewright.repair.mix.Batches;
import corewright.repair.mix.Lifts;
import corewright.repair.mix.Mix;
import corewright.repair.plan.Batch;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.survey.Survey;
import corewright.survey.settings.Drilling;
import corewright.survey.settings.Resin;
import corewright.survey.settings.Settings;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What is left of one region once its filling has begun: grams of every hole, and the cups that hold them, by the rules of
 * the plan. All in tenths of a gram, so that holes, cups and sums agree as they are printed.
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
     * @param leftG still to go in; 0 once it was filled, not where a lift is still to go, or it took nothing and is to be tried again
     * @param logged whether the log names it
     */
    public record Line(String hole, BigDecimal plannedG, BigDecimal takenG, BigDecimal leftG, boolean logged) {
        /** Whether nothing more goes in. */
        public boolean done() {
            return logged && leftG.signum() == 0;
        }
    }

    /**
     * A cup.
     *
     * @param batch on the clock from the next cup on; a hole that needs more than a cup stands in several
     */
    public record Cup(Batch batch, BigDecimal partAG, BigDecimal partBG) {
        /** From 1. */
        public int number() {
            return batch.number();
        }

        /** In order. */
        public List<String> holes() {
            return batch.holes();
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
                        tenths(grams * log.factor() * log.open().getOrDefault(hole.id(), done == null ? 1.0 : 0.0)),
                        done != null));
            }
        }
        BigDecimal left = lines.stream().map(Line::leftG).reduce(BigDecimal.ZERO, BigDecimal::add);
        return new NextPapers(plan.region(), lines, cups(survey, plan, lines, log, left.doubleValue()), left);
    }

    private static List<Cup> cups(Survey survey, InjectionPlan plan, List<Line> lines, WorkLog log, double leftG) {
        List<Hole> open = new ArrayList<>();
        for (Line line : lines) {
            if (line.leftG.signum() > 0) {
                plan.holes().stream()
                        .filter(h -> h.id().equals(line.hole))
                        .map(h -> h.serving(line.leftG.doubleValue())
                                .over(log.open().getOrDefault(h.id(), 1.0)))
                        .forEach(open::add);
            }
        }
        Settings settings = survey.settings();
        Resin resin = settings.resin(plan.resin());
        Mix mix = Mix.ofNet(leftG, resin, settings.drilling().wasteFraction());
        if (open.isEmpty()) {
            return List.of();
        }
        Lifts lifts = Lifts.of(survey.face(open.get(0).spot().face()), settings.drilling());
        return inTenths(Batches.of(plan.region(), open, mix, resin, settings, lifts));
    }

    /** Cups whose grams are those that are printed. */
    public static List<Batch> rounded(List<Batch> batches) {
        return inTenths(batches).stream().map(Cup::batch).toList();
    }

    /** Each sum up to a cup is rounded, so that the cups add up to the rounded whole. */
    private static List<Cup> inTenths(List<Batch> batches) {
        List<Cup> cups = new ArrayList<>();
        double partAG = 0;
        double bothG = 0;
        BigDecimal saidAG = BigDecimal.ZERO;
        BigDecimal saidG = BigDecimal.ZERO;
        for (Batch b : batches) {
            partAG += b.partAG();
            bothG += b.partAG() + b.partBG();
            BigDecimal a = tenths(partAG).subtract(saidAG);
            BigDecimal both = tenths(bothG).subtract(saidG);
            saidAG = saidAG.add(a);
            saidG = saidG.add(both);
            cups.add(new Cup(b.of(a.doubleValue(), both.subtract(a).doubleValue()), a, both.subtract(a)));
        }
        return cups;
    }

    /**
     * The plan of what is left; none where every hole is filled.
     *
     * @param plan of the region
     * @param logged names of holes and vents that are in the log
     * @param mostG mixed, with which nine in ten cases have enough
     */
    public Optional<InjectionPlan> left(InjectionPlan plan, Set<String> logged, double mostG) {
        List<String> filled = holes.stream()
                .filter(l -> l.leftG.signum() == 0)
                .map(Line::hole)
                .toList();
        List<Hole> open = plan.holes().stream()
                .filter(h -> !filled.contains(h.id()) && (h.fills() || !logged.contains(h.id())))
                .toList();
        List<Batch> batches = cups.stream().map(Cup::batch).toList();
        return batches.isEmpty() ? Optional.empty() : Optional.of(plan.with(open, batches, mostG));
    }

    private static BigDecimal tenths(double grams) {
        return BigDecimal.valueOf(grams).setScale(1, RoundingMode.HALF_UP);
    }
}
