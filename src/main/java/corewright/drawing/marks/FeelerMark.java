package corewright.drawing.marks;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import java.awt.geom.Path2D;

/**
 * A rod pushed in under the skin: a slot 2.8 open towards the cavity (0.45) where it went in, the rod 0.30, ending in a bar
 * 2.2 long and 0.50 thick where it met firm core, or in an open arrow where the cavity goes on.
 */
public record FeelerMark(double x1, double y1, double x2, double y2, boolean firm) implements Mark {
    private static final double SLOT = 2.8;
    private static final double BAR = 2.2;
    private static final double ARROW = 1.3;
    private static final Pen SLOT_PEN = Pen.solid(0.45);
    private static final Pen BAR_PEN = Pen.solid(0.50);
    private static final Pen ROD = Pen.solid(0.30);

    @Override
    public Box box() {
        return Box.between(x1, y1, x2, y2).grown(SLOT / 2);
    }

    @Override
    public void paint(Paper paper) {
        double length = Math.max(Math.hypot(x2 - x1, y2 - y1), 1e-9);
        double ux = (x2 - x1) / length;
        double uy = (y2 - y1) / length;
        Path2D rod = Paper.path(x1, y1, x2, y2);
        Path2D slot = slot(x1, y1, ux, uy);
        Path2D end = firm
                ? Paper.path(x2 - uy * BAR / 2, y2 + ux * BAR / 2, x2 + uy * BAR / 2, y2 - ux * BAR / 2)
                : Paper.path(
                        x2 - ux * ARROW - uy * ARROW * 0.7,
                        y2 - uy * ARROW + ux * ARROW * 0.7,
                        x2,
                        y2,
                        x2 - ux * ARROW + uy * ARROW * 0.7,
                        y2 - uy * ARROW - ux * ARROW * 0.7);
        for (Path2D part : new Path2D[] {rod, slot, end}) {
            paper.casing(part, 1.5);
        }
        paper.draw(rod, ROD);
        paper.draw(slot, SLOT_PEN);
        paper.draw(end, firm ? BAR_PEN : ROD);
    }

    /** An access alone, open towards (ux, uy). */
    static Path2D slot(double x, double y, double ux, double uy) {
        double h = SLOT / 2;
        double depth = SLOT / 2;
        return Paper.path(
                x + ux * depth / 2 - uy * h,
                y + uy * depth / 2 + ux * h,
                x - ux * depth - uy * h,
                y - uy * depth + ux * h,
                x - ux * depth + uy * h,
                y - uy * depth - ux * h,
                x + ux * depth / 2 + uy * h,
                y + uy * depth / 2 - ux * h);
    }
}
