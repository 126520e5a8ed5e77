package corewright.survey;

/** What a pilot hole brought up. */
public enum CoreState {
    DRY,
    DAMP,
    WET,
    ROTTED,
    NONE
}
