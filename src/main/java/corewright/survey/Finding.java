package corewright.survey;

import org.jspecify.annotations.Nullable;

/**
 * Something a person should know: a reading doubted or set aside, a thing assumed, a thing that cannot be known. Not an
 * error: the survey is worked on all the same.
 *
 * @param id the reading's or region's id, empty where none
 * @param spot where on the boat, null where nowhere in particular
 * @param subject what it is about, a word or two
 * @param message place, fact
 * @param effect what it does to the result
 */
public record Finding(
        Severity severity,
        Origin origin,
        String id,
        @Nullable Spot spot,
        String subject,
        String message,
        String effect) {
    /** From what can hurt or spoil to what would merely help. */
    public enum Severity {
        /** Can hurt somebody or spoil the work. */
        HAZARD,
        /** The result is less certain for it. */
        DOUBT,
        /** Would make the result better. */
        HINT
    }
}
