package corewright.drawing.marks;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Type;
import java.util.List;

/**
 * Where measuring starts: a ring 2.2 with its point; arms 6 long point aft (right) and the way y runs: up, or down where the
 * face is seen from below.
 */
public record DatumMark(double x, double y, boolean down) implements Mark {
    private static final double ARM = 6;
    private static final double RING = 2.2;
    private static final double HEAD = 1;
    private static final double NAME_GAP = 0.9;
    private static final String NAME = "datum";

    @Override
    public Box box() {
        double left = RING / 2 + NAME_GAP + Type.FEATURE.width(NAME);
        return new Box(x - left, down ? y - RING / 2 : y - ARM, left + ARM, ARM + RING / 2);
    }

    private int way() {
        return down ? 1 : -1;
    }

    /** Ring with its name, and each arm: between the arms there is room. */
    @Override
    public List<Box> parts() {
        Box all = box();
        return List.of(
                new Box(all.x(), y - RING / 2, x + RING / 2 - all.x(), RING),
                Box.between(x, y, x + ARM, y).grown(0.6),
                Box.between(x, y, x, y + way() * ARM).grown(0.6));
    }

    @Override
    public void paint(Paper paper) {
        paper.ring(x, y, RING, Pen.MARK);
        paper.disc(x, y, 0.7);
        paper.line(Pen.LEADER, x + RING / 2, y, x + ARM, y);
        paper.line(Pen.LEADER, x + ARM - HEAD, y - 0.6, x + ARM, y, x + ARM - HEAD, y + 0.6);
        double tip = y + way() * ARM;
        double barbs = tip - way() * HEAD;
        paper.line(Pen.LEADER, x, y + way() * RING / 2, x, tip);
        paper.line(Pen.LEADER, x - 0.6, barbs, x, tip, x + 0.6, barbs);
        double middle = y + Type.FEATURE.capMm() / 2;
        paper.haloText(NAME, x - RING / 2 - NAME_GAP, middle, Type.FEATURE, Paper.Anchor.RIGHT, 0.5);
    }
}
