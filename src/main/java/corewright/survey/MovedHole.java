package corewright.survey;

/**
 * A hole or vent that a person placed, or took away. Plans change with every reading, so it is known by where the plan had put it.
 *
 * @param kind what it is now
 * @param planned where the program had put it
 * @param spot where it is to be drilled, on the same face; where it stood, of one taken away
 */
public record MovedHole(Kind kind, Spot planned, Spot spot) {
    /** What a person made of a place. */
    public enum Kind {
        /** An injection hole; the pattern is made round it. */
        HOLE,
        /** Taken away: of its space only the injection holes that a person placed are left. */
        NO_HOLE,
        /** A vent: of its space only the vents that a person placed are left. */
        VENT,
        /** A vent taken away, likewise. */
        NO_VENT
    }

    public MovedHole {
        if (!planned.face().equals(spot.face())) {
            throw new IllegalArgumentException("a hole stays on its face");
        }
    }

    /** An injection hole. */
    public MovedHole(Spot planned, Spot spot) {
        this(Kind.HOLE, planned, spot);
    }

    /** Whether something is drilled there. */
    public boolean drilled() {
        return kind == Kind.HOLE || kind == Kind.VENT;
    }

    /** Whether it is about vents. */
    public boolean ofVents() {
        return kind == Kind.VENT || kind == Kind.NO_VENT;
    }
}
