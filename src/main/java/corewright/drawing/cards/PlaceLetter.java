package corewright.drawing.cards;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import java.awt.Color;
import java.awt.geom.Rectangle2D;

/** A place to read at, by its letter in a square. */
final class PlaceLetter {
    /** Side of the square, mm on paper. */
    static final double SIDE = 5.2;

    private static final Type LETTER = new Type(Typeface.TEXT_BOLD, 10);

    private PlaceLetter() {}

    /** Paints it and returns the room it takes. */
    static Box paint(Paper paper, char letter, double x, double y) {
        Rectangle2D ground = Paper.square(x, y, SIDE);
        paper.fill(ground, Color.WHITE);
        paper.draw(ground, Pen.MARK);
        paper.text(String.valueOf(letter), x, y + LETTER.capMm() / 2, LETTER, Paper.Anchor.CENTRE);
        return Box.of(ground);
    }
}
