package corewright.sandwich.spec;

/** How an edge of a panel is held. */
public enum Support {
    /** Deflection held, all else free ("soft" simple support). */
    SIMPLE,
    /** Also the displacement and the rotation along the edge ("hard" simple support, Navier's assumption). */
    SIMPLE_HARD,
    /** Everything held. */
    CLAMPED,
    /** Nothing held. */
    FREE
}
