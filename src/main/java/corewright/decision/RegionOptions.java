package corewright.decision;

import corewright.damage.Region;
import corewright.decision.Effort.Estimate;
import corewright.decision.Option.Standing;
import corewright.decision.drying.DryingTime;
import corewright.decision.drying.Way;
import corewright.overlay.Overlay;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.RepairOptions;
import corewright.repair.plan.WeightChange;
import corewright.stiffness.PanelGains;
import corewright.stiffness.Treatment;
import corewright.survey.Laminate;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.settings.Costs;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What each method asks and gives in one region. */
final class RegionOptions {
    private static final double MM3_PER_M3 = 1e9;

    private final Survey survey;
    private final RepairOptions plans;
    private final List<DryingTime> drying;
    private final PanelGains gains;
    private final Effort effort;

    RegionOptions(Survey survey, RepairOptions plans, List<DryingTime> drying, PanelGains gains) {
        this.survey = survey;
        this.plans = plans;
        this.drying = List.copyOf(drying);
        this.gains = gains;
        effort = new Effort(survey, plans);
    }

    /** All four, from least to most. */
    List<Option> of(Region region, RegionDecision decision) {
        List<Option> options = new ArrayList<>();
        for (Method method : Method.values()) {
            options.add(option(region, decision, method));
        }
        return options;
    }

    private Option option(Region region, RegionDecision decision, Method method) {
        Optional<String> refused = refused(region, decision, method);
        if (refused.isPresent()) {
            String why = method == Method.MONITOR
                    ? refused.get() + " Until it is done, " + meanwhile(region, decision)
                    : refused.get();
            return new Option(
                    region.id(),
                    method.word(),
                    Standing.NOT_OFFERED,
                    why,
                    Optional.empty(),
                    new Option.Weight(Double.NaN, Double.NaN),
                    "",
                    Optional.empty());
        }
        boolean advised = decision.method() == method;
        Optional<String> panel = gains.panelOf(region);
        return new Option(
                region.id(),
                method.word(),
                advised ? Standing.ADVISED : Standing.OFFERED,
                why(region, decision, method, advised),
                Optional.of(
                        work(effort.of(region, method), Waiting.of(region.id(), method, drying, survey.settings()))),
                weight(region, method),
                panel.orElse(""),
                panel.flatMap(p -> gains.after(asked(p, region, method))));
    }

    /** What the options of a region will ask of the panels. */
    Stream<PanelGains.Asked> asked(Region region, RegionDecision decision) {
        Optional<String> panel = gains.panelOf(region);
        return Stream.of(Method.values())
                .filter(method -> refused(region, decision, method).isEmpty())
                .flatMap(method -> panel.map(p -> asked(p, region, method)).stream());
    }

    private PanelGains.Asked asked(String panel, Region region, Method method) {
        return new PanelGains.Asked(
                panel, treatment(region, method).map(List::of).orElse(List.of()));
    }

    private Optional<String> refused(Region region, RegionDecision decision, Method method) {
        String refused = decision.notOffered().get(method);
        boolean unplanned =
                method == Method.INJECT && plans.injection(region.id()).isEmpty();
        return refused != null || !unplanned
                ? Optional.ofNullable(refused)
                : Optional.of(plans.refused().getOrDefault(region.id(), "No injection could be planned here."));
    }

    /** What a method does to the core; empty where it leaves it. */
    Optional<Treatment> treatment(Region region, Method method) {
        return switch (method) {
            case MONITOR -> Optional.empty();
            case DRY_OUT -> Optional.of(new Treatment.Dry(region.face(), region.likely()));
            case INJECT ->
                plans.injection(region.id())
                        .map(p -> new Treatment.Fill(
                                region.face(),
                                region.likely(),
                                survey.settings().resin(p.resin())));
            case RECORE ->
                plans.recore(region.id())
                        .map(p ->
                                new Treatment.Renew(region.face(), Overlay.union(p.cut(), region.likely()), p.core()));
        };
    }

    /** Work at the yard's rate and materials; days of the survey's crew, and what must be waited for. */
    Option.Work work(Estimate sum, Waiting waiting) {
        Costs costs = survey.settings().costs();
        double aDay = costs.hoursPerDay() * survey.settings().crew().people();
        return new Option.Work(
                sum.hoursLow(),
                sum.hoursHigh(),
                sum.hoursLow() * costs.ratePerHour() + sum.materialLow(),
                sum.hoursHigh() * costs.ratePerHour() + sum.materialHigh(),
                sum.hoursLow() / aDay + waiting.low(),
                sum.hoursHigh() / aDay + waiting.high());
    }

    Option.Weight weight(Region region, Method method) {
        Laminate laminate = survey.laminateAt(
                new Spot(region.face(), region.label().getX(), region.label().getY()));
        var drilling = survey.settings().drilling();
        return switch (method) {
            case MONITOR -> Option.Weight.NONE;
            case DRY_OUT ->
                new Option.Weight(0, -waterKg(region, laminate, region.likely().getArea(), gate()));
            case INJECT ->
                new Option.Weight(
                        plans.injection(region.id())
                                .filter(p -> !p.fillsBeside(region.id()))
                                .map(p -> WeightChange.of(p, drilling).netKg())
                                .orElse(0.0),
                        0);
            case RECORE ->
                plans.recore(region.id())
                        .map(p -> new Option.Weight(
                                WeightChange.of(p, region, laminate, survey.materials(), drilling)
                                        .netKg(),
                                -waterKg(region, laminate, region.likely().getArea(), 0)))
                        .orElse(new Option.Weight(Double.NaN, Double.NaN));
        };
    }

    private double gate() {
        return survey.settings().thresholds().dryPlugPercent();
    }

    /** From the middle of what the core is taken to hold; not a number where that is not known. */
    private double waterKg(Region region, Laminate laminate, double areaMm2, double leftPercent) {
        if (!region.wet()) {
            return 0;
        }
        double from = drying.stream()
                .filter(t -> t.region().equals(region.id()))
                .mapToDouble(DryingTime::fromPercent)
                .findFirst()
                .orElse(Double.NaN);
        double dryKg = areaMm2
                * laminate.coreMm()
                / MM3_PER_M3
                * survey.materials().core(laminate.core()).densityKgM3();
        return dryKg * Math.max(0, from - leftPercent) / 100;
    }

    private String why(Region region, RegionDecision decision, Method method, boolean advised) {
        String first = advised
                ? decision.reasons().get(0) + (decision.firstStep() == null ? "" : " " + decision.firstStep())
                : "";
        String asks =
                switch (method) {
                    case MONITOR -> "Read it again each season. Meanwhile " + meanwhile(region, decision);
                    case DRY_OUT -> "Stop the leak first. " + dryingNote(region);
                    case INJECT ->
                        plans.injection(region.id())
                                .filter(p -> p.fillsBeside(region.id()))
                                .map(InjectionPlan::region)
                                .map(r -> "It is filled with " + r + ", where its mix counts.")
                                .orElse(
                                        "The skin stays; the fill is tapped after cure, and what sounds hollow is filled again.");
                    case RECORE -> "Everything is seen, for the most work and a new surface.";
                };
        String sign = decision.setAside().getOrDefault(method, "");
        return Stream.of(first, sign, asks).filter(s -> !s.isEmpty()).collect(Collectors.joining(" "));
    }

    private String dryingNote(Region region) {
        return drying.stream()
                .filter(t -> t.region().equals(region.id()) && t.way() == Way.THROUGH_HOLES)
                .findFirst()
                .map(t -> t.days() == null ? t.note() : t.note() + " Prove it by a sample.")
                .orElse("Prove it by a sample.");
    }

    /** What must not be done with the boat while a region is as it is. Common practice. */
    private static String meanwhile(Region region, RegionDecision decision) {
        List<String> musts = new ArrayList<>();
        if (decision.architect()) {
            musts.add("the fitting that carries load is out of use");
        }
        if (region.condition().loose()) {
            musts.add("nobody jumps on it");
            musts.add("nothing heavy stands on it");
        }
        if (region.wet()) {
            musts.add("rain and frost are kept off it");
        }
        if (musts.isEmpty()) {
            musts.add("nothing heavy stands on it");
        }
        return Words.list(musts) + ".";
    }
}
