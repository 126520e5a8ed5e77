package corewright.repair.work;

import corewright.survey.FrozenPlan.PlannedHole;
import corewright.survey.NamedLog;
import corewright.survey.Survey;
import corewright.survey.WorkEntry;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Which holes of the frozen plan are drilled, by the work log. */
public final class Begun {
    private Begun() {}

    /** Names of the holes that the log names: filled, tried, or seen with mix in them. */
    public static Set<String> holes(Survey survey) {
        List<String> names =
                survey.repairPlan().holes().stream().map(PlannedHole::name).toList();
        Set<String> begun = new LinkedHashSet<>();
        for (WorkEntry entry : NamedLog.of(survey.log(), names).entries()) {
            begun.add(entry.hole());
            if (entry.oozeAt() != null && names.contains(entry.oozeAt())) {
                begun.add(entry.oozeAt());
            }
            if (entry.ventShown() != null && names.contains(entry.ventShown())) {
                begun.add(entry.ventShown());
            }
        }
        return begun;
    }
}
