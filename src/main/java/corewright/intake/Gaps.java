package corewright.intake;

import corewright.intake.text.Notes;
import corewright.intake.text.Numerals;
import corewright.survey.About;
import corewright.survey.Face;
import corewright.survey.Finding;
import corewright.survey.Finding.Severity;
import corewright.survey.Laminate;
import corewright.survey.Moisture;
import corewright.survey.Origin;
import corewright.survey.Reading;
import corewright.survey.Readings;
import corewright.survey.Subject;
import corewright.survey.Survey;
import corewright.survey.Tap;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/** What a survey cannot say because readings are missing, few or all alike: a finding for each, face by face. */
final class Gaps {
    private static final String NO_EXTENT = "How far it reaches and how sure that is can only be guessed from them.";

    private final Survey survey;
    private final Notes notes;

    private Gaps(Survey survey, Notes notes) {
        this.survey = survey;
        this.notes = notes;
    }

    static void note(Survey survey, Notes notes) {
        Gaps gaps = new Gaps(survey, notes);
        survey.faces().forEach(gaps::face);
        survey.laminates().stream()
                .filter(l -> l.coreForm() != Laminate.CoreForm.PLAIN)
                .forEach(gaps::cuts);
    }

    /** Water and mix go along the cuts of a core: no gap of readings, but one of what they can say. */
    private void cuts(Laminate laminate) {
        notes.doubt(
                new Origin(SurveyYaml.NAME, 0),
                new About.OfLaminate(laminate.name()),
                Subject.LAMINATE,
                "The core of lay-up " + laminate.name() + " is "
                        + laminate.coreForm().name().toLowerCase(Locale.ROOT)
                        + ": water and mix run along its cuts (common practice).",
                "A dry place between cuts says little of the next one, and a region may take more mix than its empty space.");
    }

    private void face(Face face) {
        Readings r = survey.readings().on(face.name());
        String on = on(face);
        if (r.moisture().isEmpty() && r.taps().isEmpty() && r.probes().isEmpty()) {
            String message = "No moisture reading, tap or probe was taken" + on + ".";
            note(Severity.HAZARD, face, Subject.NO_READING, message, "Nothing can be said of this face, good or bad.");
            return;
        }
        missing(face, r);
        few(face, r.moisture(), "moisture reading");
        few(face, r.taps(), "tap");
        alike(face, r);
    }

    private void missing(Face face, Readings r) {
        String on = on(face);
        if (r.moisture().isEmpty()) {
            String message = "No moisture reading was taken" + on + ".";
            String effect = "Where the core is wet cannot be known away from the probes and plugs.";
            note(Severity.DOUBT, face, Subject.NO_MOISTURE, message, effect);
        }
        if (r.taps().isEmpty()) {
            String effect =
                    "Where the skin is loose cannot be known away from the probes; wet core may hide a loose skin.";
            note(Severity.DOUBT, face, Subject.NO_TAPS, "No tap was made" + on + ".", effect);
        }
        if (r.probes().isEmpty()) {
            String effect = "Void depth and volume cannot be known, nor whether the core is dry: no repair by injection"
                    + " before pilot holes have shown it.";
            note(Severity.DOUBT, face, Subject.NO_PROBES, "No pilot hole was drilled" + on + ".", effect);
        }
    }

    private void few(Face face, List<? extends Reading> readings, String kind) {
        int n = readings.size();
        if (n > 0 && n < survey.settings().numerics().fewReadings()) {
            String message = String.format(
                    Locale.ROOT,
                    "Only %d %s%s %s taken%s.",
                    n,
                    kind,
                    n == 1 ? "" : "s",
                    n == 1 ? "was" : "were",
                    on(face));
            note(Severity.DOUBT, face, Subject.FEW_READINGS, message, NO_EXTENT);
        }
    }

    private void alike(Face face, Readings r) {
        String on = on(face);
        Map<String, List<Moisture>> byMeter = new LinkedHashMap<>();
        r.moisture().forEach(m -> byMeter.computeIfAbsent(m.meter(), k -> new ArrayList<>())
                .add(m));
        byMeter.forEach((meter, readings) -> {
            double value = readings.get(0).value();
            if (readings.size() > 1 && readings.stream().allMatch(m -> m.value() == value)) {
                String message = "All " + readings.size() + " readings of meter " + meter + on + " are "
                        + Numerals.plain(value) + ".";
                String effect = "An even deck reads so, and so does a meter that is stuck or off: nothing here shows"
                        + " where wet begins.";
                note(Severity.DOUBT, face, Subject.ALL_EQUAL, message, effect);
            }
        });
        List<Tap> taps = r.taps();
        if (taps.size() > 1 && alike(taps)) {
            Tap tap = taps.get(0);
            String what = tap.sound() != null
                    ? "sound \"" + tap.sound().name().toLowerCase(Locale.ROOT) + "\""
                    : "have the same contact time";
            String message = "All " + taps.size() + " taps" + on + " " + what + ".";
            note(Severity.HINT, face, Subject.ALL_EQUAL, message, "They show no edge between bonded and loose skin.");
        }
    }

    private static String on(Face face) {
        return " on " + face.name();
    }

    private static boolean alike(List<Tap> taps) {
        Tap first = taps.get(0);
        return taps.stream()
                .allMatch(t -> t.sound() == first.sound() && Objects.equals(t.contactUs(), first.contactUs()));
    }

    private void note(Severity severity, Face face, Subject subject, String message, String effect) {
        Origin origin = new Origin(SurveyYaml.NAME, 0);
        notes.finding(new Finding(severity, origin, new About.OfFace(face.name()), subject, message, effect));
    }
}
