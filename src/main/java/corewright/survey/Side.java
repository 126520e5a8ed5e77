package corewright.survey;

/** The skin a reading was taken on: from above or, inside the boat, from below. */
public enum Side {
    OUTER,
    INNER
}
