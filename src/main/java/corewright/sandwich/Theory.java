package corewright.sandwich;

/** What a figure rests on. */
public enum Theory {
    /** Small deflections; a loose skin may pass through what is below. */
    LINEAR("linear"),
    /** Small deflections; loose skins rest on what is below. */
    CONTACT("with contact of loose skins"),
    /** Contact, and von Karman's strain in all skins. */
    LARGE("with contact of loose skins and von Karman's strain"),
    /** The same, what the bonded skins' strain changes taken from places at which it was reckoned. */
    LARGE_BONDED_BETWEEN("with contact of loose skins and von Karman's strain; of bonded skins between places nearby"),
    /** Contact, times the ratio of {@link #LARGE} to {@link #CONTACT}, both parts of it from places at which they were reckoned. */
    LARGE_BETWEEN("with contact of loose skins; von Karman's strain between places nearby");

    private final String words;

    Theory(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** By what part a figure between others may truly be more: as its feet are foretold ({@code AreaPull}, {@code PanelRatios}). */
    double doubt() {
        return this == LARGE_BETWEEN ? 0.04 : this == LARGE_BONDED_BETWEEN ? 0.0075 : 0;
    }
}
