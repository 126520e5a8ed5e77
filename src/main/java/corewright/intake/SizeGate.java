package corewright.intake;

import corewright.intake.text.Numerals;
import corewright.survey.Face;
import corewright.survey.Finding.Severity;
import corewright.survey.Laminate;
import corewright.survey.Moisture;
import corewright.survey.Origin;
import corewright.survey.Probe;
import corewright.survey.Reading;
import corewright.survey.Readings;
import corewright.survey.Survey;
import corewright.survey.Tap;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.locationtech.jts.geom.Envelope;

/** Sizes, thicknesses and dates that no boat and no survey has. The bounds are common practice, drawn wide. */
final class SizeGate {
    private static final Origin SURVEY = new Origin(SurveyYaml.NAME, 0);
    private static final String UNITS = "Check units in " + SurveyYaml.NAME + ". ";

    /** No one surveys a face whose longer side is smaller than this. */
    private static final double LEAST_FACE_MM = 200;

    private static final double LONG_MM = 60_000;

    private static final double LONGEST_MM = 150_000;
    private static final double WIDEST_MM = 45_000;

    /** Wider than nearly all boats, and read at steps that nobody takes who reads as often: another unit, more likely. */
    private static final double WIDE_MM = 15_000;

    private static final double SPARSE_MM = 1000;

    /** On a small face, readings nearer than a meter's foot is wide tell of a plan in another unit. */
    private static final double SMALL_FACE_MM = 600;

    private static final double FOOT_MM = 20;
    private static final int ENOUGH = 20;

    /** A skin: from one light ply to the build at a keel. A core: from a veneer to the largest yachts. */
    private static final double LEAST_SKIN_MM = 0.4;

    private static final double MOST_SKIN_MM = 25;
    private static final double LEAST_CORE_MM = 3;
    private static final double MOST_CORE_MM = 120;

    /** Boats were first built with a core between glass skins in the nineteen-fifties. */
    private static final LocalDate FIRST = LocalDate.of(1950, 1, 1);

    private static final LocalDate LAST = LocalDate.of(2100, 1, 1);
    private static final int YEARS_APART = 2;
    private static final int DAYS_ASHORE = 3650;

    private final Survey survey;
    private final Implausible gate;

    private SizeGate(Survey survey, Implausible gate) {
        this.survey = survey;
        this.gate = gate;
    }

    static void check(Survey survey, Implausible gate) {
        SizeGate sizes = new SizeGate(survey, gate);
        survey.faces().forEach(sizes::face);
        survey.laminates().forEach(sizes::laminate);
        sizes.dates();
        sizes.doubles();
    }

    private void face(Face face) {
        Envelope box = face.outline().getEnvelopeInternal();
        double longer = Math.max(box.getWidth(), box.getHeight());
        double shorter = Math.min(box.getWidth(), box.getHeight());
        Readings r = survey.readings().on(face.name());
        int read = Math.max(r.moisture().size(), r.taps().size());
        boolean close =
                longer < SMALL_FACE_MM && read >= ENOUGH && face.outline().getArea() < read * FOOT_MM * FOOT_MM;
        if (longer < LEAST_FACE_MM || close) {
            String metres = longer < 30 ? "metres or feet" : "centimetres or inches";
            face(Severity.HAZARD, face, box, "is the plan in " + metres + "?");
            return;
        }
        boolean sparse = read >= ENOUGH && shorter > WIDE_MM && face.outline().getArea() > read * SPARSE_MM * SPARSE_MM;
        if (longer > LONG_MM || sparse) {
            Severity severity = longer > LONGEST_MM || shorter > WIDEST_MM || sparse ? Severity.HAZARD : Severity.DOUBT;
            face(severity, face, box, "is the plan in millimetres, and the survey said to be in another unit?");
        }
    }

    private void face(Severity severity, Face face, Envelope box, String question) {
        String size = Numerals.plain(box.getWidth()) + " x " + Numerals.plain(box.getHeight());
        gate.say(
                severity,
                SURVEY,
                "The outline of " + face.name() + " measures " + size + " mm: " + question,
                UNITS + "Every area and volume rests on it.");
    }

    private void laminate(Laminate l) {
        thickness(l, "an outer skin", l.outerSkinMm(), LEAST_SKIN_MM, MOST_SKIN_MM);
        thickness(l, "an inner skin", l.innerSkinMm(), LEAST_SKIN_MM, MOST_SKIN_MM);
        thickness(l, "a core", l.coreMm(), LEAST_CORE_MM, MOST_CORE_MM);
    }

    private void thickness(Laminate l, String what, double mm, double least, double most) {
        if (mm < least || mm > most) {
            String likely = mm > most ? "is it " + Numerals.plain(mm / 10) + " mm?" : "is it in inches or centimetres?";
            gate.say(
                    Severity.HAZARD,
                    SURVEY,
                    "Lay-up " + l.name() + " has " + what + " of " + Numerals.plain(mm) + " mm: " + likely,
                    "Depth stops, volumes and stiffness rest on it. Measure it at an opening's edge or a pilot hole.");
        }
    }

    private void dates() {
        LocalDate day = survey.heading().surveyed();
        if (day.isBefore(FIRST) || day.isAfter(LAST)) {
            String effect =
                    "Drying and the age of the readings cannot be told. Mend surveyed in " + SurveyYaml.NAME + ".";
            gate.say(Severity.DOUBT, SURVEY, "The survey is dated " + day + ".", effect);
        }
        Map<String, List<LocalDate>> odd = new LinkedHashMap<>();
        for (Moisture m : survey.readings().moisture()) {
            LocalDateTime taken = m.taken();
            if (taken != null && Math.abs(taken.getYear() - day.getYear()) > YEARS_APART) {
                odd.computeIfAbsent(m.origin().file(), f -> new ArrayList<>()).add(taken.toLocalDate());
            }
        }
        odd.forEach((file, days) -> gate.say(
                Severity.DOUBT,
                new Origin(file, 0),
                days.size() + " readings of " + file + " are dated years away from the survey of " + day
                        + ", the first " + days.get(0) + ": is a year mistyped?",
                "Later readings replace earlier ones at a place, so a wrong year may hide the right reading."));
        Integer ashore = survey.heading().daysAshore();
        if (ashore != null && ashore > DAYS_ASHORE) {
            String effect = "How wet the boat still is from the water is judged by it.";
            gate.say(Severity.DOUBT, SURVEY, "She is said to stand ashore for " + ashore + " days.", effect);
        }
    }

    /** The same readings twice, as when a file is named two times. */
    private void doubles() {
        Readings r = survey.readings();
        for (List<? extends Reading> kind : List.of(r.moisture(), r.taps(), r.probes())) {
            Map<List<Object>, Long> same = new LinkedHashMap<>();
            for (Reading reading : kind) {
                same.merge(List.of(reading.id(), reading.spot(), said(reading)), 1L, Long::sum);
            }
            long twice = same.values().stream().filter(n -> n > 1).count();
            if (twice >= 5 && 5 * twice >= same.size()) {
                String files = String.join(
                        ", ",
                        kind.stream().map(x -> x.origin().file()).distinct().toList());
                gate.say(
                        Severity.DOUBT,
                        new Origin(kind.get(0).origin().file(), 0),
                        twice + " readings of " + files
                                + " stand there twice, with the same id, place and value: was a file or a block entered"
                                + " two times?",
                        "Taken as repeats they make the map surer than it is. Take one of the two out.");
            }
        }
    }

    private static Object said(Reading reading) {
        return reading instanceof Moisture m
                ? m.value() + " " + m.meter() + " " + m.side() + " " + m.taken()
                : reading instanceof Tap t
                        ? Objects.toString(t.sound()) + t.contactUs()
                        : reading instanceof Probe p ? p.voidDepthMm() + " " + p.coreState() : "";
    }
}
