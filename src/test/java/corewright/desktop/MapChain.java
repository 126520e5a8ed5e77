package corewright.desktop;

import corewright.Assessments;
import corewright.assessment.Assessed;
import corewright.assessment.Assessment;
import corewright.assessment.Earlier;
import corewright.assessment.Partial;
import corewright.assessment.Progress;
import corewright.damage.Damage;
import corewright.damage.Fitted;
import corewright.survey.Finding;
import corewright.survey.Survey;
import java.util.List;

/** The chain as far as its map: what a window shows of panels and plans takes longer than a test of the window may. */
public final class MapChain {
    private MapChain() {}

    public static Assessed assess(Survey survey, List<Finding> findings, Earlier earlier, Progress progress) {
        progress.begin("damage", 0.02);
        Fitted fitted = Damage.fit(survey, earlier.memory());
        Assessment map = Partial.mapped(survey, findings, fitted.map());
        Earlier next = earlier.with(fitted.parameters());
        progress.mapped(new Assessed(map, next));
        return new Assessed(Assessments.fresh(map), next);
    }
}
