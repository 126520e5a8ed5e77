package corewright.damage;

import corewright.survey.Face;
import corewright.survey.Laminate;
import corewright.survey.Survey;
import corewright.survey.settings.Settings;
import corewright.survey.settings.Thresholds;
import java.util.List;

/** Everything the result of a bay depends on, but for what was held. */
record BayInput(
        Face face, Bay bay, Seen seen, List<Laminate> laminates, Thresholds thresholds, Settings.Numerics numerics) {
    /** Readings of one bay, one list a field. */
    record Seen(List<Observation> wet, List<Observation> loose, List<Observation> empty) {}

    static BayInput of(Survey survey, Face face, Bay bay, Seen seen) {
        Settings settings = survey.settings();
        return new BayInput(face, bay, seen, survey.laminates(), settings.thresholds(), settings.numerics());
    }
}
