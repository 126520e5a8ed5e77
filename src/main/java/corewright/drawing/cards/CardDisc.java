package corewright.drawing.cards;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Tone;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.drawing.marks.Mark;

/**
 * A hole on a work card: injection a disc with its number in paper colour, vent a ring with its number, on a casing.
 *
 * @param diameter 7.8 where holes stand far enough apart
 */
record CardDisc(double x, double y, String number, boolean vent, double diameter) implements Mark {
    private static final double CASING = 0.7;
    private static final double EM = 0.68;
    private static final double VENT_EM = 0.56;
    private static final double RING = 0.7;
    private static final double POINT = 25.4 / 72;

    @Override
    public Box box() {
        return Box.round(x, y, diameter / 2);
    }

    /** Number of two figures or a letter and a figure need a narrower face. */
    private Type type() {
        boolean narrow = vent || number.length() > 1;
        double em = diameter * (vent ? VENT_EM : EM) / POINT;
        return new Type(narrow ? Typeface.CONDENSED_BOLD : Typeface.TEXT_BOLD, em);
    }

    @Override
    public void paint(Paper paper) {
        paper.fill(Paper.circle(x, y, diameter + 2 * CASING), Tone.WHITE);
        double foot = y + type().capMm() / 2;
        if (vent) {
            double ring = RING * diameter / 7.8;
            paper.draw(Paper.circle(x, y, diameter - ring), Pen.solid(ring));
            paper.text(number, x, foot, type(), Paper.Anchor.CENTRE);
        } else {
            paper.disc(x, y, diameter);
            paper.text(number, x, foot, type(), Paper.Anchor.CENTRE, Tone.WHITE);
        }
    }
}
