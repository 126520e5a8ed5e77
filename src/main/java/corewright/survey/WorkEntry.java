package corewright.survey;

import org.jspecify.annotations.Nullable;

/**
 * One line of the work log: what went into a hole.
 *
 * @param afterS seconds since the first batch was mixed
 * @param oozeAt the hole or place where mix showed
 */
public record WorkEntry(
        Origin origin,
        String hole,
        double afterS,
        double grams,
        @Nullable String oozeAt) {}
