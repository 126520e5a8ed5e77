package corewright.field;

/** What kriging estimates. */
public enum Target {
    /** The value itself, the nugget being real variation at a scale finer than the samples: exact at the samples. */
    VALUE,
    /** The smooth structure below it: nugget and sample error are noise, and leave the estimate's variance. */
    SIGNAL
}
