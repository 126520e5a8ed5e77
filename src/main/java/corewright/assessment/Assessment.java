package corewright.assessment;

import corewright.damage.DamageMap;
import corewright.damage.NextReading;
import corewright.decision.Decision;
import corewright.repair.plan.RepairOptions;
import corewright.repair.work.CuredFill;
import corewright.repair.work.WorkProgress;
import corewright.stiffness.StiffnessMap;
import corewright.survey.Finding;
import corewright.survey.Survey;
import java.util.List;

/**
 * Everything concluded from a survey.
 *
 * @param findings of all stages, the gravest first
 * @param next over all faces, ranked anew, the most telling first
 */
public record Assessment(
        Survey survey,
        DamageMap damage,
        StiffnessMap stiffness,
        RepairOptions options,
        Decision decision,
        List<Finding> findings,
        List<NextReading> next) {
    public Assessment {
        findings = List.copyOf(findings);
        next = List.copyOf(next);
    }

    /** How far the work has come, by its log and the skin's warmth; empty before any work. */
    public List<WorkProgress> work() {
        return WorkProgress.of(survey, damage, decision.injections());
    }

    /** What the taps after cure say of every filled space that was tapped; empty before. */
    public List<CuredFill> cured() {
        return CuredFill.of(survey, damage, decision.injections());
    }

    /** The same with other places to be read next. */
    public Assessment withNext(List<NextReading> others) {
        return new Assessment(survey, damage, stiffness, options, decision, findings, others);
    }
}
