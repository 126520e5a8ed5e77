package corewright.damage;

import corewright.survey.Spot;

/**
 * A place worth reading next.
 *
 * @param rank 1 tells most
 * @param kind moisture, tap or probe
 * @param gain what is expected to become certain, in {@code unit}
 * @param decisions how many regions are expected to get another method by it
 */
public record NextReading(int rank, Kind kind, Spot spot, double gain, Unit unit, double decisions) {
    /** Before anything was decided. */
    public NextReading(int rank, Kind kind, Spot spot, double gain, Unit unit) {
        this(rank, kind, spot, gain, unit, 0);
    }

    /** What to do there. */
    public enum Kind {
        MOISTURE("moisture"),
        TAP("tap"),
        PROBE("probe");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The word used in files and on maps. */
        public String word() {
            return word;
        }
    }

    /** What the gain is counted in. */
    public enum Unit {
        SQUARE_METRE("m2"),
        LITRE("l");

        private final String symbol;

        Unit(String symbol) {
            this.symbol = symbol;
        }

        /** As written in files. */
        public String symbol() {
            return symbol;
        }
    }
}
