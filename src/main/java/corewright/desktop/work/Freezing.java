package corewright.desktop.work;

import corewright.survey.Edit;
import corewright.survey.FrozenPlan;
import corewright.survey.Part;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.List;

/** Puts an issued plan into a survey in place of the one before, as one edit. */
final class Freezing {
    private Freezing() {}

    static Edit put(Survey survey, FrozenPlan plan) {
        List<Edit> edits = new ArrayList<>();
        exchange(survey, Part.ISSUE, plan.issue(), edits);
        exchange(survey, Part.PLANNED_REGIONS, plan.regions(), edits);
        exchange(survey, Part.PLANNED_HOLES, plan.holes(), edits);
        exchange(survey, Part.PLANNED_CUTS, plan.cuts(), edits);
        exchange(survey, Part.PLANNED_CUPS, plan.cups(), edits);
        exchange(survey, Part.PURCHASES, plan.buying(), edits);
        return new Edit.Together(edits);
    }

    private static <T> void exchange(Survey survey, Part<T> part, List<T> list, List<Edit> edits) {
        for (int i = part.of(survey).size() - 1; i >= 0; i--) {
            edits.add(new Edit.Remove<>(part, i));
        }
        for (int i = 0; i < list.size(); i++) {
            edits.add(new Edit.Insert<>(part, i, list.get(i)));
        }
    }
}
