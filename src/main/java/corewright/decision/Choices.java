package corewright.decision;

import corewright.damage.Coverage;
import corewright.damage.DamageMap;
import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.repair.plan.RepairOptions;
import corewright.stiffness.Gains;
import corewright.survey.Survey;
import corewright.survey.settings.Costs;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** The owner's table: from leaving it to opening everything, with cost, days and one thing to know. */
final class Choices {
    private final Survey survey;
    private final DamageMap damage;
    private final List<RegionDecision> decisions;
    private final Effort effort;
    private final Gains gains;

    private Choices(
            Survey survey, DamageMap damage, RepairOptions options, List<RegionDecision> decisions, Gains gains) {
        this.gains = gains;
        this.survey = survey;
        this.damage = damage;
        this.decisions = decisions;
        effort = new Effort(survey, options);
    }

    static List<Choice> of(
            Survey survey, DamageMap damage, RepairOptions options, List<RegionDecision> decisions, Gains gains) {
        return new Choices(survey, damage, options, decisions, gains).rows();
    }

    /** No damage: of what was read, and what was not. */
    private String noDamage() {
        String unread = Coverage.unread(Coverage.of(survey));
        return unread.isEmpty()
                ? "No damage was found where it was read. What was not read is not known."
                : unread + " What was not read is not known.";
    }

    private List<Choice> rows() {
        if (damage.regions().isEmpty()) {
            return List.of(row(
                    "Leave it, watch it",
                    "nothing to repair; a visit next season",
                    effort.visits(1, 1),
                    gains.left(),
                    noDamage(),
                    true));
        }
        boolean repairs = decisions.stream()
                .anyMatch(d -> d.method() == Method.INJECT || d.method() == Method.RECORE || d.firstStep() != null);
        boolean dries = decisions.stream().anyMatch(d -> d.method() == Method.DRY_OUT);
        List<Region> wet = damage.regions().stream().filter(Region::wet).toList();
        List<Choice> rows = new ArrayList<>();
        rows.add(row(
                "Leave it, watch it",
                "watch " + all(damage.regions()),
                effort.visits(1, 2),
                gains.left(),
                "Nothing gets better by itself: wet core spreads along its joints, and a loose skin works looser.",
                !repairs && !dries));
        if (!wet.isEmpty()) {
            Effort.Estimate drying = wet.stream().map(effort::dry).reduce(effort.visits(1, 2), Effort.Estimate::and);
            rows.add(row(
                    "Stop the leaks, dry, watch",
                    "dry " + names(wet) + (wet.size() < damage.regions().size() ? "; watch the rest" : ""),
                    drying,
                    gains.dried(),
                    "Drying takes weeks under cover and does not bond a loose skin again.",
                    !repairs && dries));
        }
        if (repairs) {
            rows.add(row("Repair what needs it", advisedWords(), advised(), gains.advised(), advisedToKnow(), true));
        }
        if (decisions.stream().anyMatch(d -> d.method() != Method.RECORE)) { // else it is the row above
            rows.add(row(
                    "Open and renew all",
                    "cut out " + all(damage.regions()),
                    effort.visits(1, 2).and(effort.all(damage)),
                    gains.renewed(),
                    "Everything is seen and nothing is left to doubt, for the most work and a new surface.",
                    false));
        }
        return rows;
    }

    private Effort.Estimate advised() {
        Effort.Estimate sum = effort.visits(1, 2);
        for (Region region : damage.regions()) {
            sum = sum.and(effort.advised(region, on(region)));
        }
        return sum;
    }

    private RegionDecision on(Region region) {
        return decisions.stream()
                .filter(d -> d.region().equals(region.id()))
                .findFirst()
                .orElseThrow();
    }

    private String advisedWords() {
        List<String> parts = new ArrayList<>();
        add(parts, "inject ", d -> d.method() == Method.INJECT);
        add(parts, "cut out ", d -> d.method() == Method.RECORE);
        add(parts, "dry ", d -> d.method() == Method.DRY_OUT);
        add(parts, "prove the core of ", d -> d.method() == Method.MONITOR && d.firstStep() != null);
        add(parts, "watch ", d -> d.method() == Method.MONITOR && d.firstStep() == null);
        return String.join("; ", parts);
    }

    private void add(List<String> parts, String verb, Predicate<RegionDecision> which) {
        List<String> ids = decisions.stream()
                .filter(which)
                .map(RegionDecision::region)
                .sorted(Comparator.comparingInt(String::length)
                        .thenComparing(Comparator.naturalOrder())) // R2 before R10
                .toList();
        if (!ids.isEmpty()) {
            parts.add(verb + String.join(", ", ids));
        }
    }

    private String advisedToKnow() {
        if (decisions.stream().anyMatch(RegionDecision::architect)) {
            return "A naval architect or surveyor decides first where the deck carries load.";
        }
        if (decisions.stream().anyMatch(d -> d.firstStep() != null)) {
            return "A pilot hole decides between filling and cutting out: hence the wide range.";
        }
        return decisions.stream().anyMatch(d -> d.method() == Method.RECORE)
                ? "What a cut brings to light can make the job larger."
                : "The fill is tapped after cure: what still sounds hollow is filled again.";
    }

    /** A few by name, many by their number. */
    private static String all(List<Region> regions) {
        return regions.size() > 4 ? "all " + regions.size() + " places" : names(regions);
    }

    private static String names(List<Region> regions) {
        return String.join(", ", regions.stream().map(Region::id).toList());
    }

    /** Cost is work at the yard's rate and materials, visits included; days are for the crew of the survey. */
    private Choice row(
            String title,
            String regions,
            Effort.Estimate sum,
            Optional<Quantiles> ofAsBuilt,
            String toKnow,
            boolean advised) {
        Costs costs = survey.settings().costs();
        double aDay = costs.hoursPerDay() * survey.settings().crew().people();
        return new Choice(
                title,
                regions,
                sum.hoursLow() * costs.ratePerHour() + sum.materialLow(),
                sum.hoursHigh() * costs.ratePerHour() + sum.materialHigh(),
                sum.hoursLow() / aDay,
                sum.hoursHigh() / aDay,
                ofAsBuilt,
                toKnow,
                advised);
    }
}
