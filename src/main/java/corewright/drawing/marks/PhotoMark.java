package corewright.drawing.marks;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Tone;
import java.awt.geom.Path2D;

/** A photograph is pinned here: a camera, its foot on the place. */
public record PhotoMark(double x, double y) implements Mark {
    private static final double WIDE = 4.2;
    private static final double TALL = 2.8;
    private static final double HUMP = 0.6;
    private static final double FOOT = 1.2;

    private Path2D outline() {
        double left = x - WIDE / 2;
        double right = x + WIDE / 2;
        double foot = y - FOOT;
        double top = foot - TALL;
        return Paper.closed(
                x,
                y,
                x - 0.7,
                foot,
                left,
                foot,
                left,
                top,
                x - 0.9,
                top,
                x - 0.6,
                top - HUMP,
                x + 0.6,
                top - HUMP,
                x + 0.9,
                top,
                right,
                top,
                right,
                foot,
                x + 0.7,
                foot);
    }

    @Override
    public Box box() {
        return new Box(x - WIDE / 2, y - FOOT - TALL - HUMP, WIDE, FOOT + TALL + HUMP);
    }

    @Override
    public void paint(Paper paper) {
        paper.casing(outline(), 1.1);
        paper.fill(outline(), Tone.WHITE);
        paper.draw(outline(), Pen.MARK);
        paper.draw(Paper.circle(x, y - FOOT - TALL / 2, 1.5), Pen.MARK);
    }
}
