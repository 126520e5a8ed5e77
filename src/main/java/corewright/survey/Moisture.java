package corewright.survey;

import corewright.survey.settings.Check;
import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;

/**
 * A moisture-meter reading.
 *
 * @param value on the meter's own relative scale; for {@code offScale} the end of the scale, a lower bound
 * @param offScale the needle was at or beyond the end of the scale
 * @param meter name of the meter it was taken with
 * @param temperatureC surface temperature at the reading, degrees Celsius
 * @param taken when, for readings that follow a deck as it dries
 * @param reference taken over core known to be dry
 */
public record Moisture(
        Origin origin,
        String id,
        Spot spot,
        double value,
        boolean offScale,
        String meter,
        @Nullable Double temperatureC,
        @Nullable LocalDateTime taken,
        boolean reference,
        Side side,
        String note)
        implements Reading {
    public Moisture {
        Check.notNegative("value", value);
    }
}
