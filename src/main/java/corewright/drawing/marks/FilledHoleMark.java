package corewright.drawing.marks;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Tone;

/** A hole that was filled: as {@link HoleMark}, but half its size, and without a number, which stands on the repair map. */
public record FilledHoleMark(double x, double y, boolean vent) implements Mark {
    private static final double DIAMETER = 1.4;
    private static final Pen RING = Pen.solid(0.30);

    @Override
    public Box box() {
        return Box.round(x, y, DIAMETER / 2);
    }

    @Override
    public void paint(Paper paper) {
        paper.fill(Paper.circle(x, y, DIAMETER + 0.6), Tone.WHITE);
        if (vent) {
            paper.draw(Paper.circle(x, y, DIAMETER - 0.30), RING);
        } else {
            paper.disc(x, y, DIAMETER);
        }
    }
}
