package corewright.decision;

/** What can be done with a region, from least to most. */
public enum Method {
    MONITOR("monitor"),
    DRY_OUT("dry-out"),
    INJECT("inject"),
    RECORE("recore");

    private final String word;

    Method(String word) {
        this.word = word;
    }

    /** The word used in files, on cards and on screens. */
    public String word() {
        return word;
    }
}
