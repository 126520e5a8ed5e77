package corewright.survey;

import org.jspecify.annotations.Nullable;

/** A rod pushed in under the skin: empty from {@code spot} to {@code tip}, and how it ended there. */
public record Feeler(
        Origin origin,
        String id,
        Spot spot,
        Spot tip,
        FeelerEnd end,
        @Nullable Double voidDepthMm) implements Reading {}
