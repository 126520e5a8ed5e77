package corewright.drawing.marks;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.PlanView;
import corewright.drawing.kit.Tone;
import corewright.repair.plan.Hole;
import org.jspecify.annotations.Nullable;

/**
 * A hole to drill: injection a disc 2.6, vent a ring 2.6 (0.40), on a 0.6 casing. Where a nozzle is pushed in instead, the
 * nozzle from its opening, see {@link NozzleMark}. Its number stands beside it, see {@link HoleLabel}.
 *
 * @param nozzle null where a hole is drilled
 */
public record HoleMark(
        double x, double y, boolean vent, @Nullable NozzleMark nozzle) implements Mark {
    public static final double DIAMETER = 2.6;
    private static final Pen RING = Pen.solid(0.40);

    /** A hole that is drilled. */
    public HoleMark(double x, double y, boolean vent) {
        this(x, y, vent, null);
    }

    public static HoleMark of(Hole hole, PlanView view) {
        return new HoleMark(
                view.x(hole.spot().xMm()),
                view.y(hole.spot().yMm()),
                hole.kind() == Hole.Kind.VENT,
                NozzleMark.of(hole, view, 3.2));
    }

    @Override
    public Box box() {
        return Box.round(x, y, DIAMETER / 2);
    }

    @Override
    public void paint(Paper paper) {
        if (nozzle != null) {
            nozzle.paint(paper);
            return;
        }
        paper.fill(Paper.circle(x, y, DIAMETER + 1.2), Tone.WHITE);
        if (vent) {
            paper.draw(Paper.circle(x, y, DIAMETER - 0.40), RING);
        } else {
            paper.disc(x, y, DIAMETER);
        }
    }
}
