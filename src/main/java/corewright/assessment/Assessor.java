package corewright.assessment;

import corewright.damage.Damage;
import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.damage.Fitted;
import corewright.decision.Decider;
import corewright.decision.Decision;
import corewright.decision.Method;
import corewright.decision.Methods;
import corewright.decision.Treated;
import corewright.repair.RepairPlanner;
import corewright.repair.plan.RepairOptions;
import corewright.repair.work.KeptRegions;
import corewright.repair.work.WorkDone;
import corewright.reuse.Memory;
import corewright.stiffness.Gains;
import corewright.stiffness.PanelGains;
import corewright.stiffness.Stiffness;
import corewright.stiffness.StiffnessMap;
import corewright.survey.Defect;
import corewright.survey.Finding;
import corewright.survey.Survey;
import java.util.Comparator;
import java.util.List;

/** From what was observed to everything concluded: the whole chain. */
public final class Assessor {
    private Assessor() {}

    /**
     * Assesses a survey. What came before saves time and changes nothing.
     *
     * @param intakeFindings what was odd in the files
     * @param earlier what the assessment before left
     * @param progress told of every stage; may cancel between them
     */
    public static Assessed assess(Survey survey, List<Finding> intakeFindings, Earlier earlier, Progress progress) {
        Memory memory = earlier.memory().next();

        progress.begin("damage", 0.02);
        Assessed early = mapped(survey, intakeFindings, earlier, memory);
        DamageMap damage = early.assessment().damage();
        progress.mapped(early);

        progress.begin("stiffness", 0.30);
        StiffnessMap stiffness = Stiffness.of(survey, damage, memory);

        progress.begin("options", 0.45);
        RepairOptions options = RepairPlanner.plan(survey, damage, memory);

        progress.begin("methods", 0.53);
        Methods methods = Methods.of(survey, damage, options);

        progress.begin("joined plans", 0.54);
        RepairOptions plans = RepairPlanner.together(survey, damage, options, methods.of(Method.INJECT), memory);

        progress.begin("work", 0.57);
        WorkDone work = WorkDone.of(survey, damage, Decider.injections(survey, damage, methods, plans));

        progress.begin("gains", 0.57);
        Gains gains = Stiffness.gains(
                survey,
                damage,
                stiffness,
                Treated.dried(damage, methods),
                Treated.advised(damage, methods, plans, survey.settings(), work.cavities()),
                memory);

        progress.begin("decision", 0.59);
        Decision decision = Decider.decide(
                survey,
                damage,
                methods,
                plans,
                gains,
                new PanelGains(survey, damage, gains.map(), memory),
                work.cavities());

        Assessment whole = new Assessment(
                survey,
                damage,
                gains.map(),
                plans,
                gains,
                decision,
                work,
                List.of(),
                NextOverall.of(damage, decision.weighing().flips()),
                Ages.FRESH);
        return new Assessed(
                whole.withFindings(findings(intakeFindings, whole)),
                new Earlier(early.earlier().parameters(), memory));
    }

    /** The map alone, of a survey not seen before: nothing is concluded from it. */
    public static Assessed mapped(Survey survey, List<Finding> intakeFindings) {
        return mapped(survey, intakeFindings, Earlier.NONE, new Memory());
    }

    private static Assessed mapped(Survey survey, List<Finding> intakeFindings, Earlier earlier, Memory memory) {
        Fitted fitted = Damage.fit(survey, memory);
        DamageMap damage =
                KeptRegions.on(survey, Verdict.of(survey, intakeFindings).on(fitted.map()));
        return new Assessed(Partial.mapped(survey, intakeFindings, damage), earlier.with(fitted.parameters()));
    }

    /**
     * An assessment after a small change: the map follows with its parameters held, what rests on it stays as it was.
     *
     * @param before assessed last
     * @param earlier what it left
     */
    public static Assessed follow(Assessment before, Survey now, Earlier earlier) {
        Fitted fitted = Damage.follow(now, earlier.parameters());
        Ages ages = new Ages(
                Age.FRESH,
                fitted.old() ? Age.OLD : Age.FRESH,
                before.ages().older().rest());
        DamageMap damage = Verdict.of(now, before.findings()).on(fitted.map());
        return new Assessed(before.with(now, KeptRegions.on(now, damage), ages), earlier.with(fitted.parameters()));
    }

    private static List<Finding> findings(List<Finding> intake, Assessment whole) {
        return gravestFirst(List.of(
                intake,
                whole.work().findings(),
                Issued.of(whole.survey(), whole.damage(), whole.decision()).findings(),
                whole.damage().faces().stream()
                        .map(FaceDamage::findings)
                        .flatMap(List::stream)
                        .toList(),
                whole.stiffness().findings(),
                whole.decision().findings(),
                whole.defects().stream().map(Defect::finding).toList()));
    }

    /** Those of equal gravity stay in the order of the chain. */
    static List<Finding> gravestFirst(List<List<Finding>> stages) {
        return Finding.once(stages).stream()
                .sorted(Comparator.comparing(Finding::severity))
                .toList();
    }
}
