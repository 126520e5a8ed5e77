package corewright.damage;

/** The state of the core at a place. Wet and loose are independent; void implies loose and says nothing of water. */
public enum Condition {
    SOUND("sound"),
    WET("wet"),
    DELAMINATED("delaminated"),
    WET_DELAMINATED("wet-delaminated"),
    VOID("void");

    private final String word;

    Condition(String word) {
        this.word = word;
    }

    /** The word used in files, on maps and on screens. */
    public String word() {
        return word;
    }

    /** The skin is off the core. */
    public boolean loose() {
        return this == DELAMINATED || this == WET_DELAMINATED || this == VOID;
    }
}
