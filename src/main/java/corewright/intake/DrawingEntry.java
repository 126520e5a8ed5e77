package corewright.intake;

import corewright.intake.text.LengthUnit;
import corewright.intake.text.Notes;
import corewright.intake.text.Numerals;
import corewright.intake.text.Words;
import corewright.intake.yaml.YamlBlock;
import corewright.intake.yaml.YamlValue;
import corewright.intake.yaml.YamlValue.Shape;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How a drawing is to be read as a plan.
 *
 * @param unit of the drawing, null where the file may say
 * @param layers folded layer name, to plan columns: {@code kind} and what else it gives; {@code kind} empty: left out
 * @param originX place of the survey's datum in the drawing, in its units
 * @param aftDeg direction of aft in the drawing, counter-clockwise from its x axis
 * @param joinMm ends that lie this near belong together
 * @param laminate of the outline, empty where the survey has one
 */
record DrawingEntry(
        @Nullable LengthUnit unit,
        Map<String, Map<String, String>> layers,
        double originX,
        double originY,
        double aftDeg,
        double joinMm,
        String laminate) {
    static final List<String> KEYS =
            List.of("file", "face", "units", "layers", "origin", "aft_deg", "join_mm", "laminate");

    /** Drawings snap ends together; a millimetre heals what a change of units or a trace has pulled apart. */
    private static final double JOIN_MM = 1;

    /** Columns of the plan that a layer may give. */
    static final List<String> COLUMNS = List.of(
            "kind",
            "metal",
            "load_bearing",
            "keepout",
            "edge",
            "laminate",
            CoamingCells.HEIGHT,
            CoamingCells.THICKNESS,
            CoamingCells.SKIN);

    static boolean isDrawing(String file) {
        String name = file.toLowerCase(Locale.ROOT);
        return name.endsWith(".dxf") || name.endsWith(".svg");
    }

    static DrawingEntry plain() {
        return new DrawingEntry(null, Map.of(), 0, 0, 0, JOIN_MM, "");
    }

    static DrawingEntry read(YamlBlock block, Notes notes) {
        List<YamlValue> origin = block.list("origin");
        boolean two = origin.size() == 2;
        if (!two && block.has("origin")) {
            block.expected("origin", "the datum's place in the drawing, as [x, y]");
        }
        return new DrawingEntry(
                block.word("units", LengthUnit.class),
                layers(block.block("layers"), notes),
                two ? coordinate(origin.get(0), notes) : 0,
                two ? coordinate(origin.get(1), notes) : 0,
                block.number("aft_deg", -360, 360, 0),
                block.number("join_mm", 0, 100, JOIN_MM),
                block.text("laminate"));
    }

    private static double coordinate(YamlValue value, Notes notes) {
        Double number = value.shape() == Shape.TEXT ? Numerals.parse(value.text(), Numerals.Decimal.DOT) : null;
        if (number == null) {
            notes.expected(value.origin(), value.path(), value.found(), "a number");
        }
        return number == null ? 0 : number;
    }

    private static Map<String, Map<String, String>> layers(YamlBlock block, Notes notes) {
        Map<String, Map<String, String>> layers = new HashMap<>();
        block.value().fields().forEach((layer, value) -> {
            Map<String, String> columns = new HashMap<>();
            if (value.shape() == Shape.MAP) {
                YamlBlock given = YamlBlock.of(value, notes);
                given.only(COLUMNS);
                COLUMNS.forEach(column -> columns.put(column, given.text(column)));
            } else {
                columns.put("kind", block.text(layer));
            }
            String kind = columns.getOrDefault("kind", "");
            if (kind.equals("none")) {
                columns.put("kind", "");
            } else if (Words.pick(DrawnKind.class, kind) == null) {
                notes.expected(value.origin(), value.path(), kind, Words.choices(DrawnKind.class) + ", or none");
            }
            layers.put(fold(layer), columns);
        });
        return layers;
    }

    /** The plan columns of a layer; null where nothing says what it holds. */
    @Nullable
    Map<String, String> columns(String layer) {
        Map<String, String> given = layers.get(fold(layer));
        if (given != null) {
            return given;
        }
        String word = layer.strip().replaceFirst("[-_ ]?[0-9]{1,4}$", ""); // ids of an SVG file must differ
        return Words.pick(DrawnKind.class, word) == null ? layers.get(fold(word)) : Map.of("kind", word);
    }

    private static String fold(String layer) {
        return layer.strip().toLowerCase(Locale.ROOT);
    }
}
