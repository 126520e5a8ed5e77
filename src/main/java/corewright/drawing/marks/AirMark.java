package corewright.drawing.marks;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;

/** Enclosed air by the simulated fill: a cross 2.4 on a casing. */
public record AirMark(double x, double y) implements Mark {
    private static final double SIZE = 2.4;
    private static final double CASING = 1.5;

    @Override
    public Box box() {
        return Box.round(x, y, SIZE / 2);
    }

    @Override
    public void paint(Paper paper) {
        double h = SIZE / 2;
        paper.casing(Paper.path(x - h, y - h, x + h, y + h), CASING);
        paper.casing(Paper.path(x - h, y + h, x + h, y - h), CASING);
        paper.line(Pen.EDGE, x - h, y - h, x + h, y + h);
        paper.line(Pen.EDGE, x - h, y + h, x + h, y - h);
    }
}
