package corewright.drawing.marks;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.PlanView;
import corewright.repair.plan.Hole;
import java.awt.geom.Path2D;
import org.jspecify.annotations.Nullable;

/**
 * A long nozzle pushed in through an opening that is there: a slot 2.8 where it goes in, two rails 0.9 apart, a solid
 * arrowhead at its mouth. Nothing is drilled there, so it is not round.
 *
 * @param x1 where it goes in, page millimetres
 * @param x2 its mouth
 * @param head length of the arrowhead
 */
public record NozzleMark(double x1, double y1, double x2, double y2, double head) implements Mark {
    private static final double RAILS = 0.9;
    private static final double SLENDER = 0.42;
    private static final Pen RAIL = Pen.solid(0.25);
    private static final Pen SLOT = Pen.solid(0.45);

    /** Null where a hole is drilled. */
    public static @Nullable NozzleMark of(Hole hole, PlanView view, double head) {
        Hole.Nozzle nozzle = hole.nozzle();
        return nozzle == null
                ? null
                : new NozzleMark(
                        view.x(nozzle.in().xMm()),
                        view.y(nozzle.in().yMm()),
                        view.x(hole.spot().xMm()),
                        view.y(hole.spot().yMm()),
                        head);
    }

    @Override
    public Box box() {
        return Box.round(x2, y2, head / 2);
    }

    @Override
    public void paint(Paper paper) {
        double length = Math.max(Math.hypot(x2 - x1, y2 - y1), 1e-9);
        double ux = (x2 - x1) / length;
        double uy = (y2 - y1) / length;
        double neck = Math.max(0, length - head / 2);
        double h = RAILS / 2;
        Path2D left = Paper.path(x1 - uy * h, y1 + ux * h, x1 + ux * neck - uy * h, y1 + uy * neck + ux * h);
        Path2D right = Paper.path(x1 + uy * h, y1 - ux * h, x1 + ux * neck + uy * h, y1 + uy * neck - ux * h);
        Path2D slot = FeelerMark.slot(x1, y1, ux, uy);
        Path2D mouth = mouth(ux, uy);
        paper.casing(Paper.path(x1, y1, x2, y2), RAILS + 1.2);
        paper.casing(mouth, 1.2);
        paper.draw(left, RAIL);
        paper.draw(right, RAIL);
        paper.draw(slot, SLOT);
        paper.fill(mouth);
    }

    private Path2D mouth(double ux, double uy) {
        double half = SLENDER * head;
        double backX = x2 - ux * head / 2;
        double backY = y2 - uy * head / 2;
        return Paper.closed(
                x2 + ux * head / 2,
                y2 + uy * head / 2,
                backX - uy * half,
                backY + ux * half,
                backX + uy * half,
                backY - ux * half);
    }
}
