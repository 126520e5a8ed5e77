package corewright.intake;

import corewright.intake.text.Notes;
import corewright.survey.About;
import corewright.survey.Finding;
import corewright.survey.FrozenPlan;
import corewright.survey.NamedLog;
import corewright.survey.Subject;
import corewright.survey.Survey;
import corewright.survey.WorkEntry;
import java.util.Locale;

/** What is odd about the work log, before anything is computed: every line is understood, or named here. */
final class LogNotes {
    private LogNotes() {}

    static void note(Survey survey, Notes notes) {
        if (survey.log().isEmpty()) {
            return;
        }
        FrozenPlan plan = survey.repairPlan();
        if (plan.isNone()) {
            WorkEntry first = survey.log().get(0);
            notes.doubt(
                    first.origin(),
                    Subject.REPAIR_PLAN,
                    "The survey has a work log and no repair plan that it belongs to.",
                    "Hole names are taken for those of this run, which may stand elsewhere after another reading: name the"
                            + " repair-plan.yaml of the run whose cards were worked from under files: repair_plan.");
            return;
        }
        NamedLog log = NamedLog.of(
                survey.log(),
                plan.holes().stream().map(FrozenPlan.PlannedHole::name).toList());
        for (NamedLog.Slip slip : log.slips()) {
            notes.doubt(slip.entry().origin(), Subject.WORK_LOG, slip.problem(), slip.remedy());
        }
        for (NamedLog.Slip taken : log.taken()) {
            notes.hint(taken.entry().origin(), Subject.WORK_LOG, taken.problem(), taken.remedy());
        }
        for (WorkEntry entry : log.entries()) {
            plan.hole(entry.hole())
                    .filter(FrozenPlan.PlannedHole::dropped)
                    .ifPresent(hole -> notes.doubt(
                            entry.origin(),
                            new About.OfHole(hole.name()),
                            Subject.REPAIR_PLAN,
                            hole.name() + " was left out before revision " + plan.revision() + ", and is in the log.",
                            "It is taken for drilled, and planned round."));
            Integer card = entry.cardRevision();
            if (card != null && card != plan.revision()) {
                notes.finding(otherCard(entry, card, plan.revision()));
            }
        }
    }

    private static Finding otherCard(WorkEntry entry, int card, int now) {
        return new Finding(
                Finding.Severity.DOUBT,
                entry.origin(),
                new About.OfHole(entry.hole()),
                Subject.REPAIR_PLAN,
                String.format(
                        Locale.ROOT,
                        "%s was worked from a card of revision %d; the plan is revision %d.",
                        entry.hole(),
                        card,
                        now),
                card < now
                        ? "Names mean the same places on both. Depth stops and grams may differ: use the newer card."
                        : "The survey's repair plan is the older one: name the newer repair-plan.yaml under files.");
    }
}
