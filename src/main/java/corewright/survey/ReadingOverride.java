package corewright.survey;

/**
 * What a person thinks of one reading, whatever the program thinks of it. Readings are known by kind, id and place
 * together, as an id alone may be used twice.
 *
 * @param reason as it will stand in the findings, empty where none was given
 */
public record ReadingOverride(Kind kind, String id, Spot spot, Trust trust, String reason) {
    /** The kinds of {@link Reading}. */
    public enum Kind {
        MOISTURE,
        TAP,
        PROBE,
        FEELER,
        PLUG,
        TEMPERATURE
    }

    /** How far a reading is believed. */
    public enum Trust {
        /** It holds though the program doubts it. */
        TRUSTED,
        /** It is kept in the survey but says nothing of the deck. */
        SET_ASIDE
    }

    /** An override of that reading. */
    public static ReadingOverride of(Reading reading, Trust trust, String reason) {
        return new ReadingOverride(kind(reading), reading.id(), reading.spot(), trust, reason);
    }

    /** Whether it speaks of that reading. */
    public boolean concerns(Reading reading) {
        return kind == kind(reading) && id.equals(reading.id()) && spot.equals(reading.spot());
    }

    private static Kind kind(Reading reading) {
        if (reading instanceof Moisture) {
            return Kind.MOISTURE;
        }
        if (reading instanceof Tap) {
            return Kind.TAP;
        }
        if (reading instanceof Probe) {
            return Kind.PROBE;
        }
        if (reading instanceof Feeler) {
            return Kind.FEELER;
        }
        return reading instanceof Plug ? Kind.PLUG : Kind.TEMPERATURE;
    }
}
