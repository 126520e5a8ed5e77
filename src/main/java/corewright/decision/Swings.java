package corewright.decision;

import corewright.damage.DamageMap;
import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.decision.Effort.Estimate;
import corewright.decision.Effort.Share;
import corewright.decision.Sensitivity.Input;
import corewright.decision.Sensitivity.Outcome;
import corewright.decision.Sensitivity.Swing;
import corewright.decision.drying.DryingTime;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.RepairOptions;
import corewright.stiffness.Doubt;
import corewright.stiffness.Ends;
import corewright.stiffness.Gains;
import corewright.stiffness.PanelGains;
import corewright.stiffness.Treatment;
import corewright.survey.Survey;
import corewright.survey.settings.Resin;
import corewright.survey.settings.Thresholds;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Works out what each input alone does to the advised plan; what is planned stays as it is, but for the gate. */
final class Swings {
    private final Survey survey;
    private final DamageMap damage;
    private final RepairOptions plans;
    private final List<RegionDecision> decisions;
    private final PanelGains panels;
    private final Map<String, Quantiles> cavities;
    private final Optional<String> panel;
    private final Map<Doubt, Ends> ends;
    private final double waitingDays;
    private final Outcome advised;

    private Swings(Survey survey, DamageMap damage, RepairOptions plans, List<RegionDecision> decisions, Known known) {
        this.survey = survey;
        this.damage = damage;
        this.plans = plans;
        this.decisions = decisions;
        panels = known.panels;
        cavities = known.cavities;
        panel = known.gains.map().worst().map(p -> p.panel().name());
        waitingDays = waiting(decisions, known.drying);
        advised = outcome(
                sum(decisions, (r, high) -> Share.WHOLE, false),
                waitingDays,
                known.gains.advised().map(Quantiles::p50));
        ends = advised.ofAsBuilt()
                .flatMap(share -> panel)
                .map(p -> panels.ends(p, treatments(decisions)))
                .orElse(Map.of());
    }

    /** What was weighed before. */
    record Known(Gains gains, PanelGains panels, List<DryingTime> drying, Map<String, Quantiles> cavities) {}

    /** What there is of a region at one end. */
    private interface Shares {
        Share of(Region region, boolean high);
    }

    static Sensitivity of(
            Survey survey, DamageMap damage, RepairOptions plans, List<RegionDecision> decisions, Known known) {
        return damage.regions().isEmpty()
                ? Sensitivity.NONE
                : new Swings(survey, damage, plans, decisions, known).all();
    }

    private Sensitivity all() {
        List<Swing> swings = new ArrayList<>();
        swings.add(hours());
        Quantiles m2 = damage.damagedMm2().times(1e-6);
        swings.add(swing(
                Input.AREA, m2.p10(), m2.p90(), this::areaShare, Doubt.AREA)); // at one depth it takes as much more mix
        Quantiles litres = damage.voidMm3().times(1e-6);
        if (litres.p90() > 0) {
            swings.add(swing(Input.DEPTH, litres.p10(), litres.p90(), this::depthShare, Doubt.DEPTH));
        }
        rising().map(e -> swing(
                        Input.EXPANSION,
                        e * Doubt.EXPANSION_LOW,
                        e * Doubt.EXPANSION_HIGH,
                        this::expansionShare,
                        Doubt.EXPANSION))
                .ifPresent(swings::add);
        stiffness(Input.FOAM, Doubt.FOAM, Doubt.FOAM_LOW, Doubt.FOAM_HIGH).ifPresent(swings::add);
        stiffness(Input.WATER, Doubt.WATER, Doubt.WATER_LOW, Doubt.WATER_HIGH).ifPresent(swings::add);
        gate().ifPresent(swings::add);
        return new Sensitivity(panel.orElse(""), advised, swings);
    }

    /** All work as quick, and as slow, as the survey's rates say. */
    private Swing hours() {
        Estimate sum = sum(decisions, (r, high) -> Share.WHOLE, false);
        double material = (sum.materialLow() + sum.materialHigh()) / 2;
        Estimate quick = new Estimate(sum.hoursLow(), sum.hoursLow(), material, material);
        Estimate slow = new Estimate(sum.hoursHigh(), sum.hoursHigh(), material, material);
        return new Swing(Input.RATES, sum.hoursLow(), sum.hoursHigh(), with(quick), with(slow), List.of());
    }

    private Swing swing(Input input, double low, double high, Shares shares, Doubt doubt) {
        Optional<Ends> ends = ends(doubt);
        Outcome atLow = with(sum(decisions, shares, false));
        Outcome atHigh = with(sum(decisions, shares, true));
        return new Swing(
                input,
                low,
                high,
                ends.map(e -> with(atLow, e.low())).orElse(atLow),
                ends.map(e -> with(atHigh, e.high())).orElse(atHigh),
                List.of());
    }

    private Optional<Swing> stiffness(Input input, Doubt doubt, double low, double high) {
        return ends(doubt)
                .map(e -> new Swing(input, low, high, with(advised, e.low()), with(advised, e.high()), List.of()));
    }

    private Optional<Ends> ends(Doubt doubt) {
        return Optional.ofNullable(ends.get(doubt));
    }

    private List<Treatment> treatments(List<RegionDecision> by) {
        return Treated.done(damage, new Methods(by, List.of()), plans, survey.settings(), cavities);
    }

    /** From the water content that proves core dry to the one that proves it wet: methods and drying by the other end. */
    private Optional<Swing> gate() {
        Thresholds limits = survey.settings().thresholds();
        if (!(limits.wetPlugPercent() > limits.dryPlugPercent())) {
            return Optional.empty();
        }
        Survey laxer = survey.with(survey.settings().with(limits.withDryPlug(limits.wetPlugPercent())));
        Methods methods = Methods.under(laxer, damage, plans);
        List<RegionDecision> then = methods.regions();
        List<String> changed = decisions.stream()
                .filter(d -> then.stream().noneMatch(t -> t.region().equals(d.region()) && t.method() == d.method()))
                .map(RegionDecision::region)
                .toList();
        Optional<Double> ofAsBuilt = changed.isEmpty()
                ? advised.ofAsBuilt()
                : panel.flatMap(p -> panels.after(new PanelGains.Asked(p, treatments(then))))
                        .map(Quantiles::p50);
        Outcome atHigh =
                outcome(sum(then, (r, high) -> Share.WHOLE, false), waiting(then, methods.drying()), ofAsBuilt);
        return Optional.of(
                new Swing(Input.GATE, limits.dryPlugPercent(), limits.wetPlugPercent(), advised, atHigh, changed));
    }

    private Share areaShare(Region region, boolean high) {
        double ratio = ratio(damage.face(region.face()).damagedMm2(), high);
        return new Share(ratio, ratio);
    }

    private Share depthShare(Region region, boolean high) {
        return plans.injection(region.id())
                .map(p -> new Share(1, ratio(p.cavityMm3(), high)))
                .orElse(Share.WHOLE);
    }

    /** What rises less takes more grams. */
    private Share expansionShare(Region region, boolean high) {
        double factor = high ? Doubt.EXPANSION_HIGH : Doubt.EXPANSION_LOW;
        return plans.injection(region.id())
                .filter(p -> mix(p).expansion() > 1)
                .map(p -> new Share(1, 1 / factor))
                .orElse(Share.WHOLE);
    }

    private static double ratio(Quantiles of, boolean high) {
        return of.p50() > 0 ? (high ? of.p90() : of.p10()) / of.p50() : 1;
    }

    /** Expansion of the first mix of the plan that rises. */
    private Optional<Double> rising() {
        return decisions.stream()
                .filter(d -> d.method() == Method.INJECT || d.firstStep() != null)
                .flatMap(d -> plans.injection(d.region()).stream())
                .map(p -> mix(p).expansion())
                .filter(e -> e > 1)
                .findFirst();
    }

    private Resin mix(InjectionPlan plan) {
        return survey.settings().resin(plan.resin());
    }

    /** As in the owner's table: visits, and every region by what is advised of it. */
    private Estimate sum(List<RegionDecision> by, Shares shares, boolean high) {
        Effort effort = new Effort(survey, plans, r -> shares.of(r, high));
        Estimate sum = effort.visits(1, 2);
        for (RegionDecision decision : by) {
            sum = sum.and(effort.advised(region(decision), decision));
        }
        return sum;
    }

    private Region region(RegionDecision decision) {
        return damage.regions().stream()
                .filter(r -> r.id().equals(decision.region()))
                .findFirst()
                .orElseThrow();
    }

    private double waiting(List<RegionDecision> by, List<DryingTime> drying) {
        Waiting all = Waiting.NONE;
        for (RegionDecision d : by) {
            Waiting own = Waiting.of(d.region(), d.method(), drying, survey.settings());
            Waiting fill = Waiting.of(d.region(), Method.INJECT, drying, survey.settings());
            Waiting cut = Waiting.of(d.region(), Method.RECORE, drying, survey.settings());
            all = all.and(d.firstStep() == null ? own : fill.orElse(cut));
        }
        return (all.low() + all.high()) / 2;
    }

    private Outcome with(Estimate sum) {
        return outcome(sum, waitingDays, advised.ofAsBuilt());
    }

    private static Outcome with(Outcome outcome, double ofAsBuilt) {
        return new Outcome(outcome.cost(), outcome.days(), Optional.of(ofAsBuilt));
    }

    private Outcome outcome(Estimate sum, double waitingDays, Optional<Double> ofAsBuilt) {
        var costs = survey.settings().costs();
        double hours = (sum.hoursLow() + sum.hoursHigh()) / 2;
        double material = (sum.materialLow() + sum.materialHigh()) / 2;
        double aDay = costs.hoursPerDay() * survey.settings().crew().people();
        return new Outcome(hours * costs.ratePerHour() + material, hours / aDay + waitingDays, ofAsBuilt);
    }
}
