package corewright.comparison;

import org.jspecify.annotations.Nullable;

/**
 * One figure of both surveys.
 *
 * @param face empty for all compared faces together
 * @param region region of the first survey, new place (N1, N2 ...) or panel; empty for the whole face
 * @param before as the first survey's map has it
 * @param after as the second one's has it
 * @param limits between what the difference lies; null where it cannot be compared
 * @param promised what the first survey's plan was to leave; NaN where it promised nothing
 * @param why it cannot be compared, or is not taken for proven whatever the limits; empty where there is no such reason
 */
public record Change(
        String face,
        String region,
        Quantity quantity,
        double before,
        double after,
        @Nullable Limits limits,
        double promised,
        String why) {
    /** A figure that cannot be compared. */
    static Change open(String face, String region, Quantity quantity, double before, double after, String why) {
        return new Change(face, region, quantity, before, after, null, Double.NaN, why);
    }

    public double difference() {
        return after - before;
    }

    /** The readings leave no doubt that it changed. */
    public boolean proven() {
        return limits != null && why.isEmpty() && !limits.holdsNought();
    }

    /** Proven, and less than it was. */
    public boolean fell() {
        return proven() && difference() < 0;
    }

    /** Proven, and more than it was. */
    public boolean rose() {
        return proven() && difference() > 0;
    }

    Change promising(double figure) {
        return new Change(face, region, quantity, before, after, limits, figure, why);
    }

    Change doubted(String reason) {
        return new Change(face, region, quantity, before, after, limits, promised, why.isEmpty() ? reason : why);
    }
}
