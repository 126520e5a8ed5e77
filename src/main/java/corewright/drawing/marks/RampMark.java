package corewright.drawing.marks;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.survey.Face;
import java.awt.Shape;
import java.awt.geom.AffineTransform;

/**
 * Which side of a face is high: a solid ramp, 2.6 tall at the high end, both ends named; never an arrow alone.
 *
 * @param x left end of the box
 * @param y baseline of the words
 * @param slopeDeg against the level, 0 to 90
 * @param uphillDeg direction of the high side on the survey: from +x (right on paper) towards +y (up on paper, down where the
 *     face is seen from below)
 */
public record RampMark(double x, double y, double slopeDeg, double uphillDeg, boolean yDown) implements Mark {
    private static final double LENGTH = 18;
    private static final double SHORT = 12;
    private static final double WORDS = 3.3;
    private static final double HIGH = 2.6;
    private static final double TAIL = 1.2;
    private static final Type HIGH_TYPE = new Type(Typeface.TEXT_SEMIBOLD, 7);
    private static final Type LOW_TYPE = new Type(Typeface.TEXT, 7);

    public static RampMark of(Face face, double x, double y) {
        return new RampMark(x, y, face.slopeDeg(), face.uphillDeg(), face.plusYPointsDown());
    }

    private String high() {
        return "uphill " + Figures.atMost(slopeDeg, 1) + "°";
    }

    /** Angle on paper, clockwise from right. */
    private double turn() {
        return (yDown ? 1 : -1) * Math.toRadians(uphillDeg);
    }

    private boolean level() {
        return slopeDeg < 0.05;
    }

    /** The high end lies right or left, not up or down. */
    private boolean lying() {
        return Math.abs(Math.cos(turn())) > 0.9;
    }

    @Override
    public Box box() {
        if (level()) {
            return new Box(x, y - HIGH_TYPE.capMm(), TAIL + HIGH_TYPE.width("level"), HIGH_TYPE.capMm() + 0.5);
        }
        if (lying()) {
            return new Box(x, y - WORDS - HIGH, LENGTH + 2 * TAIL, WORDS + HIGH + 0.5);
        }
        return turnedBox().movedTo(x, y + 0.5 - turnedBox().height());
    }

    @Override
    public void paint(Paper paper) {
        if (level()) {
            paper.text("level", x + TAIL, y, HIGH_TYPE, Paper.Anchor.LEFT);
        } else if (lying()) {
            lying(paper);
        } else {
            turned(paper);
        }
    }

    private void lying(Paper paper) {
        boolean left = Math.cos(turn()) < 0;
        double foot = y - WORDS;
        double start = x + TAIL;
        double end = start + LENGTH;
        double high = left ? start : end;
        double low = left ? end : start;
        paper.fill(Paper.closed(low, foot, high, foot, high, foot - HIGH));
        paper.line(Pen.LEADER, start - TAIL, foot, end + TAIL, foot);
        paper.text(high(), high, y, HIGH_TYPE, left ? Paper.Anchor.LEFT : Paper.Anchor.RIGHT);
        paper.text("low", low, y, LOW_TYPE, left ? Paper.Anchor.RIGHT : Paper.Anchor.LEFT);
    }

    /** Everything of a turned ramp about its own middle. */
    private Box turnedBox() {
        Box ramp = Box.of(turnedShape().getBounds2D()).and(Box.of(turnedBase().getBounds2D()));
        return ramp.and(words(high(), HIGH_TYPE, 1)).and(words("low", LOW_TYPE, -1));
    }

    private Shape turnedShape() {
        double half = SHORT / 2;
        return AffineTransform.getRotateInstance(turn())
                .createTransformedShape(Paper.closed(-half, 0, half, 0, half, -HIGH));
    }

    private Shape turnedBase() {
        double half = SHORT / 2 + TAIL;
        return AffineTransform.getRotateInstance(turn()).createTransformedShape(Paper.path(-half, 0, half, 0));
    }

    /** Words beside an end, on the side away from the middle; at an upright ramp on its right. */
    private Box words(String text, Type type, int end) {
        double dx = Math.cos(turn()) * end * SHORT / 2;
        double dy = Math.sin(turn()) * end * SHORT / 2;
        double width = type.width(text);
        double left = Math.abs(dx) < 0.3 * SHORT / 2 ? HIGH + 0.8 : dx > 0 ? dx + 1.6 : dx - 1.6 - width;
        double cap = type.capMm();
        return new Box(left, dy - (dy < 0 ? 0 : cap), width, cap);
    }

    private void turned(Paper paper) {
        Box own = turnedBox();
        Box at = box();
        AffineTransform place = AffineTransform.getTranslateInstance(at.x() - own.x(), at.y() - own.y());
        paper.fill(place.createTransformedShape(turnedShape()));
        paper.draw(place.createTransformedShape(turnedBase()), Pen.LEADER);
        Box high = words(high(), HIGH_TYPE, 1);
        Box low = words("low", LOW_TYPE, -1);
        double dx = at.x() - own.x();
        double dy = at.y() - own.y();
        paper.text(high(), high.x() + dx, high.bottom() + dy, HIGH_TYPE, Paper.Anchor.LEFT);
        paper.text("low", low.x() + dx, low.bottom() + dy, LOW_TYPE, Paper.Anchor.LEFT);
    }
}
