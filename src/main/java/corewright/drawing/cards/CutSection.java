package corewright.drawing.cards;

import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Tone;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.survey.Face.Posture;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;

/**
 * The laminate at the edge of a cut: scarf at the left, the saw at the line, the core raked out at the right. Full size but for a
 * scarf or a laminate that the paper does not hold.
 *
 * @param posture overhead the saw comes from below, and the outer skin is the lower one
 */
public record CutSection(
        double outerSkinMm, double coreMm, double innerSkinMm, double scarfMm, Posture posture, Measure measure) {
    private static final Color SKIN = new Color(0xC8C8C8);
    private static final double LEFT_PART = 52;
    private static final double RIGHT_PART = 22;
    private static final double ABOVE = 7;
    private static final double MOST_MM = 26;
    private static final double MOST_SCARF = 46;
    private static final double LINES_EVERY = 1.8;
    private static final double BLADE = 2;
    private static final double LEAD = 5;
    private static final Type WORD = new Type(Typeface.TEXT, 10);
    private static final Type BOLD = new Type(Typeface.TEXT_BOLD, 10.5);

    private double shrunk() {
        return Math.min(1, Math.min(MOST_MM / (outerSkinMm + coreMm + innerSkinMm), MOST_SCARF / scarfMm));
    }

    /** Paper it takes downwards. */
    public double heightMm() {
        return ABOVE + Math.max((outerSkinMm + coreMm + innerSkinMm) * shrunk(), 3 * LEAD) + 1;
    }

    /** {@code full size}, or how much smaller. */
    public String scaleWords() {
        return shrunk() == 1 ? "full size" : "1 : " + Figures.atMost(1 / shrunk(), 1);
    }

    /** Paints it, its upper left corner at (x, y). */
    public void paint(Paper paper, double x, double y) {
        paper.figure(
                "Section at the line of the cut: skins and core, depth of the saw, width of the scarf.",
                p -> draw(p, x, y));
    }

    private void draw(Paper paper, double x, double y) {
        double k = shrunk();
        boolean below = posture == Posture.OVERHEAD;
        double height = (outerSkinMm + coreMm + innerSkinMm) * k;
        double surface = below ? y + heightMm() - ABOVE : y + ABOVE;
        double in = below ? -1 : 1;
        double line = x + LEFT_PART;
        double right = line + RIGHT_PART;
        double outer = surface + in * outerSkinMm * k;
        double inner = outer + in * coreMm * k;
        double back = inner + in * innerSkinMm * k;
        double scarf = Math.min(scarfMm * k, LEFT_PART - 2);
        rectangle(paper, x, right, inner, back, true);
        Shape skin = Paper.closed(x, surface, line - scarf, surface, line, outer, x, outer);
        paper.fill(skin, SKIN);
        paper.draw(skin, Pen.MARK);
        rectangle(paper, x, line, outer, inner, false);
        for (double at = x + LINES_EVERY; at < line; at += LINES_EVERY) {
            paper.line(Pen.FAINT, at, outer, at, inner);
        }
        paper.draw(Paper.path(line, surface, right, surface, right, inner), Pen.POSSIBLE);
        paper.draw(Paper.path(line, outer, right, outer), Pen.POSSIBLE);
        paper.text("rake out", (line + right) / 2, (outer + inner) / 2 + WORD.capMm() / 2, WORD, Paper.Anchor.CENTRE);
        double tip = surface + in * outerSkinMm * k;
        paper.fill(new Rectangle2D.Double(line, Math.min(surface - in * 5, tip), BLADE, Math.abs(tip - surface) + 5));
        double beside = below ? surface + 4.6 : surface - 1.6;
        paper.text("saw " + measure.stopFigure(outerSkinMm), line + BLADE + 1.5, beside, BOLD, Paper.Anchor.LEFT);
        paper.line(Pen.LEADER, line - scarf, surface - in * 3, line, surface - in * 3);
        paper.line(Pen.LEADER, line - scarf, surface - in * 4, line - scarf, surface - in * 1);
        paper.haloText(
                "scarf " + measure.lengthFigure(scarfMm),
                line - scarf / 2,
                surface - in * 3 + BOLD.capMm() / 2,
                BOLD,
                Paper.Anchor.CENTRE,
                0.8);
        double first = (below ? back : surface) + (height - 2 * LEAD) / 2;
        String[] words = {
            "outer skin " + measure.depthFigure(outerSkinMm) + ": cut",
            "core " + measure.depthFigure(coreMm) + ": out",
            (posture == Posture.DECK ? "lower skin " : "inner skin ") + measure.depthFigure(innerSkinMm) + ": not cut"
        };
        double[] middles = {(surface + outer) / 2, (outer + inner) / 2, (inner + back) / 2};
        for (int i = 0; i < 3; i++) {
            int which = below ? 2 - i : i;
            double at = first + i * LEAD;
            paper.line(Pen.LEADER, right, middles[which], right + 3, at);
            paper.text(words[which], right + 4, at + WORD.capMm() / 2, WORD, Paper.Anchor.LEFT);
        }
    }

    private static void rectangle(Paper paper, double x1, double x2, double y1, double y2, boolean skin) {
        Rectangle2D body = new Rectangle2D.Double(x1, Math.min(y1, y2), x2 - x1, Math.abs(y2 - y1));
        paper.fill(body, skin ? SKIN : Tone.WHITE);
        paper.draw(body, Pen.MARK);
    }
}
