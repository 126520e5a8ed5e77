package corewright.drawing;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;

/**
 * Which side of a face is high: a solid ramp, 2.6 tall at the high end, both ends named; never an arrow alone.
 *
 * @param x left end of the box
 * @param y baseline of the words
 * @param tiltDeg 0 flat, 90 wall
 * @param uphillDeg direction of the high side on the survey: from +x (right on paper) towards +y (up on paper)
 */
public record RampMark(double x, double y, double tiltDeg, double uphillDeg) implements Mark {
    private static final double LENGTH = 18;
    private static final double HIGH = 2.6;
    private static final double TAIL = 1.2;
    private static final Type HIGH_TYPE = new Type(Typeface.TEXT_SEMIBOLD, 7);
    private static final Type LOW_TYPE = new Type(Typeface.TEXT, 7);

    private String high() {
        return "uphill " + Figures.atMost(tiltDeg, 1) + "°";
    }

    /** Angle on paper, clockwise from right. */
    private double turn() {
        return -Math.toRadians(uphillDeg);
    }

    private boolean level() {
        return tiltDeg < 0.05;
    }

    /** The high end lies right or left, not up or down. */
    private boolean lying() {
        return Math.abs(Math.cos(turn())) > 0.9;
    }

    @Override
    public Box box() {
        if (level()) {
            return new Box(x, y - 3, HIGH_TYPE.width("level"), 3.8);
        }
        double wide = lying() ? LENGTH + 2 * TAIL : LENGTH + 2 * TAIL + HIGH_TYPE.width(high()) * 0.6;
        double tall = lying() ? 3.3 + HIGH + 0.8 : LENGTH + 9;
        return new Box(x, y + 0.8 - tall, wide, tall);
    }

    @Override
    public void paint(Paper paper) {
        if (level()) {
            paper.text("level", x, y, HIGH_TYPE, Paper.Anchor.LEFT);
        } else if (lying()) {
            lying(paper);
        } else {
            turned(paper);
        }
    }

    private void lying(Paper paper) {
        boolean left = Math.cos(turn()) < 0;
        double foot = y - 3.3;
        double start = x + TAIL;
        double end = start + LENGTH;
        double high = left ? start : end;
        double low = left ? end : start;
        paper.fill(Paper.closed(low, foot, high, foot, high, foot - HIGH));
        paper.line(Pen.LEADER, start - TAIL, foot, end + TAIL, foot);
        paper.text(high(), high, y, HIGH_TYPE, left ? Paper.Anchor.LEFT : Paper.Anchor.RIGHT);
        paper.text("low", low, y, LOW_TYPE, left ? Paper.Anchor.RIGHT : Paper.Anchor.LEFT);
    }

    private void turned(Paper paper) {
        Box box = box();
        double middleX = box.middleX();
        double middleY = box.middleY();
        Path2D ramp = Paper.closed(-LENGTH / 2, 0, LENGTH / 2, 0, LENGTH / 2, -HIGH);
        AffineTransform place = AffineTransform.getTranslateInstance(middleX, middleY);
        place.rotate(turn());
        paper.fill(place.createTransformedShape(ramp));
        paper.draw(place.createTransformedShape(Paper.path(-LENGTH / 2 - TAIL, 0, LENGTH / 2 + TAIL, 0)), Pen.LEADER);
        double reach = LENGTH / 2 + 2.4;
        double dx = Math.cos(turn()) * reach;
        double dy = Math.sin(turn()) * reach;
        paper.text(high(), middleX + dx, middleY + dy + (dy > 0 ? 2 : 0), HIGH_TYPE, Paper.Anchor.CENTRE);
        paper.text("low", middleX - dx, middleY - dy + (dy < 0 ? 2 : 0), LOW_TYPE, Paper.Anchor.CENTRE);
    }
}
