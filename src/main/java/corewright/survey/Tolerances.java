package corewright.survey;

/** How exactly places are known on a deck and in a plan, millimetres. What else is compared has its bound where it is used. */
public final class Tolerances {
    /** A tape laid over a deck, and a plan drawn from it, are right to this. Common practice. */
    public static final double TAPE_MM = 5;

    /** Two readings noted this far apart were taken at one place: the tape's error on both. */
    public static final double SAME_PLACE_MM = 2 * TAPE_MM;

    /** A line runs along another within this: what cutting and joining of polygons leaves, with room to spare. */
    public static final double LINE_MM = 0.01;

    /** Polygons that share an edge touch exactly; this forgives the last digit of a coordinate of a hundred metres. */
    public static final double LAST_DIGIT_MM = 1e-6;

    private Tolerances() {}
}
