package corewright.decision.drying;

import corewright.damage.Quantiles;
import org.jspecify.annotations.Nullable;

/**
 * How long one region takes in one way, from the last reading that followed its drying, or from the start.
 *
 * @param fromPercent water over dry mass at the start, the middle of its range; NaN where nothing is said
 * @param gatePercent where it is dry enough to bond
 * @param days infinite where it never comes so far; null where no time is told
 * @param note what a person must know about it, a sentence or more
 */
public record DryingTime(
        String face,
        String region,
        Way way,
        double fromPercent,
        double gatePercent,
        @Nullable Quantiles days,
        String note) {
    /** More probably than not dry within so many days; so is what no time is told of. */
    public boolean within(double daysAvailable) {
        return days == null || days.p50() <= daysAvailable;
    }
}
