package corewright.intake;

import corewright.intake.text.Lengths;
import corewright.intake.text.Notes;
import corewright.intake.text.Numerals;
import corewright.intake.text.Words;
import corewright.survey.FrozenPlan;
import corewright.survey.Origin;
import corewright.survey.Spot;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** What holds of every frozen repair plan, wherever it was read from. */
final class RepairPlanRules {
    private static final double MOST = 1e9;

    private final FrozenPlan plan;
    private final Set<String> faces;
    private final Notes notes;

    RepairPlanRules(FrozenPlan plan, Set<String> faces, Notes notes) {
        this.plan = plan;
        this.faces = faces;
        this.notes = notes;
    }

    /** Complains of everything that a plan cannot have. */
    void check() {
        Origin origin = new Origin("repair plan", 0);
        if (plan.issue().size() > 1 || plan.issue().isEmpty() && !plan.equals(FrozenPlan.NONE)) {
            notes.complain(origin, "revision", "found " + plan.issue().size() + " of them, expected one");
        }
        for (FrozenPlan.Issue issue : plan.issue()) {
            within(origin, "revision", issue.revision(), 1, 1_000_000);
        }
        once(
                "region",
                plan.regions().stream().map(FrozenPlan.PlannedRegion::name).toList());
        plan.regions().forEach(r -> place("region " + r.name(), r.label()));
        once("hole", plan.holes().stream().map(FrozenPlan.PlannedHole::name).toList());
        for (FrozenPlan.PlannedHole hole : plan.holes()) {
            Origin of = place("hole " + hole.name(), hole.spot());
            within(of, "diameter_mm", hole.diameterMm(), 0, RepairPlanYaml.DEEPEST_MM);
            within(of, "stop_mm", hole.stopMm(), 0, RepairPlanYaml.DEEPEST_MM);
            within(of, "grams", hole.grams(), 0, RepairPlanYaml.MOST_GRAMS);
            within(of, "push_mm", hole.pushMm(), 0, Lengths.LARGEST_MM);
        }
        for (FrozenPlan.PlannedCut cut : plan.cuts()) {
            Origin of = new Origin("cut of " + cut.region(), 0);
            known(of, cut.face());
            if (cut.area().getEnvelopeInternal().maxExtent() > 2 * Lengths.LARGEST_MM) {
                notes.complain(of, "geom", "found a cut larger than 2 km");
            }
        }
        for (FrozenPlan.PlannedCup cup : plan.cups()) {
            Origin of = new Origin("cup " + cup.cup(), 0);
            within(of, "part_a_g", cup.partAG(), 0, RepairPlanYaml.MOST_GRAMS);
            within(of, "part_b_g", cup.partBG(), 0, RepairPlanYaml.MOST_GRAMS);
        }
        for (FrozenPlan.Purchase purchase : plan.buying()) {
            within(origin, "buying", purchase.plan(), 0, MOST);
            within(origin, "buying", purchase.buy(), 0, MOST);
        }
    }

    private void once(String what, List<String> names) {
        Set<String> seen = new HashSet<>();
        Origin origin = new Origin("repair plan", 0);
        for (String name : names) {
            if (!RepairPlanYaml.isName(name)) {
                notes.expected(origin, "name", name, "a name such as R1-3, of letters, digits and -");
            } else if (!seen.add(name.toUpperCase(Locale.ROOT))) {
                notes.complain(origin, "name", "two " + what + "s are called \"" + name + "\"");
            }
        }
    }

    private Origin place(String what, Spot spot) {
        Origin origin = new Origin(what + " of the repair plan", 0);
        known(origin, spot.face());
        within(origin, "x", spot.xMm(), -Lengths.LARGEST_MM, Lengths.LARGEST_MM);
        within(origin, "y", spot.yMm(), -Lengths.LARGEST_MM, Lengths.LARGEST_MM);
        return origin;
    }

    private void known(Origin origin, String face) {
        if (!faces.contains(face)) {
            notes.expected(
                    origin,
                    "face",
                    face,
                    Words.or(faces.stream().sorted().limit(20).toList()));
        }
    }

    /** Not so of what is no number either. */
    private void within(Origin origin, String column, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            String expected = "a number from " + Numerals.plain(low) + " to " + Numerals.plain(high);
            notes.expected(origin, column, String.valueOf(value), expected);
        }
    }
}
