package corewright.report.data;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.decision.Sensitivity;
import corewright.decision.Sensitivity.Outcome;

/** What moves cost and stiffness most, in summary.json. */
final class SensitivityJson {
    private SensitivityJson() {}

    static void put(ObjectNode node, Sensitivity sensitivity) {
        node.put("panel", sensitivity.panel());
        outcome(node.putObject("advised"), sensitivity.advised());
        ArrayNode inputs = node.putArray("inputs");
        for (Sensitivity.Swing swing : sensitivity.swings()) {
            ObjectNode input = inputs.addObject()
                    .put("input", swing.input().word())
                    .put("unit", swing.input().unit());
            JsonFile.put(input, "low", swing.low());
            JsonFile.put(input, "high", swing.high());
            outcome(input.putObject("at_low"), swing.atLow());
            outcome(input.putObject("at_high"), swing.atHigh());
            ArrayNode changed = input.putArray("other_method");
            swing.methods().forEach(changed::add);
        }
    }

    private static void outcome(ObjectNode node, Outcome outcome) {
        JsonFile.put(node, "cost", outcome.cost());
        JsonFile.put(node, "days", outcome.days());
        JsonFile.put(node, "of_as_built", outcome.ofAsBuilt().orElse(Double.NaN));
    }
}
