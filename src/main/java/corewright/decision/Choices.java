package corewright.decision;

import corewright.damage.Coverage;
import corewright.damage.DamageMap;
import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.decision.drying.DryingTime;
import corewright.repair.plan.RepairOptions;
import corewright.stiffness.Gains;
import corewright.survey.Survey;
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
    private final RegionOptions options;
    private final List<DryingTime> drying;

    private Choices(
            Survey survey,
            DamageMap damage,
            RepairOptions plans,
            List<RegionDecision> decisions,
            Gains gains,
            Weighed weighed) {
        this.gains = gains;
        this.survey = survey;
        this.damage = damage;
        this.decisions = decisions;
        effort = new Effort(survey, plans);
        options = weighed.options;
        drying = weighed.drying;
    }

    /** What was weighed of each region. */
    record Weighed(RegionOptions options, List<DryingTime> drying) {}

    /** A choice, and the same as a row of options.csv. */
    record Row(Choice choice, Option option) {}

    static List<Row> of(
            Survey survey,
            DamageMap damage,
            RepairOptions plans,
            List<RegionDecision> decisions,
            Gains gains,
            Weighed weighed) {
        return new Choices(survey, damage, plans, decisions, gains, weighed).rows();
    }

    /** No damage: of what was read, and what was not. */
    private String noDamage() {
        String unread = Coverage.unread(Coverage.of(survey));
        return unread.isEmpty()
                ? "No damage was found where it was read. What was not read is not known."
                : unread + " What was not read is not known.";
    }

    private List<Row> rows() {
        if (damage.regions().isEmpty()) {
            return List.of(row(
                    new Named("leave", "Leave it, watch it", "nothing to repair; a visit next season"),
                    new Sum(effort.visits(1, 1), Waiting.NONE, Option.Weight.NONE),
                    gains.left(),
                    noDamage(),
                    true));
        }
        boolean repairs = decisions.stream()
                .anyMatch(d -> d.method() == Method.INJECT || d.method() == Method.RECORE || d.firstStep() != null);
        boolean dries = decisions.stream().anyMatch(d -> d.method() == Method.DRY_OUT);
        List<Row> rows = new ArrayList<>();
        rows.add(row(
                new Named("leave", "Leave it, watch it", "watch " + all(damage.regions())),
                new Sum(effort.visits(1, 2), Waiting.NONE, Option.Weight.NONE),
                gains.left(),
                leftToKnow(),
                !repairs && !dries));
        List<Region> dry =
                damage.regions().stream().filter(r -> Treated.dryable(r, on(r))).toList();
        if (!dry.isEmpty()) {
            Sum sum = dry.stream().map(r -> sum(r, Method.DRY_OUT)).reduce(visits(), Sum::and);
            rows.add(row(
                    new Named(
                            "dry",
                            "Stop the leaks, dry, watch",
                            "dry " + names(dry) + (dry.size() < damage.regions().size() ? "; watch the rest" : "")),
                    sum,
                    gains.dried(),
                    "Drying takes weeks under cover and does not bond a loose skin again.",
                    !repairs && dries));
        }
        if (repairs) {
            rows.add(row(
                    new Named("advised", "Repair what needs it", advisedWords()),
                    advised(),
                    gains.advised(),
                    advisedToKnow(),
                    true));
        }
        if (decisions.stream().anyMatch(d -> d.method() != Method.RECORE)) { // else it is the row above
            Sum sum = damage.regions().stream().map(r -> sum(r, Method.RECORE)).reduce(visits(), Sum::and);
            rows.add(row(
                    new Named("renew", "Open and renew all", "cut out " + all(damage.regions())),
                    sum,
                    gains.renewed(),
                    "Everything is seen and nothing is left to doubt, for the most work and a new surface.",
                    false));
        }
        return rows;
    }

    /** Work, waiting and weight of several regions. */
    private record Sum(Effort.Estimate effort, Waiting waiting, Option.Weight weight) {
        Sum and(Sum o) {
            return new Sum(effort.and(o.effort), waiting.and(o.waiting), weight.and(o.weight));
        }
    }

    private Sum visits() {
        return new Sum(effort.visits(1, 2), Waiting.NONE, Option.Weight.NONE);
    }

    private Sum sum(Region region, Method method) {
        return new Sum(
                effort.of(region, method),
                Waiting.of(region.id(), method, drying, survey.settings()),
                options.weight(region, method));
    }

    private Sum advised() {
        Sum sum = visits();
        for (Region region : damage.regions()) {
            RegionDecision decision = on(region);
            if (decision.firstStep() == null) {
                sum = sum.and(sum(region, decision.method()));
            } else { // from injecting to cutting out
                Sum fill = sum(region, Method.INJECT);
                Sum cut = sum(region, Method.RECORE);
                sum = sum.and(new Sum(effort.advised(region, decision), fill.waiting.orElse(cut.waiting), fill.weight));
            }
        }
        return sum;
    }

    private String leftToKnow() {
        String[] kept = damage.regions().stream()
                .filter(r -> on(r).notOffered().containsKey(Method.MONITOR))
                .map(Region::id)
                .toArray(String[]::new);
        String wide =
                "Nothing gets better by itself: wet core spreads along its joints, and a loose skin works looser.";
        return kept.length == 0
                ? wide
                : wide + " Leaving " + Words.list(List.of(kept)) + " is not advised: keep people, load and rain off.";
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

    /** @param slug as in options.csv */
    private record Named(String slug, String title, String regions) {}

    /** Cost is work at the yard's rate and materials, visits included; days are for the crew of the survey, with what must be waited for. */
    private Row row(Named named, Sum sum, Optional<Quantiles> ofAsBuilt, String toKnow, boolean advised) {
        Option.Work work = options.work(sum.effort, sum.waiting);
        Choice choice = new Choice(
                named.title,
                named.regions,
                work.costLow(),
                work.costHigh(),
                work.daysLow(),
                work.daysHigh(),
                ofAsBuilt,
                toKnow,
                advised);
        Option option = new Option(
                Option.DECK,
                named.slug,
                advised ? Option.Standing.ADVISED : Option.Standing.OFFERED,
                named.title + ": " + named.regions + ". " + toKnow,
                Optional.of(work),
                sum.weight,
                gains.map().worst().map(p -> p.panel().name()).orElse(""),
                ofAsBuilt);
        return new Row(choice, option);
    }
}
