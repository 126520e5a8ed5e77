package corewright.desktop.setup;

/** What can be changed of the survey's head, a face, a meter or a laminate. */
public enum SetupField {
    NAME("name"),
    KIND("kind"),
    FULL_SCALE("end of scale"),
    DRY("dry reading"),
    WET("wet reading"),
    OUTER("outer skin"),
    CORE_MM("core"),
    INNER("inner skin"),
    SKIN("skin material"),
    CORE("core material"),
    MEASURED("thicknesses"),
    SURVEYED("date"),
    VESSEL("vessel"),
    CLIENT("client"),
    SURVEYOR("surveyor"),
    WEATHER("weather"),
    ASHORE("days ashore"),
    TILT("tilt, degrees"),
    UPHILL("uphill, degrees"),
    EDGE("its edge is"),
    LAMINATE("laminate");

    private final String word;

    SetupField(String word) {
        this.word = word;
    }

    /** As the column's head says it. */
    public String word() {
        return word;
    }

    boolean thickness() {
        return this == OUTER || this == CORE_MM || this == INNER;
    }
}
