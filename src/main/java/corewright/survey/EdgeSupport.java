package corewright.survey;

/** How a panel's edge is held. */
public enum EdgeSupport {
    /** Deflection held, tangential movement free. */
    SIMPLE,
    /** Deflection and tangential movement held: Navier's assumption. */
    SIMPLE_HARD,
    CLAMPED,
    FREE
}
