package corewright.survey;

import corewright.survey.settings.Check;
import org.jspecify.annotations.Nullable;

/**
 * A tap on the skin: a call by ear or the contact time of an instrumented hammer; at least one is present.
 *
 * @param contactUs contact time, microseconds
 */
public record Tap(
        Origin origin,
        String id,
        Spot spot,
        @Nullable Sound sound,
        @Nullable Double contactUs,
        Side side) implements Reading {
    public Tap {
        if (sound == null && contactUs == null) {
            throw new IllegalArgumentException("a tap needs a sound or a contact time");
        }
        if (contactUs != null) {
            Check.positive("contactUs", contactUs);
        }
    }
}
