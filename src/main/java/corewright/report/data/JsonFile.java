package corewright.report.data;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.damage.Quantiles;

/** How our JSON is laid out: two spaces, line feeds, null for what is not a number. */
public final class JsonFile {
    public static final ObjectMapper MAPPER = new ObjectMapper();

    private JsonFile() {}

    static String text(JsonNode node) {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        try {
            return MAPPER.writer(new DefaultPrettyPrinter().withObjectIndenter(indenter))
                            .writeValueAsString(node)
                    + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of plain values did not become text", e);
        }
    }

    /** A number, or null where it is none. */
    static void put(ObjectNode node, String key, double value) {
        if (Double.isFinite(value)) {
            node.put(key, value);
        } else {
            node.putNull(key);
        }
    }

    static void put(ObjectNode node, String key, Quantiles value) {
        node.putObject(key).put("p10", value.p10()).put("p50", value.p50()).put("p90", value.p90());
    }
}
