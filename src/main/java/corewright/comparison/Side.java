package corewright.comparison;

import corewright.assessment.Assessment;
import corewright.assessment.Partial;
import corewright.damage.DamageMap;
import corewright.damage.Fitted;
import corewright.damage.Parameters;
import corewright.survey.Survey;
import java.util.List;

/**
 * One of two surveys.
 *
 * @param parameters fitted to it, from which its core is drawn
 */
public record Side(Assessment assessment, Parameters parameters) {
    /** A survey of which only the map was made: nothing is said of its plan and its panels. */
    public static Side mapped(Survey survey, Fitted fitted) {
        return new Side(Partial.mapped(survey, List.of(), fitted.map()), fitted.parameters());
    }

    public Survey survey() {
        return assessment.survey();
    }

    public DamageMap damage() {
        return assessment.damage();
    }
}
