package corewright.drawing.marks;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Tone;
import java.util.List;

/**
 * A core sample: a ring 2.6 with a ring 1.2 inside, as a hole saw leaves it, and beside it the water in per cent of dry
 * mass, the one true percentage on a map.
 */
public record PlugMark(double x, double y, SideFigure percent) implements Mark {
    private static final double OUTER = 2.6;
    private static final double INNER = 1.2;
    private static final double GAP = 0.6;

    /** The figure at the right. */
    public PlugMark(double x, double y, String percent) {
        this(x, y, new SideFigure(x, y, OUTER / 2 + GAP, percent, true, 0));
    }

    /** With the figure on either side, at several heights; the usual first. */
    public static List<PlugMark> ways(double x, double y, String percent) {
        return new PlugMark(x, y, percent).percent.ways(figure -> new PlugMark(x, y, figure));
    }

    /** The rings alone. */
    public Box sign() {
        return Box.round(x, y, OUTER / 2);
    }

    @Override
    public Box box() {
        return sign().and(percent.box());
    }

    /** The rings, and the figure beside them. */
    @Override
    public List<Box> parts() {
        return List.of(sign(), percent.box());
    }

    @Override
    public void paint(Paper paper) {
        paper.fill(Paper.circle(x, y, OUTER + 1.3), Tone.WHITE);
        paper.draw(Paper.circle(x, y, OUTER), Pen.MARK);
        paper.draw(Paper.circle(x, y, INNER), Pen.MARK);
        percent.paint(paper);
    }
}
