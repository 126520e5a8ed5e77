package corewright;

import corewright.assessment.Ages;
import corewright.assessment.Assessment;
import corewright.damage.DamageMap;
import corewright.damage.NextReading;
import corewright.decision.Decider;
import corewright.decision.Decision;
import corewright.decision.Method;
import corewright.decision.Methods;
import corewright.repair.RepairPlanner;
import corewright.repair.plan.RepairOptions;
import corewright.repair.work.WorkDone;
import corewright.reuse.Memory;
import corewright.stiffness.Gains;
import corewright.stiffness.PanelGains;
import corewright.stiffness.StiffnessMap;
import corewright.survey.Finding;
import corewright.survey.Survey;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Assessments put together by hand, and the chain without panels. */
public final class Assessments {
    /** Plans of regions that several tests ask for; that remembering changes nothing is for ReuseTest to say. */
    public static final Memory PLANS = new Memory();

    private Assessments() {}

    /** With the work done by the survey's log and readings. */
    public static Assessment of(
            Survey survey,
            DamageMap damage,
            StiffnessMap stiffness,
            RepairOptions options,
            Decision decision,
            List<Finding> findings,
            List<NextReading> next) {
        return new Assessment(
                survey,
                damage,
                stiffness,
                options,
                Gains.NONE,
                decision,
                WorkDone.of(survey, damage, decision.injections()),
                findings,
                next,
                Ages.FRESH);
    }

    /** The same as if it belonged whole to the survey as it is. */
    public static Assessment fresh(Assessment a) {
        return new Assessment(
                a.survey(),
                a.damage(),
                a.stiffness(),
                a.plans(),
                a.gains(),
                a.decision(),
                a.work(),
                a.findings(),
                a.next(),
                Ages.FRESH);
    }

    /** What each region would take by itself. */
    public static RepairOptions alone(Survey survey, DamageMap damage, Memory memory) {
        RepairOptions options = RepairPlanner.plan(survey, damage, memory);
        return RepairPlanner.together(survey, damage, options, Set.of(), memory);
    }

    /** From the options of each region to the decision, as the chain does it. */
    public static Decision decide(Survey survey, DamageMap damage) {
        return decide(survey, damage, RepairPlanner.plan(survey, damage, PLANS));
    }

    /** The same with other options. */
    public static Decision decide(Survey survey, DamageMap damage, RepairOptions options) {
        Methods methods = Methods.of(survey, damage, options);
        RepairOptions plans = RepairPlanner.together(survey, damage, options, methods.of(Method.INJECT), PLANS);
        return Decider.decide(
                survey,
                damage,
                methods,
                plans,
                Gains.NONE,
                new PanelGains(survey, damage, StiffnessMap.NONE, new Memory()),
                Map.of());
    }
}
