package corewright.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.survey.settings.Resin;
import corewright.survey.settings.Settings;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Settings as lines of section, name and value; resins have a table of their own. */
final class SettingsTable {
    /** One setting; the value as text, numbers with all their digits. */
    record Value(String section, String name, String value) {}

    private SettingsTable() {}

    static List<Value> values(Settings settings) {
        List<Value> values = new ArrayList<>();
        Json.tree(settings).fields().forEachRemaining(section -> section.getValue()
                .fields()
                .forEachRemaining(each -> values.add(new Value(
                        Form.snake(section.getKey()),
                        Form.snake(each.getKey()),
                        each.getValue().asText()))));
        return values;
    }

    /**
     * The settings of those lines; what no line gives is as by default, so that files of before a setting existed
     * can be read.
     *
     * @throws IllegalArgumentException where a value does not fit
     */
    static Settings settings(List<Value> values, List<Resin> resins) {
        ObjectNode tree = Json.tree(Settings.defaults());
        Set<String> seen = new HashSet<>();
        for (Value value : values) {
            if (!seen.add(value.section() + "." + value.name())) {
                throw new IllegalArgumentException(
                        Scalar.shown(value.section() + "." + value.name()) + ": is there twice");
            }
        }
        tree.fields().forEachRemaining(section -> {
            if (section.getValue() instanceof ObjectNode names) {
                names.fields().forEachRemaining(each -> values.stream()
                        .filter(v -> v.section().equals(Form.snake(section.getKey()))
                                && v.name().equals(Form.snake(each.getKey())))
                        .forEach(v -> each.setValue(like(each.getValue(), v))));
            }
        });
        Settings plain = Json.record(tree, Settings.class);
        return new Settings(
                plain.thresholds(),
                plain.drilling(),
                resins,
                plain.costs(),
                plain.crew(),
                plain.climate(),
                plain.numerics(),
                plain.terms(),
                plain.drying(),
                plain.goal(),
                plain.letterhead());
    }

    private static JsonNode like(JsonNode known, Value value) {
        JsonNodeFactory nodes = JsonNodeFactory.instance;
        try {
            if (known.isIntegralNumber()) {
                return nodes.numberNode(Long.parseLong(value.value()));
            }
            return known.isNumber()
                    ? nodes.numberNode(Double.parseDouble(value.value()))
                    : nodes.textNode(value.value());
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(
                    value.section() + "." + value.name() + ": found \"" + Scalar.shown(value.value())
                            + "\", expected a number",
                    e);
        }
    }
}
