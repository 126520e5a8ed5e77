package corewright.survey.settings;

/**
 * In which terms the reader wants figures; nothing that is stored or calculated depends on it.
 *
 * @param display units on pages, cards, maps, in the window and in findings
 * @param decimal sign there
 * @param csv decimal sign in the tables of a run; with a comma the fields are parted by semicolons, as spreadsheets of comma
 *     countries expect
 */
public record Terms(Display display, Sign decimal, Sign csv) {
    public static final Terms DEFAULT = new Terms(Display.METRIC, Sign.POINT, Sign.POINT);

    /** Millimetres, square metres, litres; or inches, square feet, US quarts. */
    public enum Display {
        METRIC,
        US
    }

    /** Between the whole and its parts. */
    public enum Sign {
        POINT,
        COMMA
    }
}
