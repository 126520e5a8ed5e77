package corewright.desktop;

import corewright.assessment.Assessment;
import corewright.assessment.Assessor;
import corewright.assessment.Progress;
import corewright.damage.Damage;
import corewright.damage.Fitted;
import corewright.damage.Parameters;
import corewright.survey.Finding;
import corewright.survey.Survey;
import java.util.List;

/** The chain as far as its map: what a window shows of panels and plans takes longer than a test of the window may. */
public final class MapChain {
    private MapChain() {}

    public static Assessment assess(Survey survey, List<Finding> findings, Progress progress) {
        progress.begin("damage", 0.02);
        Fitted fitted = Damage.fit(survey, Parameters.NONE);
        progress.mapped(fitted);
        return Assessor.mapped(survey, findings, fitted.map());
    }
}
