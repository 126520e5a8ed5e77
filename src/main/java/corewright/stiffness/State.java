package corewright.stiffness;

import java.util.Locale;

/** A panel as it was, is, or would be. */
public enum State {
    /** Sound core everywhere. */
    AS_BUILT,
    AS_FOUND,
    /** What is loose and dry, and every void, filled; the rest as found. */
    AFTER_INJECTION,
    /** All damaged core replaced by the same kind. */
    AFTER_RECORE,
    /** What is advised of each region is done. */
    AFTER_PLAN;

    /** As in summary.json. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
