package corewright.decision;

import corewright.survey.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The method advised for one region.
 *
 * @param reasons why, a sentence each, the one that settled it first
 * @param firstStep what must be proven before anything is cut or filled, null where nothing must
 * @param pilot where a hole proves it, null where none is named
 * @param notOffered methods that are not offered here, each with the reason
 * @param architect the place carries load: a naval architect or surveyor decides before any work
 * @param rules every rule that held, in the order they were asked
 * @param setAside stop signs that a person set aside: methods that are offered for it, each with who, why and the sign
 * @param overruled a person decided otherwise, null where nobody did
 */
public record RegionDecision(
        String region,
        Method method,
        List<String> reasons,
        @Nullable String firstStep,
        @Nullable Spot pilot,
        Map<Method, String> notOffered,
        boolean architect,
        List<FiredRule> rules,
        Map<Method, String> setAside,
        @Nullable Overruled overruled) {
    public RegionDecision {
        reasons = List.copyOf(reasons);
        notOffered = Map.copyOf(notOffered);
        rules = List.copyOf(rules);
        setAside = Map.copyOf(setAside);
    }

    /** By no rule. */
    public RegionDecision(
            String region,
            Method method,
            List<String> reasons,
            @Nullable String firstStep,
            Map<Method, String> notOffered,
            boolean architect) {
        this(region, method, reasons, firstStep, null, notOffered, architect, List.of(), Map.of(), null);
    }

    /** The stop sign that a person's decision goes past, a sentence; empty where there is none. */
    public Optional<String> stopPassed() {
        return Optional.ofNullable(overruled).map(Overruled::stop);
    }

    /** It is dried through holes, and nothing has to be proven before. */
    public boolean opensToDry() {
        return method == Method.DRY_OUT && firstStep == null;
    }

    /** The same for one more reason. */
    RegionDecision because(String reason) {
        List<String> more = new ArrayList<>(reasons);
        more.add(reason);
        return new RegionDecision(
                region, method, more, firstStep, pilot, notOffered, architect, rules, setAside, overruled);
    }
}
