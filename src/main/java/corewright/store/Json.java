package corewright.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.store.Table.Drawn;
import corewright.survey.Edit;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Part;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Edits as texts of the journal: things stand in them as in their tables, geometries in base 64. */
final class Json {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private Json() {}

    static String write(Edit edit) {
        return node(edit).toString();
    }

    /**
     * The edit in a text.
     *
     * @throws IllegalArgumentException where it is none
     */
    static Edit read(String text) {
        try {
            return edit(MAPPER.readTree(text));
        } catch (IOException | ClassCastException | NullPointerException e) {
            throw new IllegalArgumentException("found no edit (" + e.getMessage() + ")", e);
        }
    }

    /** The tree of a record of plain values. */
    static ObjectNode tree(Record record) {
        return MAPPER.valueToTree(record);
    }

    /** The record of a tree. */
    static <T> T record(JsonNode tree, Class<T> type) {
        try {
            return MAPPER.treeToValue(tree, type);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(e.getOriginalMessage(), e);
        }
    }

    private static ObjectNode node(Edit edit) {
        ObjectNode node = MAPPER.createObjectNode();
        if (edit instanceof Edit.Together together) {
            ArrayNode edits = node.put("do", "together").putArray("edits");
            together.edits().forEach(e -> edits.add(node(e)));
            return node;
        }
        if (edit instanceof Edit.Remove<?> remove) {
            return place(node.put("do", "remove"), remove.part(), remove.at());
        }
        if (edit instanceof Edit.Insert<?> insert) {
            place(node.put("do", "insert"), insert.part(), insert.at());
            return node.set("item", item(insert.part(), insert.item()));
        }
        Edit.Replace<?> replace = (Edit.Replace<?>) edit;
        place(node.put("do", "replace"), replace.part(), replace.at());
        return node.set("item", item(replace.part(), replace.item()));
    }

    private static ObjectNode place(ObjectNode node, Part<?> part, int at) {
        node.put("part", part.name());
        if (!part.face().isEmpty()) {
            node.put("face", part.face());
        }
        return node.put("at", at);
    }

    private static Edit edit(JsonNode node) throws IOException {
        String what = node.path("do").asText();
        if (what.equals("together")) {
            List<Edit> edits = new ArrayList<>();
            for (JsonNode each : node.path("edits")) {
                edits.add(edit(each));
            }
            return new Edit.Together(edits);
        }
        Part<?> part = Part.of(node.path("part").asText(), node.path("face").asText());
        return edit(what, part, node.path("at").asInt(-1), node.path("item"));
    }

    private static <T> Edit edit(String what, Part<T> part, int at, JsonNode item) throws IOException {
        return switch (what) {
            case "insert" -> new Edit.Insert<>(part, at, item(part, item));
            case "remove" -> new Edit.Remove<>(part, at);
            case "replace" -> new Edit.Replace<>(part, at, item(part, item));
            default -> throw new IllegalArgumentException("found no edit but \"" + what + "\"");
        };
    }

    private static JsonNode item(Part<?> part, Object item) {
        if (item instanceof Feature feature) {
            return row(Table.PLAN_FEATURES, new Drawn(part.face(), feature));
        }
        if (part.equals(Part.SETTINGS) || part.equals(Part.MATERIALS)) {
            return MAPPER.valueToTree(item);
        }
        if (item instanceof Face face) {
            ObjectNode node = row(Table.of(Part.FACES), face);
            ArrayNode features = node.putArray("features");
            face.features().forEach(f -> features.add(row(Table.PLAN_FEATURES, new Drawn(face.name(), f))));
            return node;
        }
        return record(part, item);
    }

    private static <T> JsonNode record(Part<T> part, Object item) {
        return row(Table.of(part), part.type().cast(item));
    }

    private static <T> T item(Part<T> part, JsonNode node) throws IOException {
        if (part.type() == Feature.class) {
            return part.type().cast(of(Table.PLAN_FEATURES, node).feature());
        }
        if (part.equals(Part.SETTINGS) || part.equals(Part.MATERIALS)) {
            return record(node, part.type());
        }
        if (part.equals(Part.FACES)) {
            List<Feature> features = new ArrayList<>();
            for (JsonNode feature : node.path("features")) {
                features.add(of(Table.PLAN_FEATURES, feature).feature());
            }
            return part.type().cast(of(Table.of(Part.FACES), node).with(features));
        }
        return of(Table.of(part), node);
    }

    private static <T> ObjectNode row(Table<T> table, T item) {
        ObjectNode node = MAPPER.createObjectNode();
        @Nullable Object[] row = table.row().apply(item);
        for (int i = 0; i < row.length; i++) {
            if (row[i] != null) {
                node.set(table.columns().get(i), MAPPER.valueToTree(row[i]));
            }
        }
        return node;
    }

    private static <T> T of(Table<T> table, JsonNode node) throws IOException {
        @Nullable Object[] row = new @Nullable Object[table.columns().size()];
        for (int i = 0; i < row.length; i++) {
            row[i] = value(table.columns().get(i), node.get(table.columns().get(i)));
        }
        return table.item().apply(row);
    }

    private static @Nullable Object value(String column, @Nullable JsonNode value) throws IOException {
        if (value == null || value.isNull()) {
            return null;
        }
        if (column.equals(Form.GEOMETRY)) {
            return value.binaryValue();
        }
        if (value.isTextual()) {
            return value.asText();
        }
        return value.isIntegralNumber() ? (Object) value.asLong() : (Object) value.asDouble();
    }
}
