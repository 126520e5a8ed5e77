package corewright.survey;

/**
 * How one works at a face: standing over it, before it, or under it. What holds a skin, where mix runs and which words are true
 * follow from it.
 */
public enum Posture {
    /** Weights lie, people walk, mix stays in a hole. */
    DECK,
    /** Nothing lies by itself; liquid mix presses on what is below it. */
    WALL,
    /** What is loose falls, and mix runs out of every open hole onto whoever works there. */
    OVERHEAD;

    /** Steeper than this nobody stands on and no weight stays on. Practice. */
    private static final double DECK_TO_DEG = 45;

    /** A wall may lean over by a third of a right angle before its holes drain downwards rather than along it. Practice. */
    private static final double WALL_TO_DEG = 120;

    /** @param tiltDeg 0 flat, 90 wall, 180 overhead */
    static Posture of(double tiltDeg) {
        return tiltDeg <= DECK_TO_DEG ? DECK : tiltDeg <= WALL_TO_DEG ? WALL : OVERHEAD;
    }
}
