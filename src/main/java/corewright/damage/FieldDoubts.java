package corewright.damage;

import corewright.field.LatentField;
import corewright.survey.About;
import corewright.survey.CoreState;
import corewright.survey.Face;
import corewright.survey.Finding;
import corewright.survey.Finding.Severity;
import corewright.survey.Moisture;
import corewright.survey.Origin;
import corewright.survey.Probe;
import corewright.survey.Reading;
import corewright.survey.Subject;
import corewright.survey.Tap;
import corewright.survey.settings.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** Findings that only the fitted fields can tell: readings against their neighbours, and what was never read. */
final class FieldDoubts {
    /** A reading this many standard deviations from what its neighbours say is named; two in a thousand by chance. */
    private static final double SURPRISE = 3.1;

    /** Two holes this near are at one place: the width of a hand. Common practice. */
    private static final double ONE_PLACE_MM = 50;

    /** Depths by drill bit scatter by half a millimetre; six times that does not happen by chance. */
    private static final double DEPTHS_DIFFER_MM = 3;

    private final Face face;
    private final int few;
    private final Judged judged;
    private final List<Finding> findings = new ArrayList<>();

    private FieldDoubts(Face face, Settings settings, Judged judged) {
        this.judged = judged;
        this.face = face;
        few = settings.numerics().fewReadings();
    }

    static List<Finding> of(Face face, Settings settings, List<BayFields> bays, Judged judged) {
        FieldDoubts doubts = new FieldDoubts(face, settings, judged);
        for (BayFields bay : bays) {
            doubts.contradictions(bay.wetSeen, bay.wet, FieldDoubts::water);
            doubts.contradictions(bay.looseSeen, bay.loose, FieldDoubts::bond);
            doubts.disagreeing(bay.voidSeen);
            doubts.overSpace(bay);
            doubts.missing(bay);
        }
        return doubts.findings;
    }

    private void contradictions(List<Observation> seen, LatentField field, Function<Reading, String> what) {
        for (int i = 0; i < seen.size(); i++) {
            Reading reading = seen.get(i).reading();
            if (judged.trusted(reading)) {
                continue;
            }
            double doubt = field.doubt(i);
            double surprise = Math.abs(field.surprise(i));
            if (doubt > 0.5) {
                add(
                        reading,
                        String.format(
                                Locale.ROOT,
                                "%s contradicts its neighbours: %.0f %% likely a mistake",
                                what.apply(reading),
                                100 * doubt),
                        "kept, but the map follows its neighbours; read it again");
            } else if (surprise > SURPRISE) {
                add(
                        reading,
                        String.format(
                                Locale.ROOT,
                                "%s lies %.1f standard deviations from what its neighbours say",
                                what.apply(reading),
                                surprise),
                        "kept in full; read it again");
            }
        }
    }

    /** Pilot holes at one place that found different things: one of them is a mistake of hand or paper. */
    private void disagreeing(List<Observation> seen) {
        List<Probe> probes = seen.stream()
                .map(Observation::reading)
                .filter(r -> r instanceof Probe && !judged.trusted(r))
                .map(Probe.class::cast)
                .distinct()
                .toList();
        for (int i = 0; i < probes.size(); i++) {
            for (int k = i + 1; k < probes.size(); k++) {
                Probe a = probes.get(i);
                Probe b = probes.get(k);
                double apart = a.spot().coordinate().distance(b.spot().coordinate());
                boolean depth = Math.abs(a.voidDepthMm() - b.voidDepthMm()) > DEPTHS_DIFFER_MM;
                boolean water = a.water() != null && b.water() != null && a.water() != b.water();
                if (apart <= ONE_PLACE_MM && (depth || water)) {
                    String message = String.format(
                            Locale.ROOT,
                            "the pilot holes %s and %s, %.0f mm apart, found %s",
                            a.id(),
                            b.id(),
                            apart,
                            depth
                                    ? MeterScale.text(a.voidDepthMm()) + " and " + MeterScale.text(b.voidDepthMm())
                                            + " mm of empty space"
                                    : "core in different states");
                    add(
                            b,
                            message,
                            "both are kept and the map lies between; look again before anything rests on either");
                }
            }
        }
    }

    /** Meter readings through an air gap: low ones are no proof of dry core. */
    private void overSpace(BayFields bay) {
        List<Reading> over = bay.wetSeen.stream()
                .filter(o -> o.reading() instanceof Moisture)
                .filter(o -> bay.voidAt(o.spot()) > 0.5)
                .map(Observation::reading)
                .toList();
        if (!over.isEmpty()) {
            Reading first = over.get(0);
            findings.add(new Finding(
                    Severity.DOUBT,
                    new Origin(first.origin().file(), 0),
                    new About.OfBay(bay.bay.name(), face.name()),
                    Subject.METER,
                    over.size() + " moisture reading" + (over.size() == 1 ? "" : "s") + " in bay " + bay.bay.name()
                            + " stand over empty space, where a meter reads little of the core below (common practice)",
                    "kept for the map, but no proof of dry core: only a pilot hole or a plug is"));
        }
    }

    /** What a reading says of water. */
    private static String water(Reading reading) {
        if (reading instanceof Moisture m) {
            return "the moisture reading " + MeterScale.text(m.value());
        }
        if (reading instanceof Probe p && p.coreMoisture() == null && p.coreState() == CoreState.ROTTED) {
            return "the rotted core that the pilot hole found, taken for wet as its water was not noted,";
        }
        return reading instanceof Probe p && p.water() != null
                ? "the " + p.water().name().toLowerCase(Locale.ROOT) + " core that the pilot hole found"
                : "the core sample";
    }

    /** What a reading says of the skin's hold. */
    private static String bond(Reading reading) {
        if (reading instanceof Tap tap) {
            return tap.sound() == null
                    ? "the contact time"
                    : "the tap called " + tap.sound().name().toLowerCase(Locale.ROOT);
        }
        return "the gap that the " + (reading instanceof Probe ? "pilot hole" : "rod") + " found";
    }

    private void add(Reading r, String message, String effect) {
        findings.add(new Finding(Severity.DOUBT, r.origin(), About.of(r), Subject.CONTRADICTION, message, effect));
    }

    private void missing(BayFields bay) {
        if (bay.wetSeen.isEmpty()) {
            say(
                    bay,
                    Subject.NO_MOISTURE,
                    "no moisture reading",
                    String.format(
                            Locale.ROOT,
                            "water is unknown: a probability of %.2f is assumed everywhere",
                            Priors.WET.above(0)));
        } else if (bay.wetSeen.size() < few) {
            say(
                    bay,
                    Subject.FEW_READINGS,
                    bay.wetSeen.size() + " readings of water",
                    held(Priors.WET.range().mode()));
        }
        boolean tapped = bay.looseSeen.stream().anyMatch(o -> o.reading() instanceof Tap);
        if (!tapped) {
            say(
                    bay,
                    Subject.NO_TAPS,
                    "no tap",
                    String.format(
                            Locale.ROOT,
                            "looseness is unknown beyond the pilot holes: a probability of %.2f is assumed",
                            Priors.LOOSE.above(0)));
        } else if (bay.looseSeen.size() < few) {
            say(
                    bay,
                    Subject.FEW_READINGS,
                    bay.looseSeen.size() + " taps",
                    held(Priors.LOOSE.range().mode()));
        }
        if (!VoidEvidence.measured(bay.voidSeen)) {
            say(
                    bay,
                    Subject.NO_PROBES,
                    "no pilot hole or feeler",
                    "void depth is unknown: no void is claimed and the volume is a prior range; a pilot hole at a hollow"
                            + " tap comes first");
        }
        if (!bay.wet.settled() || !bay.loose.settled() || !bay.empty.settled()) {
            say(bay, Subject.NUMERICS, "an estimate had not settled", "its probabilities are rougher than elsewhere");
        }
    }

    private static String held(double rangeMm) {
        return String.format(
                Locale.ROOT, "too few to tell how far one speaks for its surroundings: %.0f mm is assumed", rangeMm);
    }

    private void say(BayFields bay, Subject subject, String message, String effect) {
        findings.add(new Finding(
                Severity.DOUBT,
                new Origin("survey.yaml", 0),
                new About.OfBay(bay.bay.name(), face.name()),
                subject,
                message + " in bay " + bay.bay.name() + " of " + face.name(),
                effect));
    }
}
