package corewright.drawing.kit;

import java.awt.geom.Path2D;

/** 100 mm with a tick every millimetre, or 4 inches in sixteenths, to prove a print's scale. */
public final class PrintRule {
    private static final Type FIGURE = new Type(Typeface.CONDENSED, 6.5);
    private static final Type WORDS = new Type(Typeface.TEXT, 6.5);
    private static final double LENGTH = 100;
    private static final double GAP = 3;

    private PrintRule() {}

    /**
     * The rule and, at its right, what it is for.
     *
     * @param x of nought
     * @param y of the rule's back; it stands 5 mm tall above
     */
    public static void paint(Paper paper, double x, double y, Measure measure) {
        paper.part(Parts.Part.ASIDE, p -> rule(p, x, y, measure));
    }

    private static void rule(Paper paper, double x, double y, Measure measure) {
        if (measure == Measure.US) {
            inches(paper, x, y);
            return;
        }
        Path2D ticks = new Path2D.Double();
        for (int mm = 0; mm <= LENGTH; mm++) {
            double tall = mm % 10 == 0 ? 2 : mm % 5 == 0 ? 1.5 : 1;
            ticks.append(Paper.path(x + mm, y, x + mm, y - tall), false);
            if (mm % 10 == 0) {
                paper.text(String.valueOf(mm), x + mm, y - 2.9, FIGURE, Paper.Anchor.CENTRE);
            }
        }
        finish(paper, ticks, x, y, LENGTH, "100 mm");
    }

    /** Four inches in sixteenths. */
    private static void inches(Paper paper, double x, double y) {
        Path2D ticks = new Path2D.Double();
        for (int sixteenth = 0; sixteenth <= 64; sixteenth++) {
            double at = x + sixteenth * Measure.MM_PER_INCH / 16;
            double tall = sixteenth % 16 == 0 ? 2 : sixteenth % 4 == 0 ? 1.5 : 1;
            ticks.append(Paper.path(at, y, at, y - tall), false);
            if (sixteenth % 16 == 0) {
                paper.text(String.valueOf(sixteenth / 16), at, y - 2.9, FIGURE, Paper.Anchor.CENTRE);
            }
        }
        finish(paper, ticks, x, y, 4 * Measure.MM_PER_INCH, "4 in");
    }

    private static void finish(Paper paper, Path2D ticks, double x, double y, double length, String called) {
        paper.draw(ticks, Pen.FAINT);
        paper.line(Pen.LEADER, x, y, x + length, y);
        String words = "Print check: this rule is " + called + " long. If it is not, print again at 100 %.";
        paper.text(words, x + length + GAP, y - 0.2, WORDS, Paper.Anchor.LEFT);
    }
}
