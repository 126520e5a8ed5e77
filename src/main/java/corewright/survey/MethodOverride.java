package corewright.survey;

import java.util.Set;

/**
 * What a person decided to do at a place, whatever the program proposes. It holds for the region that contains the place:
 * regions change with every reading, a place on the boat does not.
 *
 * @param method one of the four words of a method
 * @param who answers for it, empty where whoever surveyed does
 * @param reason as it will stand in the report, empty where none was given
 */
public record MethodOverride(Spot spot, String method, String who, String reason) {
    private static final Set<String> METHODS = Set.of("monitor", "dry-out", "inject", "recore");

    public MethodOverride {
        if (!METHODS.contains(method)) {
            throw new IllegalArgumentException("method must be monitor, dry-out, inject or recore, was " + method);
        }
    }
}
