package corewright.report.data;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.decision.FiredRule;
import corewright.decision.Method;
import corewright.decision.Overruled;
import corewright.decision.RegionDecision;
import corewright.survey.RuleOverride;
import corewright.survey.Survey;
import corewright.survey.settings.Thresholds;

/** The rules that held for a region, and who decided otherwise, in summary.json. */
final class RulesJson {
    private RulesJson() {}

    /** Rules set aside and limits set, with who and why. */
    static void overrides(ObjectNode json, Survey survey) {
        ArrayNode rules = json.putArray("rule_overrides");
        for (RuleOverride rule : survey.judgements().rules()) {
            ObjectNode node = rules.addObject().put("rule", rule.rule());
            if (rule.limit()) {
                JsonFile.put(node, "value", survey.settings().thresholds().of(rule.rule()));
                JsonFile.put(node, "default", Thresholds.DEFAULT.of(rule.rule()));
            } else {
                node.put("value", "off");
            }
            node.put("who", rule.who()).put("reason", rule.reason());
        }
        for (String limit : survey.unexplainedLimits()) {
            ObjectNode node = rules.addObject().put("rule", limit);
            JsonFile.put(node, "value", survey.settings().thresholds().of(limit));
            JsonFile.put(node, "default", Thresholds.DEFAULT.of(limit));
            node.put("who", "").put("reason", "");
        }
    }

    static void put(ObjectNode region, RegionDecision decision) {
        ArrayNode rules = region.putArray("rules");
        for (FiredRule rule : decision.rules()) {
            rules.addObject()
                    .put("name", rule.name())
                    .put("effect", rule.effect())
                    .put("sentence", rule.sentence())
                    .put("source", rule.source());
        }
        if (!decision.setAside().isEmpty()) {
            ObjectNode setAside = region.putObject("set_aside");
            for (Method method : Method.values()) {
                if (decision.setAside().containsKey(method)) {
                    setAside.put(method.word(), decision.setAside().get(method));
                }
            }
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
