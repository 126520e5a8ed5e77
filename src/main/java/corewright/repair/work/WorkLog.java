package corewright.repair.work;

import corewright.damage.Quantiles;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.survey.WorkEntry;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the work so far says of the rest: the log against the plan.
 *
 * <p>Every hole takes its plan times a common factor c of the region and scatter of its own, 0.25 in the logarithm (practice).
 * {@code ln c = ln v + g}: v is the cavity over the middle of what the readings say, its spread s theirs; g, 0.15, is what
 * grams say wrongly of a volume, as a mix that rises fills more or less than its share with the same grams (so that the cavity of
 * simulated fills lies within its range in eight of ten, docs/performance.md). A filled hole updates c and with it v (normal, Bayes). One
 * that differs from what was to be expected by two standard deviations or more does not: it took far more (the cavity is larger
 * than mapped, or leaks: probe there) or far less (blocked, unless mix showed there from a neighbour). Nor does one from
 * which mix ran out. A greedy hole's surplus is not spread over the others.
 *
 * @param holes in the order in which they were filled
 * @param factor middle of c
 * @param factorP10 one in ten is below
 * @param factorP90 one in ten is above
 * @param cavity over the middle of what the readings say, by these and the log together; what greedy holes took too much is in it,
 *     but not where it is known to have run out, and not in its low end, as it may have
 * @param leftG still to fill, mixed grams without waste
 * @param leftP90G with nine in ten enough
 * @param open of holes that the log names, the share of their grams that is still to go: lifts that are not in, all of it where it
 *     is tried again
 * @param again holes that were tried once, took nothing and showed no mix: cleared and tried again they are still to fill
 */
public record WorkLog(
        List<Filled> holes,
        double factor,
        double factorP10,
        double factorP90,
        Quantiles cavity,
        double leftG,
        double leftP90G,
        Map<String, Double> open,
        Set<String> again) {
    /** Of ln c where the readings give the volume no range. Practice. */
    private static final double COMMON_SD = 0.30;

    private static final double GRAMS_SD = 0.15;

    private static final double HOLE_SD = 0.25;
    private static final double FLAG = 2;

    /** Standard normal, nine in ten below. */
    private static final double P90 = 1.2816;

    public WorkLog {
        holes = List.copyOf(holes);
        open = Map.copyOf(open);
        again = Set.copyOf(again);
    }

    /** How a hole took its mix. */
    public enum Took {
        AS_PLANNED,
        FAR_MORE,
        FAR_LESS,
        FILLED_BY_NEIGHBOUR
    }

    /**
     * A hole that was filled.
     *
     * @param z standard deviations from what was to be expected by then
     */
    public record Filled(String hole, double plannedG, double takenG, double z, Took took) {}

    /**
     * The state after some entries.
     *
     * @param plannedG of every injection hole of one region, grams into the hole, in working order
     * @param mapped the volume by the readings
     * @param log in the order of time; entries of other regions are left out
     */
    public static WorkLog of(Map<String, Double> plannedG, Quantiles mapped, List<WorkEntry> log) {
        return of(plannedG, Map.of(), mapped, log);
    }

    /** @param lifts in how many a hole is filled, where it is more than one */
    static WorkLog of(Map<String, Double> plannedG, Map<String, Integer> lifts, Quantiles mapped, List<WorkEntry> log) {
        Map<String, Double> in = liftsIn(lifts, log);
        Map<String, Double> taken = new LinkedHashMap<>();
        Set<String> oozed = new HashSet<>();
        Set<String> leaking = new HashSet<>();
        for (WorkEntry entry : log) {
            if (plannedG.containsKey(entry.hole())) {
                taken.merge(entry.hole(), entry.grams(), Double::sum);
            }
            if (!entry.leak().isEmpty()) {
                leaking.add(entry.hole());
            }
            if (entry.oozeAt() != null && !entry.oozeAt().equals(entry.hole())) {
                oozed.add(entry.oozeAt());
            }
        }
        double mean = 0;
        double prior = priorVariance(mapped);
        double variance = prior;
        List<Filled> filled = new ArrayList<>();
        for (Map.Entry<String, Double> hole : taken.entrySet()) {
            double planned = plannedG.getOrDefault(hole.getKey(), 0.0) * in.getOrDefault(hole.getKey(), 1.0);
            if (planned <= 0) { // drilled outside what is mapped by now: it says nothing of the rest
                filled.add(new Filled(hole.getKey(), 0, hole.getValue(), 0, Took.AS_PLANNED));
                continue;
            }
            double x = Math.log(Math.max(hole.getValue(), 1e-3 * planned) / planned);
            double z = (x - mean) / Math.sqrt(variance + HOLE_SD * HOLE_SD);
            Took took = took(z, oozed.contains(hole.getKey()));
            filled.add(new Filled(hole.getKey(), planned, hole.getValue(), z, took));
            if (took == Took.AS_PLANNED && !leaking.contains(hole.getKey())) {
                double weight = variance / (variance + HOLE_SD * HOLE_SD);
                mean += weight * (x - mean);
                variance *= 1 - weight;
            }
        }
        double greedyG = 0;
        for (Filled f : filled) {
            boolean greedy = f.took == Took.FAR_MORE && !leaking.contains(f.hole);
            greedyG += greedy ? Math.max(0, f.takenG - Math.exp(mean) * f.plannedG) : 0;
        }
        double allG = plannedG.values().stream().mapToDouble(g -> g).sum();
        Quantiles cavity = cavity(prior, mean, variance, allG > 0 ? greedyG / allG : 0);
        Map<String, Double> open = new HashMap<>();
        in.forEach((hole, share) -> open.put(hole, 1 - share));
        Set<String> again = again(filled, log);
        filled.stream().filter(f -> again.contains(f.hole)).forEach(f -> open.put(f.hole, 1.0));
        open.values().removeIf(share -> share <= 0);
        return left(plannedG, open, again, filled, mean, variance, cavity);
    }

    /** Share of a hole's lifts that are in, where a line says of which one it is. */
    private static Map<String, Double> liftsIn(Map<String, Integer> lifts, List<WorkEntry> log) {
        Map<String, Double> in = new HashMap<>();
        for (WorkEntry entry : log) {
            int of = lifts.getOrDefault(entry.hole(), 1);
            if (of > 1) {
                Integer lift = entry.lift();
                in.merge(entry.hole(), lift == null ? 1.0 : Math.min(1.0, (double) lift / of), Math::max);
            }
        }
        return in;
    }

    /** Of ln c before any grams: of the volume by the readings, and of what grams say of it. */
    private static double priorVariance(Quantiles mapped) {
        double sd = mapped.p10() > 0
                ? Math.log(mapped.p90() / mapped.p10()) / (2 * P90)
                : mapped.p50() > 0 ? Math.log(mapped.p90() / mapped.p50()) / P90 : 0;
        return sd > 0 ? sd * sd + GRAMS_SD * GRAMS_SD : COMMON_SD * COMMON_SD;
    }

    /** ln v given ln c, both normal with {@code Cov(ln v, ln c) = Var(ln v)}. */
    private static Quantiles cavity(double prior, double mean, double variance, double surplus) {
        double volume = prior - GRAMS_SD * GRAMS_SD;
        double slope = volume / prior;
        double sd = Math.sqrt(volume * (1 - slope) + slope * slope * variance);
        return new Quantiles(
                Math.exp(slope * mean - P90 * sd),
                Math.exp(slope * mean) + surplus,
                Math.exp(slope * mean + P90 * sd) + surplus);
    }

    private static Took took(double z, boolean oozed) {
        if (z >= FLAG) {
            return Took.FAR_MORE;
        }
        if (z > -FLAG) {
            return Took.AS_PLANNED;
        }
        return oozed ? Took.FILLED_BY_NEIGHBOUR : Took.FAR_LESS;
    }

    private static Set<String> again(List<Filled> filled, List<WorkEntry> log) {
        Set<String> again = new HashSet<>();
        for (Filled f : filled) {
            boolean nothing = f.took == Took.FAR_LESS && f.takenG < WorkWords.NOTHING * f.plannedG;
            if (nothing && log.stream().filter(e -> e.hole().equals(f.hole)).count() == 1) {
                again.add(f.hole);
            }
        }
        return again;
    }

    private static WorkLog left(
            Map<String, Double> plannedG,
            Map<String, Double> open,
            Set<String> again,
            List<Filled> filled,
            double mean,
            double variance,
            Quantiles cavity) {
        Set<String> done = new HashSet<>();
        filled.stream().map(Filled::hole).forEach(done::add);
        double sum = 0;
        double squares = 0;
        for (Map.Entry<String, Double> hole : plannedG.entrySet()) {
            double g = hole.getValue() * open.getOrDefault(hole.getKey(), done.contains(hole.getKey()) ? 0.0 : 1.0);
            sum += g;
            squares += g * g;
        }
        double sd = Math.sqrt(variance);
        double factor = Math.exp(mean);
        // the holes' own scatter averages out over those that are left
        double whole = sum > 0 ? Math.sqrt(variance + HOLE_SD * HOLE_SD * squares / (sum * sum)) : sd;
        return new WorkLog(
                filled,
                factor,
                Math.exp(mean - P90 * sd),
                Math.exp(mean + P90 * sd),
                cavity,
                factor * sum,
                Math.exp(mean + P90 * whole) * sum,
                open,
                again);
    }

    /** Grams into each injection hole and through the nozzle by a plan, in working order. */
    public static Map<String, Double> planned(InjectionPlan plan, double wasteFraction) {
        List<Hole> holes = plan.holes().stream().filter(Hole::fills).toList();
        double served = holes.stream().mapToDouble(Hole::servedMm3).sum();
        double net = (plan.resinG() + plan.hardenerG()) * (1 - wasteFraction);
        Map<String, Double> grams = new LinkedHashMap<>();
        for (Hole hole : holes) {
            grams.put(hole.id(), net * hole.servedMm3() / served);
        }
        return grams;
    }

    /** Mixed grams of the next cup: what is left with its waste, no more than a cup may hold. */
    public double nextCupG(double wasteFraction, double largestCupG) {
        return Math.min(leftG / (1 - wasteFraction), largestCupG);
    }
}
