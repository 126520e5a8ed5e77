package corewright.assessment;

import corewright.damage.Damage;
import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.damage.Fitted;
import corewright.damage.NextReading;
import corewright.damage.Parameters;
import corewright.decision.Decider;
import corewright.decision.Decision;
import corewright.repair.RepairPlanner;
import corewright.repair.plan.RepairOptions;
import corewright.repair.work.CuredFill;
import corewright.repair.work.WorkProgress;
import corewright.stiffness.Stiffness;
import corewright.stiffness.StiffnessMap;
import corewright.survey.Finding;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** From what was observed to everything concluded: the whole chain. */
public final class Assessor {
    private Assessor() {}

    /**
     * Assesses a survey.
     *
     * @param intakeFindings what was odd in the files
     * @param progress told of every stage; may cancel between them
     */
    public static Assessment assess(Survey survey, List<Finding> intakeFindings, Progress progress) {
        progress.begin("damage", 0.02);
        Fitted fitted = Damage.fit(survey, Parameters.NONE);
        DamageMap damage = fitted.map();
        progress.mapped(fitted);
        progress.begin("stiffness", 0.30);
        StiffnessMap stiffness = Stiffness.of(survey, damage);
        progress.begin("repair", 0.45);
        RepairOptions options = RepairPlanner.plan(survey, damage);
        progress.begin("decision", 0.58);
        Decision decision = Decider.decide(survey, damage, stiffness, options);
        List<Finding> found = new ArrayList<>(intakeFindings);
        found.addAll(WorkProgress.findings(survey, damage, decision.injections()));
        found.addAll(CuredFill.findings(survey, damage, decision.injections()));
        List<Finding> findings = gravestFirst(found, damage, stiffness, decision);
        List<List<NextReading>> next =
                damage.faces().stream().map(FaceDamage::next).toList();
        return new Assessment(survey, damage, stiffness, options, decision, findings, NextOverall.ranked(next));
    }

    /** The part of an assessment that rests on the map alone: nothing of stiffness, repair or decision in it. */
    public static Assessment mapped(Survey survey, List<Finding> intakeFindings, DamageMap damage) {
        Decision open = new Decision(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
        List<List<NextReading>> next =
                damage.faces().stream().map(FaceDamage::next).toList();
        return new Assessment(
                survey,
                damage,
                StiffnessMap.NONE,
                new RepairOptions(List.of(), List.of()),
                open,
                gravestFirst(intakeFindings, damage, StiffnessMap.NONE, open),
                NextOverall.ranked(next));
    }

    /** Findings of all stages; those of equal gravity stay in the order of the chain. */
    private static List<Finding> gravestFirst(
            List<Finding> intake, DamageMap damage, StiffnessMap stiffness, Decision decision) {
        List<Finding> faces =
                damage.faces().stream().flatMap(f -> f.findings().stream()).toList();
        return Finding.once(List.of(intake, faces, stiffness.findings(), decision.findings())).stream()
                .sorted(Comparator.comparing(Finding::severity))
                .toList();
    }
}
