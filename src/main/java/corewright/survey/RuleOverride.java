package corewright.survey;

import corewright.survey.settings.Thresholds;
import java.util.List;
import java.util.stream.Stream;

/**
 * A rule of the decision that a person sets aside, or a limit that a person sets. A limit's value stands among the settings.
 *
 * @param rule name of a rule, or the limit's key
 * @param who answers for it
 * @param reason as it will stand in the report
 */
public record RuleOverride(String rule, String who, String reason) {
    /**
     * Rules that may be set aside. That a skin is bonded, or that no injection could be planned, is a fact and no rule to argue
     * with.
     */
    public static final List<String> RULES = List.of(
            "rot",
            "wet and loose",
            "loose and more probably wet",
            "wet core found",
            "no bond to wet core",
            "load on a loose skin",
            "load on bonded core",
            "wet beside a cut",
            "no time to dry",
            "wet but little",
            "cannot dry in time",
            "wet and bonded",
            "dry core is not dried",
            "loose under a load",
            "too large to inject blind",
            "proven dry in a part",
            "proven dry",
            "not dry",
            "not proven dry");

    public RuleOverride {
        if (!names().contains(rule)) {
            throw new IllegalArgumentException("rule must be " + String.join(", ", names()) + ", was " + rule);
        }
    }

    /** Rules first, then limits. */
    public static List<String> names() {
        return Stream.concat(RULES.stream(), Thresholds.keys().stream()).toList();
    }

    /** Whether a limit is set, not a rule set aside. */
    public boolean limit() {
        return !RULES.contains(rule);
    }
}
