package corewright.desktop.touch;

import corewright.desktop.state.Typed;
import corewright.desktop.state.TypedPlace;
import corewright.desktop.state.Units;
import corewright.survey.CoreMoisture;
import corewright.survey.CoreState;
import corewright.survey.Face;
import corewright.survey.Feeler;
import corewright.survey.FeelerEnd;
import corewright.survey.Meter;
import corewright.survey.Moisture;
import corewright.survey.Origin;
import corewright.survey.Plug;
import corewright.survey.Probe;
import corewright.survey.Reading;
import corewright.survey.Side;
import corewright.survey.Sound;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.Tap;
import java.time.LocalDateTime;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A reading of what was typed; what was left as shown keeps its value to the last digit. */
final class ReadingMaker {
    /** As deep as any core; deeper is a slip of the key. */
    private static final double DEEPEST_MM = 300;

    private static final double WETTEST_PERCENT = 1000;
    private static final double LONGEST_CONTACT_US = 100_000;
    private static final double HOTTEST_C = 90;

    private final Survey survey;
    private final Units units;
    private final String face;
    private final Map<ReadingValue, String> texts;
    private final @Nullable Reading before;
    private final Map<ReadingValue, String> old;

    /** @param before what it was, null for a new one */
    ReadingMaker(Survey survey, Units units, String face, Map<ReadingValue, String> texts, @Nullable Reading before) {
        this.survey = survey;
        this.units = units;
        this.face = face;
        this.texts = Map.copyOf(texts);
        this.before = before;
        this.old = before == null ? Map.of() : ReadingTexts.of(before, units);
    }

    /** @param taken when, for a new moisture reading */
    Reading make(Reading.Kind kind, Origin origin, String id, @Nullable LocalDateTime taken) throws Typed {
        Spot spot = before != null && same(ReadingValue.PLACE) ? before.spot() : place(ReadingValue.PLACE);
        return switch (kind) {
            case MOISTURE -> moisture(origin, id, spot, taken);
            case TAP -> tap(origin, id, spot);
            case PROBE -> probe(origin, id, spot);
            case FEELER -> feeler(origin, id, spot);
            case PLUG -> new Plug(origin, id, spot, percent());
            case TEMPERATURE -> throw new IllegalArgumentException("warmth is noted at the fill");
        };
    }

    private boolean same(ReadingValue value) {
        return text(value).equals(old.get(value));
    }

    private String text(ReadingValue value) {
        return texts.getOrDefault(value, "").strip();
    }

    private Spot place(ReadingValue value) throws Typed {
        Face on = survey.face(face);
        return TypedPlace.of(on, text(value), units);
    }

    private Moisture moisture(Origin origin, String id, Spot spot, @Nullable LocalDateTime taken) throws Typed {
        Moisture was = before instanceof Moisture m ? m : null;
        Meter meter = survey.meters().stream()
                .filter(m -> m.name().equals(text(ReadingValue.METER)))
                .findFirst()
                .orElseThrow(() -> new Typed("There is no meter \"" + text(ReadingValue.METER) + "\"."));
        String typed = text(ReadingValue.VALUE);
        boolean above = typed.startsWith(">");
        double full = meter.fullScale();
        double value = was != null && same(ReadingValue.VALUE)
                ? was.value()
                : above && typed.length() == 1
                        ? full
                        : Typed.number(
                                "The reading",
                                above ? typed.substring(1) : typed,
                                0,
                                1e6,
                                "a number on the meter's scale, 0 to " + Math.round(full) + ", or >"
                                        + Math.round(full));
        Double temperature = was != null && same(ReadingValue.TEMPERATURE) ? was.temperatureC() : warmth();
        return new Moisture(
                origin,
                id,
                spot,
                Math.min(value, full),
                above || value > full,
                meter.name(),
                temperature,
                was == null ? taken : was.taken(),
                text(ReadingValue.REFERENCE).equals(ReadingTexts.YES),
                side(),
                text(ReadingValue.NOTE));
    }

    private @Nullable Double warmth() throws Typed {
        Double typed = Typed.numberOrNothing(
                "The temperature",
                text(ReadingValue.TEMPERATURE),
                0,
                units.degrees(HOTTEST_C),
                "degrees from 0 to " + Math.round(units.degrees(HOTTEST_C)));
        return typed == null ? null : (Double) units.celsius(typed);
    }

    private Tap tap(Origin origin, String id, Spot spot) throws Typed {
        Tap was = before instanceof Tap t ? t : null;
        Double contact = was != null && same(ReadingValue.CONTACT)
                ? was.contactUs()
                : Typed.numberOrNothing(
                        "The contact time", text(ReadingValue.CONTACT), 1, LONGEST_CONTACT_US, "microseconds above 0");
        Sound sound = noted(ReadingValue.SOUND) ? Sound.valueOf(upper(ReadingValue.SOUND)) : null;
        if (sound == null && contact == null) {
            throw new Typed("A tap needs a sound or a contact time; take it away, or set it aside.");
        }
        return new Tap(origin, id, spot, sound, contact, side());
    }

    private Probe probe(Origin origin, String id, Spot spot) throws Typed {
        double depth = before instanceof Probe p && same(ReadingValue.DEPTH) ? p.voidDepthMm() : depth();
        CoreState core = !noted(ReadingValue.CORE)
                ? null
                : text(ReadingValue.CORE).equals("none left")
                        ? CoreState.NONE
                        : CoreState.valueOf(upper(ReadingValue.CORE));
        CoreMoisture water = noted(ReadingValue.WATER) ? CoreMoisture.valueOf(upper(ReadingValue.WATER)) : null;
        return new Probe(origin, id, spot, depth, core, water);
    }

    private Feeler feeler(Origin origin, String id, Spot spot) throws Typed {
        Feeler was = before instanceof Feeler f ? f : null;
        Spot tip = was != null && same(ReadingValue.TIP) ? was.tip() : place(ReadingValue.TIP);
        Double depth = was != null && same(ReadingValue.DEPTH)
                ? was.voidDepthMm()
                : text(ReadingValue.DEPTH).isEmpty() ? null : (Double) depth();
        FeelerEnd end = text(ReadingValue.END).equals(ReadingTexts.BEYOND) ? FeelerEnd.BEYOND : FeelerEnd.FIRM;
        return new Feeler(origin, id, spot, tip, end, depth);
    }

    private double depth() throws Typed {
        double most = units.typed(DEEPEST_MM);
        return units.mm(Typed.number(
                "The depth",
                text(ReadingValue.DEPTH),
                0,
                most,
                "0 to " + Math.round(most) + " " + units.depthUnit() + ", 0 where the drill met core at once"));
    }

    private double percent() throws Typed {
        return before instanceof Plug p && same(ReadingValue.PERCENT)
                ? p.moisturePercent()
                : Typed.number(
                        "The water of a plug",
                        text(ReadingValue.PERCENT),
                        0,
                        WETTEST_PERCENT,
                        "per cent of its dry mass, such as 12");
    }

    private Side side() {
        return text(ReadingValue.SIDE).equals(ReadingTexts.BELOW) ? Side.INNER : Side.OUTER;
    }

    private boolean noted(ReadingValue value) {
        return !text(value).isEmpty() && !text(value).equals(ReadingTexts.NOT_NOTED);
    }

    private String upper(ReadingValue value) {
        return text(value).toUpperCase(Locale.ROOT);
    }
}
