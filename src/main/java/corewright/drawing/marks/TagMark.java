package corewright.drawing.marks;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Tone;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import java.awt.geom.Path2D;
import java.util.List;

/**
 * Where to read next: a tag 3.5 tall, line 0.35, its point on the place, its text ?1, ?2 ... in the order of usefulness.
 *
 * @param right the tag's body lies to the right of its point, else to the left
 * @param drop how far the body lies below its point, so that it covers nothing
 */
public record TagMark(double x, double y, String text, boolean right, double drop) implements Mark {
    private static final double TALL = 3.5;
    private static final double POINT = 1.7;
    private static final double LEAST_BODY = 3.95;
    private static final Type TYPE = new Type(Typeface.TEXT_BOLD, 7);

    /** The body level with its point. */
    public TagMark(double x, double y, String text, boolean right) {
        this(x, y, text, right, 0);
    }

    private double width() {
        return Math.max(LEAST_BODY, TYPE.width(text) + 1.4);
    }

    private Path2D outline() {
        double s = right ? 1 : -1;
        double neck = x + s * POINT;
        double end = x + s * (POINT + width());
        double top = y + drop - TALL / 2;
        return Paper.closed(x, y, neck, top, end, top, end, top + TALL, neck, top + TALL);
    }

    /** Its words with their frame. */
    public Box body() {
        double s = right ? 1 : -1;
        double neck = x + s * POINT;
        double top = y + drop - TALL / 2;
        return Box.between(neck, top, neck + s * width(), top + TALL);
    }

    /** What leads from there to its point. */
    public Box pointer() {
        double top = y + drop - TALL / 2;
        return Box.between(x, Math.min(y, top), x + (right ? 1 : -1) * POINT, Math.max(y, top + TALL));
    }

    @Override
    public List<Box> parts() {
        return List.of(body(), pointer());
    }

    @Override
    public Box box() {
        double length = POINT + width();
        double top = Math.min(y, y + drop - TALL / 2);
        double foot = Math.max(y, y + drop + TALL / 2);
        return new Box(right ? x : x - length, top, length, foot - top);
    }

    @Override
    public void paint(Paper paper) {
        paper.casing(outline(), 1.1);
        paper.fill(outline(), Tone.WHITE);
        paper.draw(outline(), Pen.MARK);
        double middle = x + (right ? 1 : -1) * (POINT + width() / 2 - 0.2);
        paper.text(text, middle, y + drop + TYPE.capMm() / 2, TYPE, Paper.Anchor.CENTRE);
    }
}
