package corewright.report.data;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.decision.FiredRule;
import corewright.decision.Overruled;
import corewright.decision.RegionDecision;

/** The rules that held for a region, and who decided otherwise, in summary.json. */
final class RulesJson {
    private RulesJson() {}

    static void put(ObjectNode region, RegionDecision decision) {
        ArrayNode rules = region.putArray("rules");
        for (FiredRule rule : decision.rules()) {
            rules.addObject()
                    .put("name", rule.name())
                    .put("effect", rule.effect())
                    .put("sentence", rule.sentence())
                    .put("source", rule.source());
        }
        Overruled overruled = decision.overruled();
        if (overruled != null) {
            region.putObject("overruled")
                    .put("rules", overruled.rules().word())
                    .put("by", overruled.by())
                    .put("reason", overruled.reason())
                    .put("stop", overruled.stop());
        }
    }
}
