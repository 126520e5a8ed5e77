package corewright.drawing.marks;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Type;
import java.awt.geom.Path2D;

/** A pilot hole: a solid triangle 2.4 pointing down, on a 0.65 casing, the void depth in millimetres at its right. */
public record ProbeMark(double x, double y, String depth) implements Mark {
    private static final double SIDE = 2.4;
    private static final double CASING = 0.65;
    private static final double GAP = 0.7;

    private Path2D triangle() {
        return Paper.closed(x - SIDE / 2, y - SIDE / 2, x + SIDE / 2, y - SIDE / 2, x, y + SIDE / 2);
    }

    @Override
    public Box box() {
        double right = depth.isEmpty() ? 0 : GAP + Type.READING.width(depth);
        return new Box(x - SIDE / 2, y - SIDE / 2, SIDE + right, SIDE);
    }

    @Override
    public void paint(Paper paper) {
        paper.casing(triangle(), 2 * CASING);
        if (!depth.isEmpty()) {
            double left = x + SIDE / 2 + GAP;
            paper.haloText(depth, left, y + Type.READING.capMm() / 2, Type.READING, Paper.Anchor.LEFT, 0.7);
        }
        paper.fill(triangle());
    }
}
