package corewright.drawing.cards;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.drawing.marks.Mark;
import corewright.drawing.marks.NozzleMark;
import java.util.List;

/**
 * A nozzle on a work card, its number beside its mouth.
 *
 * @param x left of the number, page millimetres
 * @param y middle of the number
 * @param diameter of the discs on this card
 */
record CardNozzle(NozzleMark nozzle, String number, double x, double y, double diameter) implements Mark {
    private static final double EM = 0.68;
    private static final double POINT = 25.4 / 72;
    private static final double GAP = 0.8;

    /** Places for the number, the best first: ahead, behind, above and below the mouth. */
    static List<CardNozzle> around(NozzleMark nozzle, String number, double diameter) {
        Type type = type(diameter);
        double away = nozzle.head() / 2 + GAP;
        double right = nozzle.x2() + away;
        double left = nozzle.x2() - away - type.width(number);
        double middle = nozzle.x2() - type.width(number) / 2;
        double up = away + type.capMm() / 2;
        boolean aft = nozzle.x2() >= nozzle.x1();
        return List.of(
                new CardNozzle(nozzle, number, aft ? right : left, nozzle.y2(), diameter),
                new CardNozzle(nozzle, number, middle, nozzle.y2() - up, diameter),
                new CardNozzle(nozzle, number, middle, nozzle.y2() + up, diameter),
                new CardNozzle(nozzle, number, aft ? left : right, nozzle.y2(), diameter));
    }

    private static Type type(double diameter) {
        return new Type(Typeface.CONDENSED_BOLD, diameter * EM / POINT);
    }

    /** Of the number. */
    @Override
    public Box box() {
        Type type = type(diameter);
        return new Box(x, y - type.capMm() / 2, type.width(number), type.capMm());
    }

    @Override
    public void paint(Paper paper) {
        nozzle.paint(paper);
        Type type = type(diameter);
        paper.haloText(number, x, y + type.capMm() / 2, type, Paper.Anchor.LEFT, 0.7);
    }
}
