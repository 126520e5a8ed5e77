package corewright.intake;

import corewright.intake.text.Notes;
import corewright.intake.text.Numerals;
import corewright.overlay.AreaIndex;
import corewright.survey.About;
import corewright.survey.Face;
import corewright.survey.Feature.LaminateArea;
import corewright.survey.Feature.Opening;
import corewright.survey.Feeler;
import corewright.survey.Moisture;
import corewright.survey.Origin;
import corewright.survey.Probe;
import corewright.survey.Reading;
import corewright.survey.Readings;
import corewright.survey.Spot;
import corewright.survey.Subject;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Location;

/** What is odd about single readings of a survey that can be used: findings, and depths clipped to the core. */
final class Oddities {
    /** A probe read this much beyond the core is a reading error no larger than a ruler's. */
    private static final double DEPTH_SLACK_MM = 1;

    /** More of a kind than this are counted, not listed. */
    static final int ONE_BY_ONE = 10;

    /** Of readings off the deck each is shown at its place, up to so many of a face. */
    private static final int PLACES_ONE_BY_ONE = 200;

    private final Survey survey;
    private final Notes notes;
    private final Map<String, AreaIndex<LaminateArea>> laminates = new HashMap<>();

    private Set<Reading> told = Set.of();

    private Oddities(Survey survey, Notes notes) {
        this.survey = survey;
        this.notes = notes;
    }

    /** The survey with impossible void depths clipped; everything odd goes to {@code notes}. */
    static Survey note(Survey survey, Notes notes) {
        return new Oddities(survey, notes).checked();
    }

    private Survey checked() {
        Readings r = survey.readings();
        List<List<? extends Reading>> kinds =
                List.of(r.moisture(), r.taps(), r.probes(), r.feelers(), r.plugs(), r.temperatures(), r.curedTaps());
        Map<String, List<Reading>> byFace = new HashMap<>();
        kinds.forEach(kind ->
                kind.forEach(reading -> byFace.computeIfAbsent(reading.spot().face(), f -> new ArrayList<>())
                        .add(reading)));
        told = Gate.check(survey, byFace, notes);
        kinds.forEach(this::noteRepeatedIds);
        survey.faces().forEach(face -> notePlaces(face, byFace.getOrDefault(face.name(), List.of())));
        Readings clipped = new Readings(
                r.moisture(),
                r.taps(),
                probes(r.probes()),
                feelers(r.feelers()),
                r.plugs(),
                r.temperatures(),
                r.curedTaps());
        Survey checked = survey.with(clipped);
        Gaps.note(checked, notes);
        Letters.note(checked, notes);
        Hands.note(checked, notes);
        LogNotes.note(checked, notes);
        return checked;
    }

    private void noteRepeatedIds(List<? extends Reading> readings) {
        Map<String, Origin> first = new HashMap<>();
        Map<Reading, Origin> again = new LinkedHashMap<>();
        for (Reading reading : readings) {
            Origin before = first.putIfAbsent(reading.id(), reading.origin());
            if (before != null) {
                again.put(reading, before);
            }
        }
        for (Map.Entry<Reading, Origin> twice : again.entrySet()) {
            Reading reading = twice.getKey();
            if (again.size() > ONE_BY_ONE) {
                String file = reading.origin().file();
                String message = again.size() + " ids of " + file + " were used before, the first " + reading.id()
                        + ", at " + twice.getValue() + ".";
                Origin all = new Origin(file, 0);
                notes.doubt(all, new About.OfFile(all), Subject.REPEATED_ID, message, "All readings are used.");
                return;
            }
            String message = "Id " + reading.id() + " was used before, at " + twice.getValue() + ".";
            note(reading, reading.spot(), Subject.REPEATED_ID, message, "Both readings are used.");
        }
    }

    /** A place where a reading says nothing of the deck. */
    private record Off(Reading reading, Spot spot, Subject subject, String where) {}

    private void notePlaces(Face face, List<Reading> readings) {
        IndexedPointInAreaLocator deck = new IndexedPointInAreaLocator(face.outline());
        AreaIndex<Opening> openings = new AreaIndex<>(face.all(Opening.class), Opening::geometry);
        Map<Subject, List<Off>> off = new EnumMap<>(Subject.class);
        for (Reading reading : readings) {
            if (!told.contains(reading)) {
                List<Spot> spots = reading instanceof Feeler feeler
                        ? List.of(feeler.spot(), feeler.tip())
                        : List.of(reading.spot());
                spots.forEach(spot -> off(reading, spot, deck, openings)
                        .ifPresent(o -> off.computeIfAbsent(o.subject(), s -> new ArrayList<>())
                                .add(o)));
            }
        }
        off.values().forEach(this::notePlaces);
    }

    private static Optional<Off> off(
            Reading reading, Spot spot, IndexedPointInAreaLocator deck, AreaIndex<Opening> openings) {
        if (deck.locate(spot.coordinate()) == Location.EXTERIOR) {
            return Optional.of(new Off(reading, spot, Subject.OUTSIDE, "outside the outline of " + spot.face()));
        }
        return openings.lastAt(spot.coordinate(), false)
                .map(o -> new Off(
                        reading,
                        spot,
                        Subject.IN_AN_OPENING,
                        o.name().isEmpty() ? "in an opening" : "in the opening \"" + o.name() + "\""));
    }

    private void notePlaces(List<Off> off) {
        boolean many = off.size() > PLACES_ONE_BY_ONE;
        for (Off each : many ? off.subList(0, 1) : off) {
            String message = label(each.reading()) + " at " + at(each.spot()) + " lies " + each.where() + ".";
            note(
                    each.reading(),
                    each.spot(),
                    each.subject(),
                    many ? off.size() + " readings lie off the deck like this one. " + message : message,
                    (many ? "They are" : "It is") + " kept in the survey but " + (many ? "say" : "says")
                            + " nothing of the deck.");
        }
    }

    private List<Probe> probes(List<Probe> probes) {
        List<Probe> clipped = new ArrayList<>();
        for (Probe p : probes) {
            Double depth = clipped(p, p.voidDepthMm());
            clipped.add(new Probe(
                    p.origin(), p.id(), p.spot(), depth == null ? 0 : depth, p.coreState(), p.coreMoisture()));
        }
        return clipped;
    }

    private List<Feeler> feelers(List<Feeler> feelers) {
        List<Feeler> clipped = new ArrayList<>();
        for (Feeler f : feelers) {
            clipped.add(new Feeler(f.origin(), f.id(), f.spot(), f.tip(), f.end(), clipped(f, f.voidDepthMm())));
        }
        return clipped;
    }

    private @Nullable Double clipped(Reading reading, @Nullable Double depthMm) {
        if (depthMm == null) {
            return null;
        }
        double coreMm = coreMm(reading.spot());
        if (depthMm <= coreMm + DEPTH_SLACK_MM) {
            return depthMm;
        }
        String message = label(reading) + " found " + Numerals.plain(depthMm) + " mm of void in a core of "
                + Numerals.plain(coreMm) + " mm.";
        note(
                reading,
                reading.spot(),
                Subject.VOID_DEPTH,
                message,
                "The core's thickness is taken; the laminate in survey.yaml or the depth may be wrong.");
        return coreMm;
    }

    /** As {@link Survey#laminateAt}, for many places. */
    private double coreMm(Spot spot) {
        Face face = survey.face(spot.face());
        LaminateArea area = laminates
                .computeIfAbsent(
                        face.name(), f -> new AreaIndex<>(face.all(LaminateArea.class), LaminateArea::geometry))
                .lastAt(spot.coordinate(), true)
                .orElse(null);
        return survey.laminate(area == null ? face.laminate() : area.laminate()).coreMm();
    }

    private void note(Reading reading, Spot spot, Subject subject, String message, String effect) {
        notes.doubt(reading.origin(), new About.OfReading(reading.key(), spot), subject, message, effect);
    }

    private static String label(Reading reading) {
        String kind = reading instanceof Moisture
                ? "Moisture reading"
                : reading.getClass().getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", " ");
        return kind.substring(0, 1) + kind.substring(1).toLowerCase(Locale.ROOT) + " " + reading.id();
    }

    private static String at(Spot spot) {
        return "(" + Numerals.plain(spot.xMm()) + ", " + Numerals.plain(spot.yMm()) + ") mm";
    }
}
