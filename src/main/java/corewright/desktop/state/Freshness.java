package corewright.desktop.state;

/** How what is concluded stands to the survey as it is now. */
public enum Freshness {
    /** Nothing is concluded, and nothing is being calculated. */
    NONE,
    /** Nothing is concluded yet; it is being calculated. */
    WORKING,
    /** It belongs to the survey as it is. */
    FRESH,
    /** The map follows the readings, with its parameters held; volumes and all later steps are behind. */
    MAP_ONLY,
    /** The survey has changed since. */
    STALE
}
