package corewright.drawing.marks;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Tone;
import corewright.repair.work.FillCheck;
import java.awt.Shape;
import java.awt.geom.Arc2D;
import java.awt.geom.Path2D;

/**
 * The warmth of the skin while a fill cures, 2.8 wide on a 0.6 casing: a full heap of mix where it has arrived, an empty bowl
 * where it has not, an empty heap where warmth cannot tell.
 */
public record WarmthMark(double x, double y, Says says) implements Mark {
    /** What a reading says of the place. */
    public enum Says {
        THERE,
        NOT_THERE,
        NOTHING;

        public static Says of(FillCheck.Verdict verdict) {
            return switch (verdict) {
                case ARRIVED -> THERE;
                case NOT_ARRIVED -> NOT_THERE;
                case DOUBTFUL, OUT_OF_TIME -> NOTHING;
            };
        }
    }

    private static final double WIDTH = 2.8;
    private static final double CASING = 0.6;
    private static final Pen LINE = Pen.solid(0.40);

    /** Half a disc; the heap stands on its flat side, the bowl lies on its round one and is open above. */
    private Shape half() {
        double r = WIDTH / 2;
        if (says == Says.NOT_THERE) {
            return new Arc2D.Double(x - r, y - 1.5 * r, WIDTH, WIDTH, 180, 180, Arc2D.OPEN);
        }
        Path2D heap = new Path2D.Double(new Arc2D.Double(x - r, y - r / 2, WIDTH, WIDTH, 0, 180, Arc2D.OPEN));
        heap.closePath();
        return heap;
    }

    @Override
    public Box box() {
        return new Box(x - WIDTH / 2, y - WIDTH / 4, WIDTH, WIDTH / 2).grown(0.2);
    }

    @Override
    public void paint(Paper paper) {
        paper.casing(half(), 2 * CASING);
        if (says == Says.THERE) {
            paper.fill(half());
        } else {
            if (says == Says.NOTHING) {
                paper.fill(half(), Tone.WHITE);
            }
            paper.draw(half(), LINE);
        }
    }
}
