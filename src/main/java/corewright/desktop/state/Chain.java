package corewright.desktop.state;

import corewright.assessment.Assessed;
import corewright.assessment.Earlier;
import corewright.assessment.Progress;
import corewright.survey.Finding;
import corewright.survey.Survey;
import java.util.List;

/** What concludes from a survey: the whole chain, or less of it in tests. */
public interface Chain {
    /** As {@link corewright.assessment.Assessor#assess}. */
    Assessed assess(Survey survey, List<Finding> findings, Earlier earlier, Progress progress);
}
