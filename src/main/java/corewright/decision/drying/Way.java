package corewright.decision.drying;

/** How the core is opened to the air. */
public enum Way {
    /** Holes through one skin and the core, staggered. */
    THROUGH_HOLES("through-holes"),
    /** The core's edges all round are open: fittings off, a cut or an opening's edge. */
    CUT_EDGES("cut-edges"),
    /** One skin is off. */
    SKIN_OFF("skin-off");

    private final String word;

    Way(String word) {
        this.word = word;
    }

    /** As in drying.csv. */
    public String word() {
        return word;
    }
}
