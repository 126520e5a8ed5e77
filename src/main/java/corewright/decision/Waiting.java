package corewright.decision;

import corewright.damage.Quantiles;
import corewright.decision.drying.DryingTime;
import corewright.decision.drying.Way;
import corewright.survey.settings.Settings;
import java.util.List;

/**
 * Days in which nobody works: core dries, mix hardens. Regions dry and harden beside one another, so that the longest counts; drying comes
 * before what is closed.
 *
 * @param dryHigh infinite where it may never be dry
 */
record Waiting(double dryLow, double dryHigh, double cureLow, double cureHigh) {
    static final Waiting NONE = new Waiting(0, 0, 0, 0);

    /** Until a fill may carry, at 25 degrees. Practice. */
    private static final double FILL_DAYS = 1;

    /** A bed, and a skin laminated on it. Practice. */
    private static final double NEW_CORE_DAYS = 2;

    private static final double REFERENCE_C = 25;

    /** Of one method in one region. */
    static Waiting of(String region, Method method, List<DryingTime> drying, Settings settings) {
        double slower = Math.pow(2, (REFERENCE_C - settings.climate().temperatureC()) / 10);
        return switch (method) {
            case MONITOR -> NONE;
            case INJECT -> new Waiting(0, 0, FILL_DAYS * slower, FILL_DAYS * slower);
            case RECORE -> new Waiting(0, 0, NEW_CORE_DAYS * slower, NEW_CORE_DAYS * slower);
            case DRY_OUT ->
                drying.stream()
                        .filter(t -> t.region().equals(region) && t.way() == Way.THROUGH_HOLES)
                        .findFirst()
                        .map(Waiting::dries)
                        .orElse(NONE);
        };
    }

    /** Where no time can be told, as of foam, it may be any. */
    private static Waiting dries(DryingTime time) {
        Quantiles days = time.days();
        return days == null
                ? new Waiting(0, Double.POSITIVE_INFINITY, 0, 0)
                : new Waiting(days.p10(), days.p90(), 0, 0);
    }

    Waiting and(Waiting o) {
        return new Waiting(
                Math.max(dryLow, o.dryLow),
                Math.max(dryHigh, o.dryHigh),
                Math.max(cureLow, o.cureLow),
                Math.max(cureHigh, o.cureHigh));
    }

    /** It is not decided yet which. */
    Waiting orElse(Waiting o) {
        return new Waiting(
                Math.min(dryLow, o.dryLow),
                Math.max(dryHigh, o.dryHigh),
                Math.min(cureLow, o.cureLow),
                Math.max(cureHigh, o.cureHigh));
    }

    double low() {
        return dryLow + cureLow;
    }

    double high() {
        return dryHigh + cureHigh;
    }
}
