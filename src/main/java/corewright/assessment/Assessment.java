package corewright.assessment;

import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.damage.NextReading;
import corewright.damage.Region;
import corewright.decision.Decision;
import corewright.decision.LeftToDo;
import corewright.decision.RegionDecision;
import corewright.decision.Safety;
import corewright.repair.plan.RepairOptions;
import corewright.repair.work.WorkDone;
import corewright.stiffness.Gains;
import corewright.stiffness.StiffnessMap;
import corewright.survey.Defect;
import corewright.survey.Finding;
import corewright.survey.Survey;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Everything concluded from a survey, stage by stage.
 *
 * @param plans of each region, those put together that are filled as one
 * @param gains what the choices give back of the worst panel's stiffness
 * @param decision methods, chosen plans, choices, what to buy
 * @param work what was done of the chosen plans
 * @param findings of all stages, the gravest first
 * @param next over all faces, ranked anew, the most telling first
 * @param ages which of it belongs to the survey as it is
 */
public record Assessment(
        Survey survey,
        DamageMap damage,
        StiffnessMap stiffness,
        RepairOptions plans,
        Gains gains,
        Decision decision,
        WorkDone work,
        List<Finding> findings,
        List<NextReading> next,
        Ages ages) {
    public Assessment {
        findings = List.copyOf(findings);
        next = List.copyOf(next);
    }

    /** What could not be calculated by a defect of this program; empty but for defects. */
    public List<Defect> defects() {
        return Stream.of(stiffness.defects(), plans.defects(), gains.defects(), work.defects())
                .flatMap(List::stream)
                .toList();
    }

    /** What is left to mix, to do and to buy. */
    public LeftToDo left() {
        return LeftToDo.of(survey, damage, decision, work);
    }

    /** What whoever works on some regions has to look out for. */
    public Safety safety(Predicate<Region> which) {
        List<RegionDecision> decisions = damage.regions().stream()
                .filter(which)
                .map(r -> decision.on(r.id()))
                .toList();
        return Safety.of(decisions, id -> damage.regions().stream()
                .filter(r -> r.id().equals(id))
                .findFirst()
                .map(r -> survey.face(r.face()).posture())
                .orElseThrow());
    }

    /** The same with other places to be read next. */
    public Assessment withNext(List<NextReading> others) {
        return new Assessment(survey, damage, stiffness, plans, gains, decision, work, findings, others, ages);
    }

    Assessment withFindings(List<Finding> others) {
        return new Assessment(survey, damage, stiffness, plans, gains, decision, work, others, next, ages);
    }

    /** The same when the survey has changed since. */
    public Assessment older() {
        return with(survey, damage, ages.older());
    }

    /** Whether a verdict may be given, and what must be said where not. */
    public Verdict verdict() {
        return Verdict.of(survey, findings);
    }

    /**
     * The same beside a survey that has changed since; the bare plan where its faces were drawn anew.
     *
     * @param notes on the survey as it is, for the bare plan
     */
    public Assessment beside(Survey now, List<Finding> notes) {
        if (now == survey) {
            return this;
        }
        boolean sameFaces =
                damage.faces().stream().map(FaceDamage::face).toList().equals(now.faces());
        return sameFaces ? with(now, damage, ages) : Partial.bare(now, notes);
    }

    /** The same with another state of survey and map, what rests on the map as it was. */
    Assessment with(Survey now, DamageMap map, Ages others) {
        return new Assessment(now, map, stiffness, plans, gains, decision, work, findings, next, others);
    }
}
