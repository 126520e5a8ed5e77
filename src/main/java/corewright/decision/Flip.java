package corewright.decision;

import corewright.survey.Spot;
import org.jspecify.annotations.Nullable;

/**
 * What would change a decision.
 *
 * @param method advised now
 * @param becomes advised then
 * @param condition a sentence after "if"
 * @param probability that it turns out so, by what is known
 * @param spot where to look, null where it is no one place
 */
public record Flip(
        String region,
        Method method,
        Method becomes,
        String condition,
        double probability,
        @Nullable Spot spot) {}
