package corewright.drawing.marks;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;

/**
 * The name of an opening, divider, support or fitting, 7 pt on a halo.
 *
 * @param x left end of the words, or the middle where turned
 * @param y baseline, or the middle where turned
 * @param turned runs down the page
 */
public record NameMark(String text, double x, double y, boolean turned) implements Mark {
    public static final Type TYPE = new Type(Typeface.TEXT, 7);

    @Override
    public Box box() {
        if (turned) {
            double w = TYPE.width(text);
            return new Box(x - TYPE.descentMm(), y - w / 2, TYPE.capMm() + TYPE.descentMm(), w);
        }
        return Box.of(TYPE.box(text, x, y));
    }

    @Override
    public void paint(Paper paper) {
        if (turned) {
            paper.turnedText(text, x, y, Math.PI / 2, TYPE, Paper.Anchor.CENTRE);
        } else {
            paper.haloText(text, x, y, TYPE, Paper.Anchor.LEFT, 0.6);
        }
    }
}
