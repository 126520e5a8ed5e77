package corewright.drawing.marks;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Tone;

/**
 * Something bolted through: a square 2.6, line 0.30; metal has its lower left half filled; load-bearing stands in a frame
 * 4.2, line 0.45, as in a backing plate.
 */
public record FittingMark(double x, double y, boolean metal, boolean loadBearing) implements Mark {
    private static final double SIDE = 2.6;
    private static final double FRAME = 4.2;
    private static final Pen FRAME_PEN = Pen.solid(0.45);

    @Override
    public Box box() {
        return Box.round(x, y, loadBearing ? FRAME / 2 + 0.25 : SIDE / 2 + 0.15);
    }

    @Override
    public void paint(Paper paper) {
        if (loadBearing) {
            paper.fill(Paper.square(x, y, FRAME), Tone.WHITE);
            paper.draw(Paper.square(x, y, FRAME), FRAME_PEN);
        }
        paper.fill(Paper.square(x, y, SIDE), Tone.WHITE);
        if (metal) {
            double h = SIDE / 2;
            paper.fill(Paper.closed(x - h, y - h, x + h, y + h, x - h, y + h));
        }
        paper.draw(Paper.square(x, y, SIDE), Pen.FITTING);
    }
}
