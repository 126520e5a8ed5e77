package corewright.drawing.template;

import corewright.drawing.kit.Box;
import corewright.survey.settings.Settings.Terms;

/**
 * A sheet of paper and the frame on it. The frame is cut along at the left and at the top; at the right and at the foot a strip
 * is printed on beyond it, on which the next sheet is laid.
 *
 * @param stripMm printed on beyond the frame; 0 where nothing is joined
 */
public record Leaf(double widthMm, double heightMm, double stripMm) {
    public static final double LEFT = 20;
    public static final double RIGHT = 12;

    /** Room for the head, and for the foot: steps, key, check bars. */
    static final double HEAD = 39;

    static final double FOOT = 56;
    static final double STRIP = 10;

    /** Frame of the narrowest sheet, so that head and foot have room. */
    static final double LEAST_WIDTH = 168;

    static final double LEAST_HEIGHT = 120;

    /** No page of a PDF is larger: 14 400 units of 1/72 inch (ISO 32000-1, annex C). */
    private static final double LARGEST = 5080;

    public static Leaf of(Terms.Sheet paper) {
        return new Leaf(paper.widthMm(), paper.heightMm(), STRIP);
    }

    /** A sheet on which an area of that size lies whole, as far as a page may be large. */
    public static Leaf around(double widthMm, double heightMm) {
        double width = Math.max(LEAST_WIDTH, Math.ceil(widthMm)) + LEFT + RIGHT;
        double height = Math.max(LEAST_HEIGHT, Math.ceil(heightMm)) + HEAD + FOOT;
        boolean whole = width <= LARGEST && height <= LARGEST;
        return new Leaf(Math.min(width, LARGEST), Math.min(height, LARGEST), whole ? 0 : STRIP);
    }

    public Box frame() {
        return new Box(LEFT, HEAD, widthMm - LEFT - RIGHT - stripMm, heightMm - HEAD - FOOT - stripMm);
    }

    /** The frame and the strip beyond it. */
    public Box printed() {
        Box frame = frame();
        return new Box(frame.x(), frame.y(), frame.width() + stripMm, frame.height() + stripMm);
    }
}
