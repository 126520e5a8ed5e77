package corewright.drawing.marks;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Tone;
import corewright.drawing.kit.Type;

/**
 * A core sample: a ring 2.6 with a ring 1.2 inside, as a hole saw leaves it, and at its right the water in per cent of dry
 * mass, the one true percentage on a map.
 */
public record PlugMark(double x, double y, String percent) implements Mark {
    private static final double OUTER = 2.6;
    private static final double INNER = 1.2;
    private static final double GAP = 0.6;

    @Override
    public Box box() {
        return new Box(x - OUTER / 2, y - OUTER / 2, OUTER + GAP + Type.READING.width(percent), OUTER);
    }

    @Override
    public void paint(Paper paper) {
        paper.fill(Paper.circle(x, y, OUTER + 1.3), Tone.WHITE);
        paper.draw(Paper.circle(x, y, OUTER), Pen.MARK);
        paper.draw(Paper.circle(x, y, INNER), Pen.MARK);
        double left = x + OUTER / 2 + GAP;
        paper.haloText(percent, left, y + Type.READING.capMm() / 2, Type.READING, Paper.Anchor.LEFT, 0.7);
    }
}
