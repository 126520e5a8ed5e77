package corewright.decision;

import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.repair.RepairPlanner;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.RecorePlan;
import corewright.repair.plan.RepairOptions;
import corewright.stiffness.StiffnessMap;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Advises a method for each region, and what the choices cost. */
public final class Decider {
    private Decider() {}

    /** Rules, day, choices, buying list, findings. */
    public static Decision decide(Survey survey, DamageMap damage, StiffnessMap stiffness, RepairOptions options) {
        List<RegionDecision> alone = new ArrayList<>();
        for (FaceDamage face : damage.faces()) {
            for (Region region : face.regions()) {
                Evidence evidence = Evidence.of(survey, face, region);
                alone.add(Rules.decide(survey.settings().thresholds(), options, evidence));
            }
        }
        Set<String> injected = regions(alone, Method.INJECT);
        RepairOptions together =
                RepairPlanner.together(survey, damage, options, region -> injected.contains(region.id()));
        List<InjectionPlan> chosen = injected.stream()
                .flatMap(id -> together.injection(id).filter(p -> p.region().equals(id)).stream())
                .toList();
        List<RecorePlan> recores = regions(alone, Method.RECORE).stream()
                .flatMap(id -> together.recore(id).stream())
                .toList();
        List<RegionDecision> decisions =
                alone.stream().map(d -> filledWith(d, chosen)).toList();
        List<InjectionPlan> injections = Day.oneAfterAnother(chosen, damage, survey.settings());
        return new Decision(
                decisions,
                injections,
                recores,
                Choices.of(survey, damage, together, decisions, new PanelGain(survey, damage, stiffness, together)),
                BuyingList.of(survey, damage, injections, recores),
                Doubts.of(survey, damage, decisions, injections));
    }

    private static Set<String> regions(List<RegionDecision> decisions, Method method) {
        return decisions.stream()
                .filter(d -> d.method() == method)
                .map(RegionDecision::region)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static RegionDecision filledWith(RegionDecision decision, List<InjectionPlan> chosen) {
        return chosen.stream()
                .filter(p -> p.fillsBeside(decision.region()))
                .findFirst()
                .map(p -> decision.because("It opens into " + p.region() + " and is filled with it."))
                .orElse(decision);
    }
}
