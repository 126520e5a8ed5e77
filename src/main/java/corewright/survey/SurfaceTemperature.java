package corewright.survey;

import org.jspecify.annotations.Nullable;

/**
 * Warmth of the skin while a fill cures, measured or felt by hand; exactly one is present.
 *
 * @param afterS seconds since the first batch was mixed
 */
public record SurfaceTemperature(
        Origin origin,
        String id,
        Spot spot,
        double afterS,
        @Nullable Double valueC,
        @Nullable Boolean warm) implements Reading {}
