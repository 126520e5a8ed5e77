package corewright.intake;

import corewright.intake.text.Notes;
import corewright.survey.Face;
import corewright.survey.Reading;
import corewright.survey.Survey;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The gate before any verdict: what in a survey cannot well be so, with the likely mistake and its remedy, each said once.
 * A hazard here means that no verdict on the deck is given until it is settled.
 */
final class Gate {
    private Gate() {}

    /**
     * Checks a survey.
     *
     * @param byFace readings of every kind, by face
     * @return the readings whose places were spoken of together, so that they need not be one by one
     */
    static Set<Reading> check(Survey survey, Map<String, List<Reading>> byFace, Notes notes) {
        Implausible gate = new Implausible(notes);
        SizeGate.check(survey, gate);
        MeterGate.check(survey, gate);
        Set<Reading> told = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Face face : survey.faces()) {
            told.addAll(PlaceGate.check(face, byFace.getOrDefault(face.name(), List.of()), gate));
        }
        return told;
    }
}
