package corewright.drawing.marks;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Tone;
import corewright.drawing.kit.Type;
import java.awt.geom.Path2D;

/**
 * A meter reading with its tap, at a place on paper. Number 6.5 pt condensed semibold on a 0.7 mm halo, centred on the
 * place; the line under it is the tap: none sound, one dull, two hollow (0.28 thick, 0.62 apart). A tap alone is a dot 0.6
 * with its lines.
 *
 * @param text the figure; empty for a tap alone
 * @param offScale the meter was at its end: bold
 * @param lines 0 sound or not tapped, 1 dull, 2 hollow
 */
public record ReadingMark(double x, double y, String text, boolean offScale, int lines, Trust trust) implements Mark {
    /** Whether the survey's reading is taken as it stands. */
    public enum Trust {
        TAKEN,
        /** In brackets. */
        DOUBTED,
        /** Struck through. */
        SET_ASIDE
    }

    private static final double HALO = 0.7;
    private static final double LINE_GAP = 0.62;
    private static final double FIRST_LINE = 0.75;
    private static final double DOT = 0.6;
    private static final Pen TAP = Pen.solid(0.28);

    private Type type() {
        return offScale ? Type.READING_BOLD : Type.READING;
    }

    private String words() {
        return trust == Trust.DOUBTED && !text.isEmpty() ? "(" + text + ")" : text;
    }

    private double baseline() {
        return y + type().capMm() / 2;
    }

    private double halfLine() {
        return text.isEmpty() ? 1.05 : type().width(text) / 2;
    }

    private double lineY(int line) {
        return (text.isEmpty() ? y + DOT / 2 + 0.35 : baseline() + FIRST_LINE) + line * LINE_GAP;
    }

    @Override
    public Box box() {
        double half = Math.max(type().width(words()) / 2, lines > 0 || text.isEmpty() ? halfLine() : 0);
        double top = text.isEmpty() ? y - DOT / 2 : baseline() - type().capMm();
        double bottom = lines > 0 ? lineY(lines - 1) + 0.14 : text.isEmpty() ? y + DOT / 2 : baseline();
        return new Box(x - half, top, 2 * half, bottom - top);
    }

    @Override
    public void paint(Paper paper) {
        for (int i = 0; i < lines; i++) {
            paper.casing(Paper.path(x - halfLine() - 0.25, lineY(i), x + halfLine() + 0.25, lineY(i)), 0.85);
        }
        if (text.isEmpty()) {
            paper.disc(x, y, DOT + 2 * 0.35, Tone.WHITE);
            paper.disc(x, y, DOT);
        } else {
            paper.haloText(words(), x, baseline(), type(), Paper.Anchor.CENTRE, HALO);
        }
        for (int i = 0; i < lines; i++) {
            paper.draw(Paper.path(x - halfLine(), lineY(i), x + halfLine(), lineY(i)), TAP);
        }
        if (trust == Trust.SET_ASIDE) {
            double half = Math.max(halfLine(), 1) + 0.45;
            Path2D strike = Paper.path(x - half, y + 0.1, x + half, y + 0.1);
            paper.draw(strike, Pen.PATTERN);
        }
    }
}
