package corewright.intake;

import corewright.intake.text.Notes;
import corewright.survey.About;
import corewright.survey.Finding;
import corewright.survey.Finding.Severity;
import corewright.survey.Origin;
import corewright.survey.Subject;

/** Takes down what cannot well be so. */
record Implausible(Notes notes) {
    void say(Severity severity, Origin origin, String message, String effect) {
        notes.finding(new Finding(severity, origin, new About.OfFile(origin), Subject.PLAUSIBILITY, message, effect));
    }
}
