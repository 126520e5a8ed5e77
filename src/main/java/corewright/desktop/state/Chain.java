package corewright.desktop.state;

import corewright.assessment.Assessment;
import corewright.assessment.Progress;
import corewright.survey.Finding;
import corewright.survey.Survey;
import java.util.List;

/** What concludes from a survey: the whole chain, or less of it in tests. */
public interface Chain {
    /** As {@link corewright.assessment.Assessor#assess}. */
    Assessment assess(Survey survey, List<Finding> findings, Progress progress);
}
