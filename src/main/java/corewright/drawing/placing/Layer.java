package corewright.drawing.placing;

/** What a map shows besides the deck's edge, its structure and the regions. */
public enum Layer {
    /** Meter readings and taps. */
    READINGS,
    /** Pilot holes, feelers, accesses and plugs. */
    PROBES,
    /** Where to read next. */
    NEXT,
    /** Filled spaces with warmth and taps after cure instead of the regions' patterns and readings. */
    FILL_CHECK,
    /** Injection holes and vents of the decided plans, with numbers. */
    HOLES,

    /** The same in somebody's hand, who draws them: words only keep clear of them. */
    HELD_HOLES,
    /** Beside each injection hole the depth at which the drill stops. */
    DEPTH_STOPS,
    /** Cut lines of the decided plans. */
    CUTS,
    /** Letters and rows for finding a place by voice, with their lines. */
    VOICE_GRID,
    /** Frame and keep-out round load-bearing fittings. */
    BACKING,
    /** Number, condition and figures of every region, with leaders. */
    REGION_LABELS,
    /** What is decided for every region instead of its condition; goes with {@link #REGION_LABELS}. */
    METHODS,
    /** Names of openings, dividers, supports and fittings. */
    FEATURE_NAMES,
    DATUM,
    /** The comb and the ramp, in a free corner. */
    SCALE_AND_UPHILL
}
