package corewright.drawing.marks;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import java.awt.geom.Path2D;
import java.util.List;

/** A pilot hole: a solid triangle 2.4 pointing down, on a 0.65 casing, the void depth in millimetres beside it. */
public record ProbeMark(double x, double y, SideFigure depth) implements Mark {
    private static final double SIDE = 2.4;
    private static final double CASING = 0.65;
    private static final double GAP = 0.7;

    /** The depth at the right. */
    public ProbeMark(double x, double y, String depth) {
        this(x, y, new SideFigure(x, y, SIDE / 2 + GAP, depth, true, 0));
    }

    /** With the depth on either side, at several heights; the usual first. */
    public static List<ProbeMark> ways(double x, double y, String depth) {
        return new ProbeMark(x, y, depth).depth.ways(figure -> new ProbeMark(x, y, figure));
    }

    private Path2D triangle() {
        return Paper.closed(x - SIDE / 2, y - SIDE / 2, x + SIDE / 2, y - SIDE / 2, x, y + SIDE / 2);
    }

    /** The triangle alone. */
    public Box sign() {
        return Box.round(x, y, SIDE / 2);
    }

    @Override
    public Box box() {
        return depth.text().isEmpty() ? sign() : sign().and(depth.box());
    }

    /** The triangle, and the depth beside it. */
    @Override
    public List<Box> parts() {
        return List.of(sign(), depth.box());
    }

    @Override
    public void paint(Paper paper) {
        paper.casing(triangle(), 2 * CASING);
        depth.paint(paper);
        paper.fill(triangle());
    }
}
