package corewright.report.data;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.decision.Option;
import corewright.decision.Weighing;

/** The rows of options.csv in summary.json. */
final class OptionsJson {
    private OptionsJson() {}

    static void put(ArrayNode rows, Weighing weighing) {
        for (Option option : weighing.options()) {
            ObjectNode node = rows.addObject();
            node.put("region", option.region())
                    .put("method", option.method())
                    .put("offered", option.offered())
                    .put("standing", OptionsCsv.standing(option))
                    .put("why", option.why());
            option.work().ifPresent(w -> {
                range(node, "hours", w.hoursLow(), w.hoursHigh());
                range(node, "cost", w.costLow(), w.costHigh());
                range(node, "days", w.daysLow(), w.daysHigh());
                JsonFile.put(node, "weight_kg", option.weight().netKg());
                JsonFile.put(node, "water_kg", option.weight().waterKg());
            });
            option.stiffness().ifPresent(q -> {
                node.put("panel", option.panel());
                JsonFile.put(node, "stiffness", q);
            });
        }
    }

    private static void range(ObjectNode node, String key, double low, double high) {
        ObjectNode range = node.putObject(key);
        JsonFile.put(range, "low", low);
        JsonFile.put(range, "high", high);
    }
}
