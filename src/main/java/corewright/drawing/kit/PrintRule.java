package corewright.drawing.kit;

import java.awt.geom.Path2D;

/** 100 mm with a tick every millimetre, to prove a print's scale. */
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
    public static void paint(Paper paper, double x, double y) {
        Path2D ticks = new Path2D.Double();
        for (int mm = 0; mm <= LENGTH; mm++) {
            double tall = mm % 10 == 0 ? 2 : mm % 5 == 0 ? 1.5 : 1;
            ticks.append(Paper.path(x + mm, y, x + mm, y - tall), false);
            if (mm % 10 == 0) {
                paper.text(String.valueOf(mm), x + mm, y - 2.9, FIGURE, Paper.Anchor.CENTRE);
            }
        }
        paper.draw(ticks, Pen.FAINT);
        paper.line(Pen.LEADER, x, y, x + LENGTH, y);
        paper.text(
                "Print check: this rule is 100 mm long. If it is not, print again at 100 %.",
                x + LENGTH + GAP, y - 0.2, WORDS, Paper.Anchor.LEFT);
    }
}
