package corewright.sandwich;

/** What a figure rests on. */
public enum Theory {
    /** Small deflections; a loose skin may pass through what is below. */
    LINEAR("linear"),
    /** Small deflections; loose skins rest on what is below. */
    CONTACT("with contact of loose skins"),
    /** Contact, and von Karman's strain where skins are loose. */
    LARGE("with contact of loose skins and von Karman's strain"),
    /** Contact, times the ratio of {@link #LARGE} to {@link #CONTACT} between places at which both were reckoned. */
    LARGE_BETWEEN("with contact of loose skins; von Karman's strain between places nearby");

    private final String words;

    Theory(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
