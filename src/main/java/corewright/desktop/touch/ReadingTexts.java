package corewright.desktop.touch;

import corewright.desktop.state.TypedPlace;
import corewright.desktop.state.Units;
import corewright.drawing.kit.Figures;
import corewright.survey.CoreState;
import corewright.survey.Feeler;
import corewright.survey.FeelerEnd;
import corewright.survey.Moisture;
import corewright.survey.Plug;
import corewright.survey.Probe;
import corewright.survey.Reading;
import corewright.survey.Side;
import corewright.survey.Tap;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The values of a reading as they stand in its fields. */
final class ReadingTexts {
    static final String NOT_NOTED = "not noted";
    static final String YES = "yes";
    static final String NO = "no";
    static final String ABOVE = "above";
    static final String BELOW = "below";
    static final String FIRM = "firm core";
    static final String BEYOND = "nothing: it goes on";

    private ReadingTexts() {}

    static Map<ReadingValue, String> of(Reading reading, Units units) {
        Map<ReadingValue, String> texts = new EnumMap<>(ReadingValue.class);
        texts.put(ReadingValue.PLACE, TypedPlace.text(reading.spot(), units));
        if (reading instanceof Moisture m) {
            texts.put(ReadingValue.VALUE, (m.offScale() ? ">" : "") + plain(m.value()));
            texts.put(ReadingValue.METER, m.meter());
            texts.put(ReadingValue.TEMPERATURE, m.temperatureC() == null ? "" : plain(units.degrees(m.temperatureC())));
            texts.put(ReadingValue.SIDE, side(m.side()));
            texts.put(ReadingValue.REFERENCE, m.reference() ? YES : NO);
            texts.put(ReadingValue.NOTE, m.note());
        } else if (reading instanceof Tap t) {
            texts.put(ReadingValue.SOUND, word(t.sound()));
            texts.put(ReadingValue.CONTACT, t.contactUs() == null ? "" : plain(t.contactUs()));
            texts.put(ReadingValue.SIDE, side(t.side()));
        } else if (reading instanceof Probe p) {
            texts.put(ReadingValue.DEPTH, plain(units.typed(p.voidDepthMm())));
            texts.put(ReadingValue.CORE, p.coreState() == CoreState.NONE ? "none left" : word(p.coreState()));
            texts.put(ReadingValue.WATER, word(p.coreMoisture()));
        } else if (reading instanceof Feeler f) {
            texts.put(ReadingValue.END, f.end() == FeelerEnd.FIRM ? FIRM : BEYOND);
            texts.put(ReadingValue.DEPTH, f.voidDepthMm() == null ? "" : plain(units.typed(f.voidDepthMm())));
            texts.put(ReadingValue.TIP, TypedPlace.text(f.tip(), units));
        } else if (reading instanceof Plug p) {
            texts.put(ReadingValue.PERCENT, plain(p.moisturePercent()));
        }
        return texts;
    }

    /** What a value may be; empty where anything may be typed. */
    static List<String> options(ReadingValue value, List<String> meters) {
        return switch (value) {
            case METER -> meters;
            case SOUND -> List.of(NOT_NOTED, "sound", "dull", "hollow");
            case CORE -> List.of(NOT_NOTED, "dry", "damp", "wet", "rotted", "none left");
            case WATER -> List.of(NOT_NOTED, "dry", "damp", "wet");
            case END -> List.of(FIRM, BEYOND);
            case SIDE -> List.of(ABOVE, BELOW);
            case REFERENCE -> List.of(NO, YES);
            default -> List.of();
        };
    }

    static String label(ReadingValue value, Units units) {
        return switch (value) {
            case DEPTH, PLACE, TIP -> value.word() + ", " + units.depthUnit();
            case TEMPERATURE -> value.word() + (units == Units.METRIC ? ", °C" : ", °F");
            default -> value.word();
        };
    }

    private static String side(Side side) {
        return side == Side.OUTER ? ABOVE : BELOW;
    }

    private static String word(@Nullable Enum<?> value) {
        return value == null ? NOT_NOTED : value.name().toLowerCase(Locale.ROOT);
    }

    private static String plain(double value) {
        return Figures.atMost(value, 3).replaceAll("[^0-9.]", "");
    }
}
