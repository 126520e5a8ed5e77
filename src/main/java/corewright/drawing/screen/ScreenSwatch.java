package corewright.drawing.screen;

import corewright.damage.Condition;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pattern;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Shapes;
import corewright.drawing.kit.Tone;
import corewright.drawing.kit.Type;
import corewright.drawing.marks.FittingMark;
import corewright.drawing.marks.HoleMark;
import corewright.drawing.marks.PhotoMark;
import corewright.drawing.marks.ProbeMark;
import corewright.drawing.marks.ReadingMark;
import corewright.drawing.marks.StructureMarks;
import corewright.drawing.marks.TagMark;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import org.locationtech.jts.geom.Envelope;

/** The sample of a layer in the legend of a window. */
public final class ScreenSwatch {
    /** Pixels at 100 % scaling. */
    public static final int WIDTH = 34;

    public static final int HEIGHT = 22;

    private static final double K = ScreenMap.PX_PER_MM;
    private static final double W = WIDTH / K;
    private static final double H = HEIGHT / K;

    private ScreenSwatch() {}

    /** Paints on a graphics whose unit is one pixel. */
    public static void paint(Graphics2D pixels, ScreenLayer layer, ScreenLook look, Measure measure) {
        Graphics2D g = (Graphics2D) pixels.create();
        g.scale(K, K);
        Paper paper = new Paper(g, look.tone());
        switch (layer) {
            case WET -> patch(paper, g, look, Condition.WET);
            case DELAMINATED -> patch(paper, g, look, Condition.DELAMINATED);
            case WET_DELAMINATED -> patch(paper, g, look, Condition.WET_DELAMINATED);
            case VOID -> patch(paper, g, look, Condition.VOID);
            case UNDECIDED -> {
                pattern(g, look, Pattern.UNDECIDED);
                paper.draw(frame(), Pen.UNDECIDED);
            }
            case LIKELY -> paper.line(Pen.EDGE, 0.5, H / 2, W - 0.5, H / 2);
            case POSSIBLE -> paper.line(Pen.POSSIBLE, 0.2, H / 2, W, H / 2);
            case READINGS -> new ReadingMark(W / 2, H / 2, "68", false, 0, ReadingMark.Trust.TAKEN).paint(paper);
            case TAPS -> {
                new ReadingMark(W / 4, H / 2, "", false, 1, ReadingMark.Trust.TAKEN).paint(paper);
                new ReadingMark(3 * W / 4, H / 2, "", false, 2, ReadingMark.Trust.TAKEN).paint(paper);
            }
            case PROBES -> new ProbeMark(1.5, H / 2 + 0.6, measure == Measure.METRIC ? "7.4" : "0.3").paint(paper);
            case NEXT -> new TagMark(0.6, H / 2, "?1", true).paint(paper);
            case STRUCTURE -> {
                paper.line(Pen.SUPPORT, 0.1, H / 2, W, H / 2);
                new FittingMark(W / 2, H / 2, true, false).paint(paper);
            }
            case PHOTOGRAPHS -> new PhotoMark(W / 2, H / 2 + 2.2).paint(paper);
            case LABELS -> paper.text("R1", W / 2, H / 2 + 1, Type.LABEL_BOLD, Paper.Anchor.CENTRE);
            case DEEDS -> {
                StructureMarks.cut(paper, Shapes.FACTORY.toGeometry(new Envelope(0.4, W - 0.4, 0.4, H - 0.4)));
                new HoleMark(W / 2, H / 2, false).paint(paper);
            }
            default -> wash(paper, g, look.tone());
        }
        g.dispose();
    }

    private static Rectangle2D frame() {
        return new Rectangle2D.Double(0.2, 0.2, W - 0.4, H - 0.4);
    }

    private static void patch(Paper paper, Graphics2D g, ScreenLook look, Condition condition) {
        Color tint = look.tints().get(condition);
        if (tint != null) {
            g.setColor(tint);
            g.fill(frame());
        }
        pattern(g, look, Pattern.of(condition));
        paper.draw(frame(), Pen.FITTING);
    }

    private static void pattern(Graphics2D g, ScreenLook look, Pattern pattern) {
        new ScreenPattern(g, 3.2 / K, new Point2D.Double(0.4, 0.4))
                .fill(pattern, frame(), frame(), look.tone().ink());
    }

    private static void wash(Paper paper, Graphics2D g, Tone tone) {
        g.setPaint(new java.awt.GradientPaint(0, 0, tone.ground(), (float) W, 0, mixed(tone)));
        g.fill(frame());
        paper.draw(frame(), Pen.FAINT);
    }

    private static Color mixed(Tone tone) {
        return new Color(
                (tone.ground().getRed() + tone.ink().getRed()) / 2,
                (tone.ground().getGreen() + tone.ink().getGreen()) / 2,
                (tone.ground().getBlue() + tone.ink().getBlue()) / 2);
    }
}
