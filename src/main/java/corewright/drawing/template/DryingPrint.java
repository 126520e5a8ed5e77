package corewright.drawing.template;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;

/** A hole of many that are alike and stay open, at full size: the bit's circle and a cross, no number. */
record DryingPrint(double x, double y, double bitMm) {
    private static final double CROSS = 14;

    Box box() {
        return Box.round(x, y, CROSS / 2);
    }

    void paint(Paper paper) {
        Box cross = box();
        paper.draw(Paper.circle(x, y, bitMm), Pen.MARK);
        paper.line(Pen.LEADER, cross.x(), y, cross.right(), y);
        paper.line(Pen.LEADER, x, cross.y(), x, cross.bottom());
    }
}
