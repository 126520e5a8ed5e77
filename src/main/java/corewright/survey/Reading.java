package corewright.survey;

/** One observation at one place. */
public sealed interface Reading permits Moisture, Tap, Probe, Feeler, Plug, SurfaceTemperature {
    Origin origin();

    /** The surveyor's own name of it, or file:line where none was given. */
    String id();

    /** Where it was taken; for a feeler the place where the rod went in. */
    Spot spot();

    /** By which it is known. */
    default Key key() {
        return new Key(Kind.of(this), id(), spot());
    }

    /** Readings are known by kind, id and place together, as an id alone may be used twice. */
    record Key(Kind kind, String id, Spot spot) {}

    /** The kinds of readings. */
    enum Kind {
        MOISTURE,
        TAP,
        PROBE,
        FEELER,
        PLUG,
        TEMPERATURE;

        private static Kind of(Reading reading) {
            if (reading instanceof Moisture) {
                return MOISTURE;
            }
            if (reading instanceof Tap) {
                return TAP;
            }
            if (reading instanceof Probe) {
                return PROBE;
            }
            if (reading instanceof Feeler) {
                return FEELER;
            }
            return reading instanceof Plug ? PLUG : TEMPERATURE;
        }
    }
}
