package corewright.drawing.kit;

import corewright.survey.Survey;
import corewright.survey.settings.Settings.Terms.Sheet;

/**
 * What maps, cards and field sheets are printed on, lying. They are laid out as on A4, from {@link #LEFT} to {@link #rightMm}, and painted
 * so far to the right that they stand in the middle.
 */
public enum LyingSheet {
    A4(297, 210, "A4"),
    LETTER(Sheet.LETTER.heightMm(), Sheet.LETTER.widthMm(), "Letter");

    /** Where everything begins. */
    public static final double LEFT = 12;

    /** Left free at either side at least: what common printers cannot reach is a quarter of an inch. */
    private static final double LEAST_MARGIN = 8;

    private static final double A4_FOOT = 206;

    private final double widthMm;
    private final double heightMm;
    private final String word;

    LyingSheet(double widthMm, double heightMm, String word) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
        this.word = word;
    }

    /** Letter where the survey's printer has that, else A4. */
    public static LyingSheet of(Survey survey) {
        return survey.settings().terms().paper() == Sheet.LETTER ? LETTER : A4;
    }

    public double widthMm() {
        return widthMm;
    }

    public double heightMm() {
        return heightMm;
    }

    /** As it is called in a printer's list. */
    public String word() {
        return word;
    }

    /** Where everything ends. */
    public double rightMm() {
        return this == A4 ? widthMm - LEFT : widthMm - 2 * LEAST_MARGIN + LEFT;
    }

    /** Where a line at the foot stands: as far below what is laid out as above the edge. */
    public double footMm() {
        return A4_FOOT + (heightMm - A4.heightMm) / 2;
    }

    /** How far to the right what is laid out so is painted. */
    public double shiftMm() {
        return shiftMm(rightMm());
    }

    /** The same of what is laid out to end elsewhere. */
    public double shiftMm(double rightMm) {
        return (widthMm - LEFT - rightMm) / 2;
    }
}
