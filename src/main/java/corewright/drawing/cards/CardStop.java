package corewright.drawing.cards;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Tone;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.drawing.marks.Mark;
import java.util.List;

/**
 * A depth stop on a work card: the collar as a bar over its figure in millimetres, on a paper ground.
 *
 * @param x middle
 * @param y top of the bar
 */
record CardStop(double x, double y, String figure, Type type) implements Mark {
    private static final double BAR = 0.6;
    private static final double GAP = 0.7;
    private static final double OVER = 0.3;
    private static final double AWAY = 0.9;

    /** Places for it about a disc, the best first. */
    static List<CardStop> beside(double x, double y, double diameter, String figure) {
        Type type = new Type(Typeface.CONDENSED_SEMIBOLD, diameter > 7 ? 13 : diameter > 6 ? 11 : 9.5);
        CardStop at = new CardStop(x, y, figure, type);
        double side = diameter / 2 + AWAY + at.box().width() / 2;
        double high = at.box().height();
        double below = y + diameter / 2 + AWAY;
        double above = y - diameter / 2 - AWAY - high;
        double level = y - high / 2;
        return List.of(
                at.at(x, below),
                at.at(x, above),
                at.at(x + side, level),
                at.at(x - side, level),
                at.at(x + 0.8 * side, below - 0.35 * diameter),
                at.at(x - 0.8 * side, below - 0.35 * diameter),
                at.at(x + 0.8 * side, above + 0.35 * diameter),
                at.at(x - 0.8 * side, above + 0.35 * diameter));
    }

    private CardStop at(double otherX, double otherY) {
        return new CardStop(otherX, otherY, figure, type);
    }

    @Override
    public Box box() {
        double width = type.width(figure) + 2 * OVER;
        return new Box(x - width / 2, y, width, BAR + GAP + type.capMm());
    }

    @Override
    public void paint(Paper paper) {
        Box box = box();
        paper.fill(box.grown(0.4).shape(), Tone.WHITE);
        paper.draw(Paper.path(box.x(), y + BAR / 2, box.right(), y + BAR / 2), Pen.solid(BAR));
        paper.text(figure, x, box.bottom(), type, Paper.Anchor.CENTRE);
    }
}
