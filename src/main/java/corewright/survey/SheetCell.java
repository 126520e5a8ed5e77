package corewright.survey;

import java.util.regex.Pattern;

/**
 * Text of people in a cell of a CSV file: what a spreadsheet would run as a formula gets an apostrophe before it, wherever a
 * cell can start, also for a program that parts cells elsewhere than we do; and back. Common practice.
 */
public final class SheetCell {
    private static final Pattern NUMBER = Pattern.compile("[-+]?\\d+([.,]\\d+)?([eE][-+]?\\d+)?");
    private static final String START = "(?<![^;\\t\\r\\n])";
    private static final String FORMULA = "(?='*[=+@\\t\\r-])";
    private static final Pattern RISKY = Pattern.compile(START + FORMULA);
    private static final Pattern HARMLESS = Pattern.compile(START + "'" + FORMULA);

    private SheetCell() {}

    /** With apostrophes where a spreadsheet would take the text for a formula; a number stays one. */
    public static String harmless(String text) {
        return NUMBER.matcher(text).matches() ? text : RISKY.matcher(text).replaceAll("'");
    }

    /** The text as it was before {@link #harmless}. */
    public static String original(String cell) {
        return HARMLESS.matcher(cell).replaceAll("");
    }
}
