package corewright.intake;

import corewright.survey.Face;
import corewright.survey.Feature.Opening;
import corewright.survey.Feeler;
import corewright.survey.Finding.Severity;
import corewright.survey.Moisture;
import corewright.survey.Origin;
import corewright.survey.Probe;
import corewright.survey.Reading;
import corewright.survey.Readings;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Location;

/** What is odd about single readings of a survey that can be used: findings, and depths clipped to the core. */
final class Oddities {
    /** A probe read this much beyond the core is a reading error no larger than a ruler's. */
    private static final double DEPTH_SLACK_MM = 1;

    private final Survey survey;
    private final Notes notes;

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
                List.of(r.moisture(), r.taps(), r.probes(), r.feelers(), r.plugs(), r.temperatures());
        kinds.forEach(this::noteRepeatedIds);
        survey.faces().forEach(face -> notePlaces(face, kinds));
        Readings clipped = new Readings(
                r.moisture(), r.taps(), probes(r.probes()), feelers(r.feelers()), r.plugs(), r.temperatures());
        Survey checked = new Survey(
                survey.heading(),
                survey.faces(),
                survey.meters(),
                survey.laminates(),
                survey.materials(),
                clipped,
                survey.settings(),
                survey.log(),
                survey.photos(),
                survey.judgements());
        Gaps.note(checked, notes);
        return checked;
    }

    private void noteRepeatedIds(List<? extends Reading> readings) {
        Map<String, Origin> first = new HashMap<>();
        for (Reading reading : readings) {
            Origin before = first.putIfAbsent(reading.id(), reading.origin());
            if (before != null) {
                String message = "Id " + reading.id() + " was used before, at " + before + ".";
                note(reading, reading.spot(), "repeated id", message, "Both readings are used.");
            }
        }
    }

    private void notePlaces(Face face, List<List<? extends Reading>> kinds) {
        IndexedPointInAreaLocator deck = new IndexedPointInAreaLocator(face.outline());
        List<Hole> holes = face.all(Opening.class).stream().map(Hole::of).toList();
        for (List<? extends Reading> kind : kinds) {
            for (Reading reading : kind) {
                if (reading.spot().face().equals(face.name())) {
                    notePlace(reading, reading.spot(), deck, holes);
                    if (reading instanceof Feeler feeler) {
                        notePlace(feeler, feeler.tip(), deck, holes);
                    }
                }
            }
        }
    }

    /** An opening with its locator. */
    private record Hole(String name, IndexedPointInAreaLocator area) {
        static Hole of(Opening opening) {
            return new Hole(opening.name(), new IndexedPointInAreaLocator(opening.geometry()));
        }
    }

    private void notePlace(Reading reading, Spot spot, IndexedPointInAreaLocator deck, List<Hole> holes) {
        String effect = "It is kept in the survey but says nothing of the deck.";
        if (deck.locate(spot.coordinate()) == Location.EXTERIOR) {
            String message = label(reading) + " at " + at(spot) + " lies outside the outline of " + spot.face() + ".";
            note(reading, spot, "outside", message, effect);
            return;
        }
        for (Hole hole : holes) {
            if (hole.area().locate(spot.coordinate()) == Location.INTERIOR) {
                String name = hole.name().isEmpty() ? "an opening" : "the opening \"" + hole.name() + "\"";
                note(
                        reading,
                        spot,
                        "in an opening",
                        label(reading) + " at " + at(spot) + " lies in " + name + ".",
                        effect);
                return;
            }
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
        double coreMm = survey.laminateAt(reading.spot()).coreMm();
        if (depthMm == null || depthMm <= coreMm + DEPTH_SLACK_MM) {
            return depthMm;
        }
        String message = label(reading) + " found " + Numerals.plain(depthMm) + " mm of void in a core of "
                + Numerals.plain(coreMm) + " mm.";
        note(
                reading,
                reading.spot(),
                "void depth",
                message,
                "The core's thickness is taken; the lay-up in survey.yaml or the depth may be wrong.");
        return coreMm;
    }

    private void note(Reading reading, Spot spot, String subject, String message, String effect) {
        notes.finding(Severity.DOUBT, reading.origin(), reading.id(), spot, subject, message, effect);
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
