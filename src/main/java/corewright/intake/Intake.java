package corewright.intake;

import corewright.survey.Finding;
import corewright.survey.Survey;
import java.util.List;

/** A survey as read, with what is odd about it. */
public record Intake(Survey survey, List<Finding> findings) {
    public Intake {
        findings = List.copyOf(findings);
    }
}
