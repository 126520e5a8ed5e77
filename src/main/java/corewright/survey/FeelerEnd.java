package corewright.survey;

/** How a rod stopped: against firm core, or at its own length with the cavity going on. */
public enum FeelerEnd {
    FIRM,
    BEYOND
}
