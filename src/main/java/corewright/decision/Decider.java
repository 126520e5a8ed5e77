package corewright.decision;

import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.decision.drying.DryingTime;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.RecorePlan;
import corewright.repair.plan.RepairOptions;
import corewright.stiffness.Gains;
import corewright.stiffness.PanelGains;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Puts the methods and plans into a day's work, and says what the choices cost and give. */
public final class Decider {
    private Decider() {}

    /**
     * Day, choices, buying list, findings, and what stands behind them.
     *
     * @param plans put together for the regions to be injected
     * @param gains what each choice gives back
     * @param panels what one region's treatment gives back
     * @param cavities as for {@link Treated#advised}
     */
    public static Decision decide(
            Survey survey,
            DamageMap damage,
            Methods methods,
            RepairOptions plans,
            Gains gains,
            PanelGains panels,
            Map<String, Quantiles> cavities) {
        List<InjectionPlan> injections = injections(survey, damage, methods, plans);
        List<RecorePlan> recores = methods.of(Method.RECORE).stream()
                .flatMap(id -> plans.recore(id).stream())
                .toList();
        List<RegionDecision> decisions = methods.regions().stream()
                .map(d -> filledWith(d, injections))
                .map(d -> missed(d, plans))
                .toList();
        List<DryingTime> drying = methods.drying();
        RegionOptions options = new RegionOptions(survey, plans, drying, panels);
        List<Choices.Row> choices =
                Choices.of(survey, damage, plans, decisions, gains, new Choices.Weighed(options, drying));
        return new Decision(
                decisions,
                injections,
                recores,
                choices.stream().map(Choices.Row::choice).toList(),
                BuyingList.of(survey, damage, injections, recores),
                Doubts.of(survey, damage, decisions, injections),
                weighing(
                        survey,
                        damage,
                        decisions,
                        new WholeDeck.Known(options, plans, drying, panels),
                        choices,
                        Swings.of(
                                survey, damage, plans, decisions, new Swings.Known(gains, panels, drying, cavities))));
    }

    /** Plans of what is injected, one after another. */
    public static List<InjectionPlan> injections(
            Survey survey, DamageMap damage, Methods methods, RepairOptions plans) {
        List<InjectionPlan> chosen = methods.of(Method.INJECT).stream()
                .flatMap(id -> plans.injection(id).filter(p -> p.region().equals(id)).stream())
                .toList();
        return Day.oneAfterAnother(chosen, damage, survey.settings());
    }

    /** Nothing while nothing may be said of the deck. */
    private static Weighing weighing(
            Survey survey,
            DamageMap damage,
            List<RegionDecision> decisions,
            WholeDeck.Known known,
            List<Choices.Row> choices,
            Sensitivity sensitivity) {
        if (damage.faces().stream().noneMatch(FaceDamage::told)) {
            return Weighing.NONE;
        }
        known.panels()
                .ahead(damage.regions().stream()
                        .flatMap(region -> decisions.stream()
                                .filter(d -> d.region().equals(region.id()))
                                .flatMap(d -> known.options().asked(region, d)))
                        .toList());
        List<Option> all = new ArrayList<>();
        for (Region region : damage.regions()) {
            decisions.stream()
                    .filter(d -> d.region().equals(region.id()))
                    .forEach(d -> all.addAll(known.options().of(region, d)));
        }
        List<Option> deck =
                new ArrayList<>(choices.stream().map(Choices.Row::option).toList());
        deck.addAll(WholeDeck.leastCost(survey, damage, all, known));
        all.addAll(deck);
        return new Weighing(
                known.drying(),
                all,
                WhatWouldChange.of(survey, damage, known.plans(), known.drying(), decisions),
                sensitivity);
    }

    private static RegionDecision filledWith(RegionDecision decision, List<InjectionPlan> chosen) {
        return chosen.stream()
                .filter(p -> p.fillsBeside(decision.region()))
                .findFirst()
                .map(p -> decision.because("It opens into " + p.region() + " and is filled with it."))
                .orElse(decision);
    }

    /** A plan that is missing by a defect is said where it is missed. */
    private static RegionDecision missed(RegionDecision decision, RepairOptions plans) {
        return plans.failed(decision.region())
                .map(d -> decision.because(d.sentence()))
                .orElse(decision);
    }
}
