package corewright.drawing.marks;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Type;
import java.awt.geom.Path2D;
import java.util.List;

/**
 * A pilot hole: a solid triangle 2.4 pointing down, on a 0.65 casing, the void depth in millimetres beside it.
 *
 * @param right the depth stands at the right, else at the left
 * @param drop how far the depth stands below the middle of the triangle
 */
public record ProbeMark(double x, double y, String depth, boolean right, double drop) implements Mark {
    private static final double SIDE = 2.4;
    private static final double CASING = 0.65;
    private static final double GAP = 0.7;

    /** The depth at the right. */
    public ProbeMark(double x, double y, String depth) {
        this(x, y, depth, true, 0);
    }

    private Path2D triangle() {
        return Paper.closed(x - SIDE / 2, y - SIDE / 2, x + SIDE / 2, y - SIDE / 2, x, y + SIDE / 2);
    }

    private double wordsMm() {
        return depth.isEmpty() ? 0 : GAP + Type.READING.width(depth);
    }

    @Override
    public Box box() {
        double top = y - SIDE / 2 + Math.min(0, drop);
        return new Box(x - SIDE / 2 - (right ? 0 : wordsMm()), top, SIDE + wordsMm(), SIDE + Math.abs(drop));
    }

    /** The triangle, and the depth beside it. */
    @Override
    public List<Box> parts() {
        double words = right ? x + SIDE / 2 : x - SIDE / 2 - wordsMm();
        double tall = Type.READING.capMm();
        return List.of(
                new Box(x - SIDE / 2, y - SIDE / 2, SIDE, SIDE), new Box(words, y + drop - tall / 2, wordsMm(), tall));
    }

    @Override
    public void paint(Paper paper) {
        paper.casing(triangle(), 2 * CASING);
        if (!depth.isEmpty()) {
            double edge = x + (right ? 1 : -1) * (SIDE / 2 + GAP);
            Paper.Anchor anchor = right ? Paper.Anchor.LEFT : Paper.Anchor.RIGHT;
            paper.haloText(depth, edge, y + drop + Type.READING.capMm() / 2, Type.READING, anchor, 0.7);
        }
        paper.fill(triangle());
    }
}
