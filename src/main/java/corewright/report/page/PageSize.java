package corewright.report.page;

import corewright.survey.Survey;
import corewright.survey.settings.Settings.Terms.Sheet;

/** An upright sheet for reports. The text is as wide on every sheet and stands in its middle; a shorter one holds fewer lines. */
public record PageSize(double widthMm, double heightMm) {
    public static final PageSize A4 = new PageSize(PageFrame.WIDTH, 297);
    private static final PageSize LETTER = new PageSize(Sheet.LETTER.widthMm(), Sheet.LETTER.heightMm());

    /** Below the last line of the text. */
    private static final double FOOT = 16;

    /** Letter where the survey's printer has that, else A4. */
    public static PageSize of(Survey survey) {
        return survey.settings().terms().paper() == Sheet.LETTER ? LETTER : A4;
    }

    /** As it is called in a printer's list. */
    public static String name(Survey survey) {
        return survey.settings().terms().paper() == Sheet.LETTER ? "Letter" : "A4";
    }

    /** Last place above the foot. */
    public double bodyEnd() {
        return heightMm - FOOT;
    }

    /** How far to the right of its place on A4 everything stands. */
    double shift() {
        return (widthMm - PageFrame.WIDTH) / 2;
    }
}
