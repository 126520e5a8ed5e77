package corewright.intake;

/** Of the first column {@code kind}. */
enum DrawnKind {
    OUTLINE,
    OPENING,
    DIVIDER,
    SUPPORT,
    FITTING,
    SOLID,
    LAMINATE,
    DISTURBANCE,
    ACCESS
}
