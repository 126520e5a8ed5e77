package corewright.decision;

import corewright.damage.DamageMap;
import corewright.decision.drying.DryingTimes;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.RecorePlan;
import corewright.repair.plan.RepairOptions;
import corewright.stiffness.Gains;
import corewright.survey.Survey;
import java.util.List;

/** Puts the methods and plans into a day's work, and says what the choices cost and give. */
public final class Decider {
    private Decider() {}

    /**
     * Day, choices, buying list, findings.
     *
     * @param plans put together for the regions to be injected
     * @param gains what each choice gives back
     */
    public static Decision decide(Survey survey, DamageMap damage, Methods methods, RepairOptions plans, Gains gains) {
        List<InjectionPlan> chosen = methods.of(Method.INJECT).stream()
                .flatMap(id -> plans.injection(id).filter(p -> p.region().equals(id)).stream())
                .toList();
        List<RecorePlan> recores = methods.of(Method.RECORE).stream()
                .flatMap(id -> plans.recore(id).stream())
                .toList();
        List<RegionDecision> decisions =
                methods.regions().stream().map(d -> filledWith(d, chosen)).toList();
        List<InjectionPlan> injections = Day.oneAfterAnother(chosen, damage, survey.settings());
        return new Decision(
                decisions,
                injections,
                recores,
                Choices.of(survey, damage, plans, decisions, gains),
                BuyingList.of(survey, damage, injections, recores),
                Doubts.of(survey, damage, decisions, injections),
                new Weighing(DryingTimes.of(survey, damage)));
    }

    private static RegionDecision filledWith(RegionDecision decision, List<InjectionPlan> chosen) {
        return chosen.stream()
                .filter(p -> p.fillsBeside(decision.region()))
                .findFirst()
                .map(p -> decision.because("It opens into " + p.region() + " and is filled with it."))
                .orElse(decision);
    }
}
