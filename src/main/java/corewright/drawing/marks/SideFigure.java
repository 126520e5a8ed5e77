package corewright.drawing.marks;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * The figure beside a sign.
 *
 * @param x middle of the sign
 * @param y the same
 * @param awayMm from the middle of the sign to the figure
 * @param right stands at the right of the sign, else at its left
 * @param drop how far it stands below the middle of the sign
 */
public record SideFigure(double x, double y, double awayMm, String text, boolean right, double drop) {
    private static final Type TYPE = Type.READING;

    /** A figure stands so much higher or lower where it would cover something. */
    private static final double STEP = 1.8;

    private static final double HALO = 0.7;

    Box box() {
        double width = TYPE.width(text);
        double left = right ? x + awayMm : x - awayMm - width;
        return new Box(left, y + drop - TYPE.capMm() / 2, width, TYPE.capMm());
    }

    void paint(Paper paper) {
        if (!text.isEmpty()) {
            double edge = x + (right ? awayMm : -awayMm);
            Paper.Anchor anchor = right ? Paper.Anchor.LEFT : Paper.Anchor.RIGHT;
            paper.haloText(text, edge, y + drop + TYPE.capMm() / 2, TYPE, anchor, HALO);
        }
    }

    /** The same sign with its figure at the right and at the left, level, higher, lower: the usual place first. */
    <M extends Mark> List<M> ways(Function<SideFigure, M> sign) {
        List<M> ways = new ArrayList<>();
        for (double step : new double[] {0, -STEP, STEP, -2 * STEP, 2 * STEP}) {
            ways.add(sign.apply(new SideFigure(x, y, awayMm, text, true, step)));
            ways.add(sign.apply(new SideFigure(x, y, awayMm, text, false, step)));
        }
        return ways;
    }
}
