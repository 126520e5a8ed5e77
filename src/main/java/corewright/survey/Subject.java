package corewright.survey;

/** What kind of fact a finding tells. */
public enum Subject {
    // of readings
    REPEATED_ID("repeated id", Standing.DOUBTED),
    OUTSIDE("outside", Standing.SET_ASIDE),
    IN_AN_OPENING("in an opening", Standing.SET_ASIDE),
    /** Over solid laminate. */
    OFF_THE_CORE("off the core", Standing.SET_ASIDE),
    VOID_DEPTH("void depth", Standing.DOUBTED),
    OFF_SCALE("off scale", Standing.DOUBTED),
    METAL("metal", Standing.DOUBTED),
    CONTRADICTION("contradiction", Standing.DOUBTED),
    EARLIER_READING("earlier reading", Standing.SET_ASIDE),
    TAP_FROM_BELOW("tap from below", Standing.SET_ASIDE),
    TRUSTED("judgement"),
    SET_ASIDE("judgement", Standing.SET_ASIDE),
    JUDGEMENT_OF_NOTHING("judgement"),

    // of a face or bay
    NO_READING("no reading"),
    NO_MOISTURE("no moisture"),
    NO_TAPS("no taps"),
    NO_PROBES("no probes"),
    FEW_READINGS("few readings"),
    ALL_EQUAL("all equal"),
    NUMERICS("numerics"),
    UPHILL("uphill"),
    SIDE("side"),

    // of what is drawn, built and laid on it
    PLAN("plan"),
    DRAWING("drawing"),
    DIVIDER("divider"),
    SUPPORT("support"),
    PANEL("panel"),
    PANEL_LEFT_OUT("panel left out"),
    LAMINATE("laminate"),
    LOAD("load"),

    // of regions and the work on them
    DRY_CORE("dry core"),
    METHOD_BY_HAND("method by hand"),
    RULE_BY_HAND("rule by hand"),
    COVERAGE("coverage"),
    WORK_LOG("work log"),
    REPAIR_PLAN("repair plan"),
    FILL_CHECK("fill check"),

    // of the survey as a whole
    PLAUSIBILITY("plausibility"),
    COVERAGE_OF_READINGS("coverage of readings"),

    // of this program
    DEFECT("defect"),

    // of files
    METER("meter"),
    METER_SCALE("meter scale"),
    MATERIAL("material"),
    RESIN("resin"),
    NAME("name"),
    PICTURE("picture"),
    UNKNOWN_KEY("unknown key"),
    UNUSED_COLUMNS("unused columns"),
    UNREAD_COLUMN("unread column"),
    CONTROL_CHARACTERS("control characters"),
    UNREAD_FILE("unread file");

    /** What a finding leaves of the reading it is about. */
    public enum Standing {
        TAKEN,
        DOUBTED,
        SET_ASIDE
    }

    private final String word;
    private final Standing standing;

    Subject(String word) {
        this(word, Standing.TAKEN);
    }

    Subject(String word, Standing standing) {
        this.word = word;
        this.standing = standing;
    }

    /** As it is printed. */
    public String word() {
        return word;
    }

    /** What is left of the reading, where the finding is about one. */
    public Standing standing() {
        return standing;
    }
}
