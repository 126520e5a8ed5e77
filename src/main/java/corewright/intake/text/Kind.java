package corewright.intake.text;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The kinds of CSV file in a survey folder and their columns. */
public enum Kind {
    PLAN(
            List.of("kind", "wkt"),
            List.of(
                    "face",
                    "name",
                    "metal",
                    "load_bearing",
                    "keepout",
                    "edge",
                    "laminate",
                    "coaming_height_mm",
                    "coaming_thickness_mm",
                    "coaming_skin",
                    "diameter_mm")),
    MOISTURE(
            List.of("x", "y", "value"),
            List.of("id", "face", "meter", "temperature", "taken", "reference", "side", "note")),
    TAPS(List.of("x", "y"), List.of("id", "face", "sound", "contact_us", "side", "note")),
    PROBES(List.of("x", "y", "void_depth"), List.of("id", "face", "core_state", "core_moisture", "note")),
    FEELERS(List.of("x1", "y1", "x2", "y2", "end"), List.of("id", "face", "void_depth", "note")),
    PLUGS(List.of("x", "y", "mc_percent"), List.of("id", "face", "note")),
    TEMPERATURES(List.of("x", "y", "minutes", "value"), List.of("id", "face", "note")),
    CURED_TAPS(TAPS),
    LOG(
            List.of("hole", "minutes", "grams"),
            List.of(
                    "ooze_at",
                    "cup",
                    "vent_shown",
                    "depth_felt",
                    "leak",
                    "stopped",
                    "note",
                    "who",
                    "resin_lot",
                    "card_revision",
                    "lift")),
    PHOTOS(List.of("file", "x", "y", "caption"), List.of("face", "note"));

    public final List<String> required;
    public final List<String> columns;

    Kind(List<String> required, List<String> optional) {
        this.required = required;
        this.columns = Stream.concat(required.stream(), optional.stream()).toList();
    }

    /** Sheets of the same form, taken at another time. */
    Kind(Kind like) {
        this.required = like.required;
        this.columns = like.columns;
    }

    /** The key under {@code files}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static @Nullable Kind of(String key) {
        return Stream.of(values()).filter(k -> k.key().equals(key)).findFirst().orElse(null);
    }

    public static List<String> keys() {
        return Stream.of(values()).map(Kind::key).toList();
    }

    public boolean canBeCrossTab() {
        return this == MOISTURE || taps();
    }

    /** Whether its readings are taps. */
    public boolean taps() {
        return this == TAPS || this == CURED_TAPS;
    }
}
