package corewright.drawing.screen;

/** What a plan on a screen shows; each is an entry of the legend that may be touched away. */
public enum ScreenLayer {
    WET("wet"),
    DELAMINATED("delaminated"),
    WET_DELAMINATED("wet-delaminated"),
    VOID("void"),
    UNDECIDED("undecided"),
    LIKELY("likely"),
    POSSIBLE("possible"),
    READINGS("readings"),
    TAPS("taps"),
    PROBES("probes"),
    NEXT("next"),
    STRUCTURE("supports, fittings"),
    LABELS("labels"),
    /** Holes, vents and cut lines of what is decided, and the deed instead of the condition in the labels. */
    DEEDS("decided"),
    PHOTOGRAPHS("photographs"),
    MOISTURE("moisture"),
    STANDARD_ERROR("standard error"),
    VOID_DEPTH("void depth");

    private final String word;

    ScreenLayer(String word) {
        this.word = word;
    }

    /** As the legend names it. */
    public String word() {
        return word;
    }

    /** A surface lies under everything else; at most one is seen at a time. */
    public boolean surface() {
        return this == MOISTURE || this == STANDARD_ERROR || this == VOID_DEPTH;
    }
}
