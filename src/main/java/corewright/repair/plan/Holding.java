package corewright.repair.plan;

import corewright.survey.Face.Posture;

/** Words for what holds the skin while the mix sets, by how one works at the face. */
public enum Holding {
    DECK(
            "weights",
            "Hold the skin down",
            "on, and nobody steps here",
            "may be walked on",
            "walk",
            "lift",
            "from below"),
    WALL("plate", "Hold the skin on", "screwed or strutted on", "may be loaded", "load", "push off", "from behind"),
    OVERHEAD(
            "props",
            "Hold the skin up",
            "under a plate, and nobody stands here",
            "may be loaded",
            "load",
            "push down",
            "from above");

    private final String thing;
    private final String head;
    private final String meanwhile;
    private final String cured;
    private final String use;
    private final String moves;
    private final String otherSide;

    Holding(String thing, String head, String meanwhile, String cured, String use, String moves, String otherSide) {
        this.thing = thing;
        this.head = head;
        this.meanwhile = meanwhile;
        this.cured = cured;
        this.use = use;
        this.moves = moves;
        this.otherSide = otherSide;
    }

    public static Holding of(Posture posture) {
        return switch (posture) {
            case DECK -> DECK;
            case WALL -> WALL;
            case OVERHEAD -> OVERHEAD;
        };
    }

    /** What holds it: {@code weights}. */
    public String thing() {
        return thing;
    }

    /** What is to be done. */
    public String head() {
        return head;
    }

    /** While it holds. */
    public String meanwhile() {
        return meanwhile;
    }

    /** When it is cured through. */
    public String cured() {
        return cured;
    }

    /** The same in a word. */
    public String use() {
        return use;
    }

    /** What a pressure in the gap does to the skin. */
    String moves() {
        return moves;
    }

    /** Where the inner skin is looked at. */
    public String otherSide() {
        return otherSide;
    }

    /** How the skin is held, in a sentence. */
    String hold() {
        return switch (this) {
            case DECK -> "hold the skin down";
            case WALL -> "screw or strut a plate over the skin";
            case OVERHEAD -> "hold the skin with a propped plate";
        };
    }

    /** In which order holes are drilled and filled, where an order by height means something. */
    public String order(boolean sloping) {
        return switch (this) {
            case DECK -> sloping ? ", in this order: low to high" : ", in this order";
            case WALL -> ", in this order: the lowest first";
            case OVERHEAD -> ", in this order";
        };
    }
}
