package corewright.decision;

import corewright.damage.Region;
import corewright.repair.plan.RepairOptions;
import corewright.survey.MethodOverride;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What people decided at a place takes effect in the region that holds it; a stop sign that it passes stays up. */
final class Overriding {
    private final Survey survey;
    private final RepairOptions options;

    Overriding(Survey survey, RepairOptions options) {
        this.survey = survey;
        this.options = options;
    }

    /** The last decision at a place in a region; empty where there is none. */
    Optional<MethodOverride> on(Region region) {
        return survey.judgements().methods().stream()
                .filter(o -> inside(region, o))
                .reduce((before, later) -> later);
    }

    static boolean inside(Region region, MethodOverride override) {
        return override.spot().face().equals(region.face())
                && region.likely()
                        .covers(region.likely()
                                .getFactory()
                                .createPoint(override.spot().coordinate()));
    }

    /** The decision as a person has it; as the rules have it where that is the same, or cannot be done. */
    RegionDecision of(Region region, RegionDecision rules) {
        Optional<MethodOverride> override = on(region);
        if (override.isEmpty()) {
            return rules;
        }
        Method wanted =
                Method.valueOf(override.get().method().toUpperCase(Locale.ROOT).replace('-', '_'));
        if (wanted == rules.method()) {
            return rules.because(said(override.get(), wanted) + ", as the rules do.");
        }
        if (wanted == Method.INJECT && !options.fillable(region.id())) {
            return rules.because(
                    said(override.get(), wanted) + ", but no injection could be planned: the rules stand.");
        }
        return overruled(rules, override.get(), wanted);
    }

    private RegionDecision overruled(RegionDecision rules, MethodOverride override, Method wanted) {
        List<String> reasons = new ArrayList<>();
        String stop = rules.notOffered().get(wanted);
        reasons.add(said(override, wanted) + "; the rules advise to " + verb(rules.method()) + ".");
        if (stop != null) {
            reasons.add("That goes past a stop sign: " + stop);
        }
        String first = rules.firstStep();
        if (first != null) {
            reasons.add("Not proven first: " + first);
        }
        reasons.addAll(rules.reasons());
        Map<Method, String> refused = new EnumMap<>(Method.class);
        refused.putAll(rules.notOffered());
        refused.remove(wanted);
        return new RegionDecision(
                rules.region(),
                wanted,
                reasons,
                wanted == Method.MONITOR ? first : null,
                wanted == Method.MONITOR ? rules.pilot() : null,
                refused,
                rules.architect(),
                rules.rules(),
                rules.setAside(),
                new Overruled(rules.method(), who(override), override.reason(), stop));
    }

    private String who(MethodOverride override) {
        return override.who().isEmpty() ? survey.heading().surveyor() : override.who();
    }

    private String said(MethodOverride override, Method wanted) {
        String who = who(override);
        String why = override.reason();
        return "Decided by hand" + (who.isEmpty() ? "" : " (" + who + ")") + ": " + verb(wanted)
                + (why.isEmpty() ? ", no reason given" : ", for the reason \"" + why + "\"");
    }

    private static String verb(Method method) {
        return switch (method) {
            case MONITOR -> "watch it";
            case DRY_OUT -> "dry it";
            case INJECT -> "inject it";
            case RECORE -> "cut it out";
        };
    }
}
