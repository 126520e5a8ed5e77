package corewright.assessment;

/** How a long calculation speaks to whoever started it. */
public interface Progress {
    /** Nobody listens and nobody cancels. */
    Progress NONE = (stage, fraction) -> {};

    /**
     * A stage begins.
     *
     * @param stage its name, for people and for timings
     * @param fraction of the whole that is done
     * @throws java.util.concurrent.CancellationException where the work is no longer wanted
     */
    void begin(String stage, double fraction);

    /** The map is there, long before what is concluded from it; for whoever can show it, and follow changes with it. */
    default void mapped(Assessed early) {}
}
