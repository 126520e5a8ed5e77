package corewright.survey;

/**
 * What a person thinks of one reading, whatever the program thinks of it.
 *
 * @param reason as it will stand in the findings, empty where none was given
 */
public record ReadingOverride(Reading.Kind kind, String id, Spot spot, Trust trust, String reason) {
    /** How far a reading is believed. */
    public enum Trust {
        /** It holds though the program doubts it. */
        TRUSTED,
        /** It is kept in the survey but says nothing of the deck. */
        SET_ASIDE
    }

    /** An override of that reading. */
    public static ReadingOverride of(Reading reading, Trust trust, String reason) {
        return new ReadingOverride(reading.key().kind(), reading.id(), reading.spot(), trust, reason);
    }

    /** Whether it speaks of that reading. */
    public boolean concerns(Reading reading) {
        return key().equals(reading.key());
    }

    /** Of the reading it speaks of. */
    public Reading.Key key() {
        return new Reading.Key(kind, id, spot);
    }
}
