package corewright.report.sheets;

/** What field sheets are printed on, lying. */
public enum SheetSize {
    A4(297, 210, "A4"),
    LETTER(279.4, 215.9, "Letter");

    final double widthMm;
    final double heightMm;
    final String word;

    SheetSize(double widthMm, double heightMm, String word) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
        this.word = word;
    }
}
