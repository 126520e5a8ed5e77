package corewright.assessment;

/** How a part of an assessment stands to the survey as it is now. */
public enum Age {
    /** It belongs to the survey as it is. */
    FRESH,
    /** It is of before the last change. */
    OLD,
    /** There is nothing yet. */
    AWAITED
}
