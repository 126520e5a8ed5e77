package corewright.drawing.plates;

/** What a plate is about. */
public enum PlateKind {
    CONDITION("condition", "condition of the core"),
    REPAIR("repair", "repair of the core"),
    FILL_CHECK("fill-check", "fill check");

    private final String word;
    private final String title;

    PlateKind(String word, String title) {
        this.word = word;
        this.title = title;
    }

    /** The end of the plate's name. */
    public String word() {
        return word;
    }

    String title() {
        return title;
    }
}
