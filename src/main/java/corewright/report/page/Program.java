package corewright.report.page;

/** What this program calls itself on its documents. */
public final class Program {
    /** As in the pom. */
    public static final String VERSION = "0.1.0";

    private Program() {}
}
