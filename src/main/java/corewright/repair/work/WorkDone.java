package corewright.repair.work;

import corewright.damage.DamageMap;
import corewright.damage.Quantiles;
import corewright.repair.plan.Amounts;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.survey.About;
import corewright.survey.Defect;
import corewright.survey.Finding;
import corewright.survey.FrozenPlan;
import corewright.survey.NamedLog;
import corewright.survey.Origin;
import corewright.survey.Part;
import corewright.survey.Subject;
import corewright.survey.Survey;
import corewright.survey.WorkEntry;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What was done of the plans, and how it turned out.
 *
 * @param progress how far the work has come, by its log and the skin's warmth; empty before any work
 * @param cured what the taps after cure say of every filled space that was tapped; empty before
 * @param elsewhere what went into holes of which no plan knows any more
 * @param findings what to look at
 */
public record WorkDone(
        List<WorkProgress> progress,
        List<CuredFill> cured,
        List<WorkLog.Filled> elsewhere,
        List<Finding> findings,
        List<Defect> defects) {
    /** Nothing yet. */
    public static final WorkDone NONE = new WorkDone(List.of(), List.of(), List.of(), List.of(), List.of());

    public WorkDone {
        progress = List.copyOf(progress);
        cured = List.copyOf(cured);
        elsewhere = List.copyOf(elsewhere);
        findings = List.copyOf(findings);
        defects = List.copyOf(defects);
    }

    /** The work on some plans, by the survey's log and readings. A defect costs its own fill check. */
    public static WorkDone of(Survey written, DamageMap damage, List<InjectionPlan> plans) {
        NamedLog log = log(written, plans);
        Survey survey = Part.LOG.with(written, log.entries());
        List<Defect> defects = new ArrayList<>();
        List<WorkProgress> progress = WorkProgress.of(survey, damage, plans);
        List<CuredFill> cured = CuredFill.of(survey, damage, plans, defects);
        List<Finding> findings = new ArrayList<>(WorkWords.findings(survey.log(), plans));
        findings.addAll(WorkProgress.findings(survey, progress));
        if (written.repairPlan().isNone()) { // else told when the survey was read
            log.slips().forEach(s -> findings.add(finding(s)));
        }
        findings.addAll(CuredFill.findings(survey, cured));
        List<WorkLog.Filled> elsewhere = elsewhere(log.entries(), progress, vents(plans), findings);
        return new WorkDone(progress, cured, elsewhere, findings, defects);
    }

    /** Cavities over the middle of what the readings say of them, of every region that leads a begun space. */
    public Map<String, Quantiles> cavities() {
        Map<String, Quantiles> cavities = new LinkedHashMap<>();
        progress.stream()
                .filter(p -> !p.log().holes().isEmpty())
                .forEach(p -> cavities.put(p.region(), p.log().cavity()));
        return cavities;
    }

    /** Under the names of the frozen plan; where none is, of these. */
    public static NamedLog log(Survey survey, List<InjectionPlan> plans) {
        List<String> frozen = survey.repairPlan().holes().stream()
                .map(FrozenPlan.PlannedHole::name)
                .toList();
        List<String> planned =
                plans.stream().flatMap(p -> p.holes().stream()).map(Hole::id).toList();
        return NamedLog.of(survey.log(), survey.repairPlan().isNone() ? planned : frozen);
    }

    /** Grams count where they went, also where nothing is planned any more. */
    private static List<WorkLog.Filled> elsewhere(
            List<WorkEntry> log, List<WorkProgress> progress, Set<String> vents, List<Finding> findings) {
        Map<String, Double> taken = new LinkedHashMap<>();
        log.forEach(e -> taken.merge(e.hole(), e.grams(), Double::sum));
        progress.forEach(p -> p.log().holes().forEach(h -> taken.remove(h.hole())));
        List<WorkLog.Filled> all = new ArrayList<>();
        taken.forEach((hole, grams) -> {
            all.add(new WorkLog.Filled(hole, 0, grams, 0, WorkLog.Took.AS_PLANNED));
            boolean vent = vents.contains(hole);
            if (vent && grams == 0) {
                return; // mix showed there, or it was drilled: no more is said of a vent
            }
            Origin origin = log.stream()
                    .filter(e -> e.hole().equals(hole))
                    .findFirst()
                    .orElseThrow()
                    .origin();
            findings.add(new Finding(
                    Finding.Severity.DOUBT,
                    origin,
                    new About.OfHole(hole),
                    Subject.WORK_LOG,
                    hole + " took " + Amounts.grams(grams)
                            + (vent ? ", and is a vent." : ", and no plan fills its place any more."),
                    "The grams stay on the record. Tap there after cure"
                            + (vent ? "." : ", and drill no further hole before it is clear why.")));
        });
        return all;
    }

    private static Set<String> vents(List<InjectionPlan> plans) {
        return plans.stream()
                .flatMap(p -> p.holes().stream())
                .filter(h -> !h.fills())
                .map(Hole::id)
                .collect(Collectors.toSet());
    }

    private static Finding finding(NamedLog.Slip slip) {
        return new Finding(
                Finding.Severity.DOUBT,
                slip.entry().origin(),
                new About.OfHole(slip.entry().hole()),
                Subject.WORK_LOG,
                slip.problem(),
                slip.remedy());
    }
}
