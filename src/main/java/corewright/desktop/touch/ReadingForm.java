package corewright.desktop.touch;

import corewright.desktop.slip.Slip;
import corewright.desktop.state.Typed;
import corewright.desktop.state.Units;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.PlaceNames;
import corewright.survey.About;
import corewright.survey.Edit;
import corewright.survey.Feeler;
import corewright.survey.Finding;
import corewright.survey.Meter;
import corewright.survey.Moisture;
import corewright.survey.Plug;
import corewright.survey.Probe;
import corewright.survey.Reading;
import corewright.survey.ReadingOverride;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.Tap;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A reading that is touched.
 *
 * @param findings what the program has to say of it
 */
record ReadingForm(Reading reading, Units units, List<Finding> findings) implements Form {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    ReadingForm {
        Reading of = reading;
        findings = findings.stream()
                .filter(f -> f.about() instanceof About.OfReading about
                        && about.reading().equals(of.key()))
                .toList();
    }

    @Override
    public boolean in(Survey survey) {
        return ReadingParts.holds(survey, reading);
    }

    @Override
    public Spot spot() {
        return reading.spot();
    }

    @Override
    public String called(Survey survey) {
        return word(reading.key().kind()) + " " + reading.id();
    }

    /** What a person calls a reading of a kind. */
    static String word(Reading.Kind kind) {
        return switch (kind) {
            case MOISTURE -> "reading";
            case TAP -> "tap";
            case PROBE -> "pilot hole";
            case FEELER -> "feeler";
            case PLUG -> "plug";
            case TEMPERATURE -> "warmth";
        };
    }

    @Override
    public Slip slip(Survey survey) {
        PlaceNames names = PlaceNames.of(survey.face(spot().face()));
        String name = called(survey);
        List<Slip.Fact> facts = new ArrayList<>();
        facts.add(new Slip.Fact("taken", taken()));
        facts.add(new Slip.Fact("noted in", reading.origin().toString()));
        facts.add(new Slip.Fact("counts", counts(survey)));
        List<Slip.FindingLine> lines = findings.stream()
                .map(f -> new Slip.FindingLine(
                        f.severity(),
                        sentence(f.message()),
                        sentence(f.effect()),
                        f.about().spot(),
                        ""))
                .toList();
        return new Slip(
                Character.toUpperCase(name.charAt(0)) + name.substring(1),
                names.at(spot().xMm(), spot().yMm()),
                says(survey) + " At " + names.measured(spot().xMm(), spot().yMm(), units::place) + ".",
                "When, and how much it counts",
                null,
                facts,
                new Slip.Work(List.of(), "", lines.isEmpty() ? "" : "Findings, " + lines.size() + " of it", lines));
    }

    private static String sentence(String text) {
        return text.isEmpty()
                ? ""
                : Character.toUpperCase(text.charAt(0)) + text.substring(1) + (text.endsWith(".") ? "" : ".");
    }

    private String taken() {
        return reading instanceof Moisture m && m.taken() != null
                ? Figures.date(m.taken().toLocalDate()) + ", " + CLOCK.format(m.taken())
                : "no time noted";
    }

    private String counts(Survey survey) {
        return ReadingParts.judgement(survey, reading)
                .map(o -> (o.trust() == ReadingOverride.Trust.TRUSTED ? "trusted by hand" : "set aside by hand")
                        + (o.reason().isEmpty() ? "" : ": " + o.reason()))
                .orElseGet(() -> findings.stream()
                        .map(f -> f.subject().standing())
                        .max(java.util.Comparator.naturalOrder())
                        .map(s -> switch (s) {
                            case TAKEN -> "in full";
                            case DOUBTED -> "doubted: see the finding";
                            case SET_ASIDE -> "set aside: see the finding";
                        })
                        .orElse("in full"));
    }

    /** The reading as a sentence. */
    private String says(Survey survey) {
        if (reading instanceof Moisture m) {
            return moisture(survey.meter(m.meter()), m);
        }
        if (reading instanceof Tap t) {
            return (t.sound() == null ? "Tapped" : "Sounds " + t.sound().name().toLowerCase(Locale.ROOT))
                    + (t.contactUs() == null ? "." : ", contact " + Figures.atMost(t.contactUs(), 0) + " \u00b5s.");
        }
        if (reading instanceof Probe p) {
            return p.voidDepthMm() > 0
                    ? "The drill went through " + units.depth(p.voidDepthMm()) + " of empty space under the skin."
                    : "The drill met core at once.";
        }
        if (reading instanceof Feeler f) {
            double longMm = f.spot().coordinate().distance(f.tip().coordinate());
            return "A rod went in " + units.length(longMm) + " under the skin.";
        }
        Plug plug = (Plug) reading;
        return "A plug of the core held " + Figures.atMost(plug.moisturePercent(), 1) + " % water of its dry mass.";
    }

    private static String moisture(Meter meter, Moisture m) {
        String scale = meter.kind() == Meter.Kind.PIN
                ? " on the scale of the pin meter"
                : " on the relative scale of 0 to " + Figures.atMost(meter.fullScale(), 0);
        String bounds = meter.dry() == null
                ? ""
                : "; this core dry reads " + Figures.atMost(meter.dry(), 1)
                        + (meter.wet() == null ? "" : ", wet from " + Figures.atMost(meter.wet(), 1));
        return (m.offScale() ? "At or above " : "") + Figures.atMost(m.value(), 1) + scale + bounds + ".";
    }

    @Override
    public List<FormField> fields(Survey survey) {
        Map<ReadingValue, String> texts = ReadingTexts.of(reading, units);
        List<String> meters = survey.meters().stream().map(Meter::name).toList();
        return ReadingValue.of(reading.key().kind()).stream()
                .map(v -> new FormField(
                        v.id(),
                        ReadingTexts.label(v, units),
                        texts.getOrDefault(v, ""),
                        ReadingTexts.options(v, meters)))
                .toList();
    }

    @Override
    public @Nullable Changed changed(Survey survey, String field, String text) throws Typed {
        Map<ReadingValue, String> texts = new EnumMap<>(ReadingTexts.of(reading, units));
        texts.put(ReadingValue.of(field), text.strip());
        Reading now = new ReadingMaker(survey, units, spot().face(), texts, reading)
                .make(reading.key().kind(), reading.origin(), reading.id(), null);
        return now.equals(reading)
                ? null
                : new Changed(new ReadingForm(now, units, findings), ReadingParts.replace(survey, reading, now));
    }

    @Override
    public Edit removed(Survey survey) {
        return ReadingParts.remove(survey, reading);
    }
}
