package corewright.intake.yaml;

import corewright.survey.Origin;
import java.util.List;
import java.util.Map;

/**
 * A value of a YAML file together with its place.
 *
 * @param path keys from the top, {@code meters[1].wet}
 * @param text of a scalar
 * @param fields of a mapping, in file order
 */
public record YamlValue(
        Shape shape, Origin origin, String path, String text, List<YamlValue> items, Map<String, YamlValue> fields) {
    public enum Shape {
        /** Not written, or written without a value. */
        MISSING,
        TEXT,
        LIST,
        MAP
    }

    public static YamlValue missing(Origin origin, String path) {
        return new YamlValue(Shape.MISSING, origin, path, "", List.of(), Map.of());
    }

    public boolean isMissing() {
        return shape == Shape.MISSING;
    }

    /** The value under a key; a missing one stands at this mapping's own place. */
    public YamlValue at(String key) {
        YamlValue value = fields.get(key);
        return value != null ? value : missing(origin, path.isEmpty() ? key : path + "." + key);
    }

    /** What stands there, for a complaint. */
    public String found() {
        return switch (shape) {
            case MISSING -> "";
            case TEXT -> text;
            case LIST -> "a list";
            case MAP -> "a block of keys";
        };
    }
}
