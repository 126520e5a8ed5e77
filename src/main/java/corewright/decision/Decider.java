package corewright.decision;

import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.repair.InjectionPlan;
import corewright.repair.RecorePlan;
import corewright.repair.RepairOptions;
import corewright.stiffness.StiffnessMap;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.List;

/** Advises a method for each region, and what the choices cost. */
public final class Decider {
    private Decider() {}

    /** Rules, day, choices, buying list, findings. */
    public static Decision decide(Survey survey, DamageMap damage, StiffnessMap stiffness, RepairOptions options) {
        List<RegionDecision> decisions = new ArrayList<>();
        List<InjectionPlan> chosen = new ArrayList<>();
        List<RecorePlan> recores = new ArrayList<>();
        for (FaceDamage face : damage.faces()) {
            for (Region region : face.regions()) {
                Evidence evidence = Evidence.of(survey, face, region);
                RegionDecision decision = Rules.decide(survey.settings().thresholds(), options, evidence);
                decisions.add(decision);
                if (decision.method() == Method.INJECT) {
                    options.injection(region.id()).ifPresent(chosen::add);
                } else if (decision.method() == Method.RECORE) {
                    options.recore(region.id()).ifPresent(recores::add);
                }
            }
        }
        List<InjectionPlan> injections = Day.oneAfterAnother(chosen, damage, survey.settings());
        return new Decision(
                decisions,
                injections,
                recores,
                Choices.of(survey, damage, options, decisions, new PanelGain(survey, damage, stiffness, options)),
                BuyingList.of(survey, damage, injections, recores),
                Doubts.of(survey, damage, decisions, injections));
    }
}
