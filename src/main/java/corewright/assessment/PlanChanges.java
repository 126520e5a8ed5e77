package corewright.assessment;

import corewright.repair.plan.Amounts;
import corewright.survey.FrozenPlan;
import corewright.survey.FrozenPlan.PlannedCup;
import corewright.survey.FrozenPlan.PlannedCut;
import corewright.survey.FrozenPlan.PlannedHole;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** What differs between two revisions of a repair plan, and why, in words. */
final class PlanChanges {
    /** Of many alike these are named, the others counted. */
    private static final int NAMED = 8;

    private static final double MM2_PER_M2 = 1e6;

    private PlanChanges() {}

    /** What made the plan change. */
    static String why(FrozenPlan before, FrozenPlan next) {
        FrozenPlan.Issue old = before.issue().get(0);
        FrozenPlan.Issue now = next.issue().get(0);
        if (old.mark().equals(now.mark())) {
            return "the readings are those of revision " + before.revision()
                    + "; plan, settings, judgements, log or the program changed.";
        }
        List<String> more = new ArrayList<>();
        count(more, now.moisture() - old.moisture(), "moisture reading");
        count(more, now.taps() - old.taps(), "tap");
        count(more, now.probes() - old.probes(), "probe");
        count(more, now.feelers() - old.feelers(), "feeler");
        count(more, now.plugs() - old.plugs(), "core sample");
        return more.isEmpty()
                ? "readings were changed since revision " + before.revision() + "."
                : String.join(", ", more) + " since revision " + before.revision() + ".";
    }

    private static void count(List<String> into, int more, String what) {
        if (more != 0) {
            into.add(Math.abs(more) + " " + what + (Math.abs(more) == 1 ? "" : "s") + (more > 0 ? " more" : " fewer"));
        }
    }

    /** @param begun holes that are drilled */
    static List<String> of(FrozenPlan before, FrozenPlan next, Set<String> begun) {
        List<String> changes = new ArrayList<>();
        List<String> fresh = names(next.holes().stream()
                .filter(h -> !h.dropped())
                .filter(h -> before.hole(h.name()).map(PlannedHole::dropped).orElse(true)));
        List<String> gone = names(before.holes().stream()
                .filter(h -> !h.dropped())
                .filter(h -> next.hole(h.name()).map(PlannedHole::dropped).orElse(true)));
        List<String> deeper = new ArrayList<>();
        for (PlannedHole hole : next.holes()) {
            before.hole(hole.name())
                    .filter(o -> !o.dropped() && !hole.dropped() && o.stopMm() != hole.stopMm())
                    .ifPresent(o -> deeper.add(String.format(
                            Locale.ROOT, "%s %.1f mm (was %.1f mm)", hole.name(), hole.stopMm(), o.stopMm())));
        }
        said(changes, "New", fresh);
        said(changes, "Left out, not to be drilled", gone);
        said(changes, "Other depth stop", deeper);
        grams(changes, before, next);
        cuts(changes, before, next);
        if (!begun.isEmpty()) {
            changes.add("What is drilled stays: " + shortened(List.copyOf(begun)) + ".");
        }
        return changes;
    }

    private static void said(List<String> changes, String what, List<String> names) {
        if (!names.isEmpty()) {
            changes.add(what + ": " + shortened(names) + ".");
        }
    }

    private static List<String> names(Stream<PlannedHole> holes) {
        return holes.map(PlannedHole::name).toList();
    }

    private static String shortened(List<String> names) {
        String named = String.join(", ", names.subList(0, Math.min(NAMED, names.size())));
        return names.size() > NAMED ? named + " and " + (names.size() - NAMED) + " more" : named;
    }

    private static void grams(List<String> changes, FrozenPlan before, FrozenPlan next) {
        Map<String, Double> old = mixed(before);
        Map<String, Double> now = mixed(next);
        Set<String> regions = new TreeSet<>(old.keySet());
        regions.addAll(now.keySet());
        for (String region : regions) {
            String was = Amounts.grams(old.getOrDefault(region, 0.0));
            String is = Amounts.grams(now.getOrDefault(region, 0.0));
            if (!was.equals(is)) {
                changes.add("Mix for " + region + ": " + is + ", was " + was + ".");
            }
        }
    }

    private static Map<String, Double> mixed(FrozenPlan plan) {
        Map<String, Double> mixed = new TreeMap<>();
        for (PlannedCup cup : plan.cups()) {
            mixed.merge(cup.region(), cup.partAG() + cup.partBG(), Double::sum);
        }
        return mixed;
    }

    private static void cuts(List<String> changes, FrozenPlan before, FrozenPlan next) {
        for (PlannedCut cut : next.cuts()) {
            List<PlannedCut> old = before.cuts().stream()
                    .filter(c -> c.region().equals(cut.region()))
                    .toList();
            if (old.isEmpty()) {
                changes.add("New cut: " + cut.region() + ", " + area(cut) + ".");
            } else if (!old.get(0).equals(cut)) {
                changes.add("Other cut: " + cut.region() + ", " + area(cut) + ", was " + area(old.get(0)) + ".");
            }
        }
        for (PlannedCut cut : before.cuts()) {
            if (next.cuts().stream().noneMatch(c -> c.region().equals(cut.region()))) {
                changes.add("No cut any more: " + cut.region() + ".");
            }
        }
    }

    private static String area(PlannedCut cut) {
        return String.format(Locale.ROOT, "%.3f m2", cut.area().getArea() / MM2_PER_M2);
    }
}
