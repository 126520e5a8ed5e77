package corewright.desktop.touch;

import corewright.survey.Reading;
import java.util.List;
import java.util.Locale;

/** What can be read and changed of a reading. */
enum ReadingValue {
    VALUE("reading"),
    METER("meter"),
    TEMPERATURE("temperature"),
    SOUND("sounds"),
    CONTACT("contact time, \u00b5s"),
    DEPTH("empty under the skin"),
    CORE("core found"),
    WATER("its moisture"),
    END("the rod met"),
    PERCENT("water, % of dry mass"),
    SIDE("taken from"),
    REFERENCE("over dry core"),
    NOTE("note"),
    PLACE("place"),
    TIP("rod's tip");

    private final String word;

    ReadingValue(String word) {
        this.word = word;
    }

    String word() {
        return word;
    }

    String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    static ReadingValue of(String id) {
        return valueOf(id.toUpperCase(Locale.ROOT));
    }

    /** The values that readings of a kind have, in the order of the slip. */
    static List<ReadingValue> of(Reading.Kind kind) {
        return switch (kind) {
            case MOISTURE -> List.of(VALUE, METER, TEMPERATURE, SIDE, REFERENCE, NOTE, PLACE);
            case TAP -> List.of(SOUND, CONTACT, SIDE, PLACE);
            case PROBE -> List.of(DEPTH, CORE, WATER, PLACE);
            case FEELER -> List.of(END, DEPTH, PLACE, TIP);
            case PLUG -> List.of(PERCENT, PLACE);
            case TEMPERATURE -> List.of(PLACE);
        };
    }
}
