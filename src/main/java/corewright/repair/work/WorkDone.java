package corewright.repair.work;

import corewright.damage.DamageMap;
import corewright.repair.plan.InjectionPlan;
import corewright.survey.Defect;
import corewright.survey.Finding;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.List;

/**
 * What was done of the plans, and how it turned out.
 *
 * @param progress how far the work has come, by its log and the skin's warmth; empty before any work
 * @param cured what the taps after cure say of every filled space that was tapped; empty before
 * @param findings what to look at
 */
public record WorkDone(
        List<WorkProgress> progress, List<CuredFill> cured, List<Finding> findings, List<Defect> defects) {
    /** Nothing yet. */
    public static final WorkDone NONE = new WorkDone(List.of(), List.of(), List.of(), List.of());

    public WorkDone {
        progress = List.copyOf(progress);
        cured = List.copyOf(cured);
        findings = List.copyOf(findings);
        defects = List.copyOf(defects);
    }

    /** The work on some plans, by the survey's log and readings. A defect costs its own fill check. */
    public static WorkDone of(Survey survey, DamageMap damage, List<InjectionPlan> plans) {
        List<Defect> defects = new ArrayList<>();
        List<WorkProgress> progress = WorkProgress.of(survey, damage, plans);
        List<CuredFill> cured = CuredFill.of(survey, damage, plans, defects);
        List<Finding> findings = new ArrayList<>(WorkProgress.findings(survey, progress, plans));
        findings.addAll(CuredFill.findings(survey, cured));
        return new WorkDone(progress, cured, findings, defects);
    }
}
