package corewright.decision.drying;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * How one region dries through holes, day by day, where it dries last.
 *
 * @param from the first reading taken during drying, day 0; empty where none was: then day 0 is when it begins
 * @param days at even steps from day 0
 * @param readings what stands above dry, mean of the places read
 */
public record DryingCurve(
        String region, Optional<LocalDate> from, double gatePercent, List<Day> days, List<Read> readings) {
    public DryingCurve {
        days = List.copyOf(days);
        readings = List.copyOf(readings);
    }

    /** Water over dry mass, per cent: in one case of ten it is less than p10, in one more than p90. */
    public record Day(double day, double p10, double p50, double p90) {}

    /**
     * A day on which it was read.
     *
     * @param left share of what stood above dry
     * @param percent that share of the water which leaves, in the middle case
     */
    public record Read(double day, double left, double percent) {}
}
