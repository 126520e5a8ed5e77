package corewright.intake;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import corewright.survey.Origin;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

/** A YAML document read node by node; what is wrong is collected with its line. Keys are written {@code core.Ez_MPa}. */
final class PanelTree {
    private final String file;
    private final JsonNode root;
    private final Map<String, Long> lines = new HashMap<>();
    final List<Complaint> complaints = new ArrayList<>();

    private PanelTree(String file, JsonNode root) {
        this.file = file;
        this.root = root;
    }

    static PanelTree parse(String file, String text) throws RefusedException {
        YAMLFactory factory = new YAMLFactory();
        factory.enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION);
        try {
            JsonNode root = new ObjectMapper(factory).readTree(text);
            PanelTree tree = new PanelTree(file, root);
            tree.findLines(factory, text);
            return tree;
        } catch (JsonProcessingException e) {
            long line = e.getLocation() == null ? 0 : e.getLocation().getLineNr();
            String problem =
                    String.valueOf(e.getOriginalMessage()).lines().findFirst().orElse("not YAML");
            throw new RefusedException(List.of(new Complaint(new Origin(file, line), "", problem)));
        } catch (IOException e) {
            throw new RefusedException(List.of(new Complaint(new Origin(file, 0), "", String.valueOf(e.getMessage()))));
        }
    }

    private void findLines(YAMLFactory factory, String text) throws IOException {
        try (JsonParser parser = factory.createParser(text)) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                String key = parser.getParsingContext().pathAsPointer().toString();
                lines.putIfAbsent(key, (long) parser.currentTokenLocation().getLineNr());
            }
        }
    }

    /** A node of the tree and the way to it. */
    record Item(JsonNode node, String pointer) {
        Item child(String key) {
            return new Item(node.path(key), pointer + "/" + key);
        }

        boolean given() {
            return !node.isMissingNode() && !node.isNull();
        }

        String name() {
            return pointer.isEmpty() ? "" : pointer.substring(1).replace('/', '.');
        }
    }

    Item root() {
        return new Item(root, "");
    }

    void complain(Item at, String problem) {
        complaints.add(new Complaint(origin(at), at.name(), problem));
    }

    private void expected(Item at, String what) {
        String found = at.node.isValueNode() ? at.node.asText() : at.node.toString();
        complaints.add(
                at.given()
                        ? Complaint.of(origin(at), at.name(), found, what)
                        : new Complaint(origin(at), at.name(), "is missing, expected " + what));
    }

    private Origin origin(Item at) {
        String pointer = at.pointer;
        while (!pointer.isEmpty() && !lines.containsKey(pointer)) {
            pointer = pointer.substring(0, pointer.lastIndexOf('/'));
        }
        return new Origin(file, lines.getOrDefault(pointer, 0L));
    }

    /** Complains of keys that mean nothing here, and of what is not a block of keys. */
    boolean isMap(Item at, List<String> keys) {
        if (!at.node.isObject()) {
            expected(at, "the keys " + String.join(", ", keys));
            return false;
        }
        for (Iterator<String> it = at.node.fieldNames(); it.hasNext(); ) {
            String key = it.next();
            if (!keys.contains(key)) {
                complain(at.child(key), "is not known, expected one of " + String.join(", ", keys));
            }
        }
        return true;
    }

    List<Item> list(Item at) {
        List<Item> items = new ArrayList<>();
        if (!at.given()) {
            return items;
        }
        if (!at.node.isArray()) {
            expected(at, "a list");
            return items;
        }
        for (int k = 0; k < at.node.size(); k++) {
            items.add(new Item(at.node.get(k), at.pointer + "/" + k));
        }
        return items;
    }

    /** NaN, with a complaint, if there is no number. */
    double number(Item at) {
        if (at.node.isNumber() && Double.isFinite(at.node.asDouble())) {
            return at.node.asDouble();
        }
        expected(at, "a number");
        return Double.NaN;
    }

    double positive(Item at) {
        double value = number(at);
        if (value <= 0) {
            expected(at, "a number above 0");
        }
        return value;
    }

    OptionalDouble optionalPositive(Item at) {
        return at.given() ? OptionalDouble.of(positive(at)) : OptionalDouble.empty();
    }

    @Nullable
    String text(Item at, String what) {
        if (at.node.isTextual()) {
            return at.node.asText();
        }
        expected(at, what);
        return null;
    }

    /** A valid geometry, not empty, of one of the kinds named; null, with a complaint, if there is none. */
    @Nullable
    Geometry geometry(Item at, String... kinds) {
        String what = "well-known text of a " + String.join(" or ", kinds);
        String text = text(at, what);
        if (text == null) {
            return null;
        }
        try {
            Geometry geometry = new WKTReader().read(text);
            if (!List.of(kinds).contains(geometry.getGeometryType()) || geometry.isEmpty()) {
                expected(at, what);
            } else if (!geometry.isValid()) {
                expected(at, "an outline that does not cross itself");
            } else {
                return geometry;
            }
        } catch (ParseException | IllegalArgumentException e) {
            expected(at, what);
        }
        return null;
    }

    /** A choice written with hyphens; null, with a complaint, if it is none. */
    <E extends Enum<E>> @Nullable E choice(Item at, Class<E> kind) {
        List<String> names = new ArrayList<>();
        for (E e : kind.getEnumConstants()) {
            String name = e.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
            if (name.equals(at.node.asText())) {
                return e;
            }
            names.add(name);
        }
        expected(at, "one of " + String.join(", ", names));
        return null;
    }
}
