package corewright.drawing.marks;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;

/**
 * What stands beside a hole: its number bold 7 pt, or its depth stop, a collar bar 0.60 over the figure in millimetres as
 * the collar sits on the bit.
 *
 * @param x left end
 * @param y middle
 * @param stop a depth stop, not a number
 */
public record HoleLabel(double x, double y, String text, boolean stop) implements Mark {
    static final Type NUMBER = new Type(Typeface.TEXT_BOLD, 7);
    static final Type STOP = new Type(Typeface.CONDENSED_SEMIBOLD, 6.5);
    private static final Pen COLLAR = Pen.solid(0.60);
    private static final double COLLAR_GAP = 0.5;

    private Type type() {
        return stop ? STOP : NUMBER;
    }

    public static double width(String text, boolean stop) {
        return (stop ? STOP : NUMBER).width(text);
    }

    public static double height(boolean stop) {
        return stop ? STOP.capMm() + COLLAR_GAP + 0.6 : NUMBER.capMm();
    }

    @Override
    public Box box() {
        return new Box(x, y - height(stop) / 2, width(text, stop), height(stop));
    }

    @Override
    public void paint(Paper paper) {
        double foot = y + height(stop) / 2;
        double right = x + width(text, stop);
        if (stop) {
            double bar = y - height(true) / 2 + 0.3;
            paper.casing(Paper.path(x - 0.4, bar, right + 0.4, bar), 1.4);
            paper.haloText(text, x, foot, type(), Paper.Anchor.LEFT, 0.6);
            paper.draw(Paper.path(x, bar, right, bar), COLLAR);
        } else {
            paper.haloText(text, x, foot, type(), Paper.Anchor.LEFT, 0.6);
        }
    }
}
