package corewright.desktop.work;

import corewright.desktop.plan.PlanPane;
import corewright.drawing.kit.Figures;
import corewright.drawing.screen.ScreenLook;
import corewright.repair.plan.Batch;
import corewright.repair.plan.CupTarget;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;
import org.jspecify.annotations.Nullable;

/** The cup in hand with its two lines, as on the card: the scale shows the lower one after the resin, the upper one after both. */
final class WorkCup extends Region {
    private static final double WIDTH = 300;
    private static final double HEIGHT = 150;
    private static final double CUP = 100;
    private static final double TAPER = 14;

    private final Canvas canvas = new Canvas(WIDTH, HEIGHT);
    private final ScreenLook look;

    WorkCup(ScreenLook look) {
        this.look = look;
        getChildren().add(canvas);
        setMinSize(WIDTH, HEIGHT);
        setMaxSize(WIDTH, HEIGHT);
    }

    /** Nothing where no cup is left. */
    void show(@Nullable Batch cup, @Nullable CupTarget target) {
        GraphicsContext g = canvas.getGraphicsContext2D();
        g.clearRect(0, 0, WIDTH, HEIGHT);
        setVisible(cup != null && target != null);
        if (cup == null || target == null) {
            return;
        }
        Color ink = PlanPane.fx(look.tone().ink());
        setAccessibleText("Cup " + cup.number() + ": resin to " + grams(target.firstToG()) + ", both to "
                + grams(target.secondToG()));
        double foot = HEIGHT - 8;
        double top = 8;
        double full = foot - (foot - top) * 0.72;
        double resin = foot - (foot - full) * target.firstToG() / target.secondToG();
        g.setFill(ink.deriveColor(0, 1, 1, 0.16));
        fill(g, full, foot, top);
        fill(g, resin, foot, top);
        g.setStroke(ink);
        g.setLineWidth(3);
        g.strokePolyline(
                new double[] {left(top, foot, top), left(foot, foot, top), right(foot, foot, top), right(top, foot, top)
                },
                new double[] {top, foot, foot, top},
                4);
        g.setLineWidth(2);
        line(g, full, foot, top, ink);
        words(g, full - 6, grams(target.secondToG()), "resin and hardener", ink);
        line(g, resin, foot, top, ink);
        words(g, resin + 20, grams(target.firstToG()), "resin", ink);
    }

    private static void fill(GraphicsContext g, double from, double foot, double top) {
        g.fillPolygon(
                new double[] {
                    left(from, foot, top), left(foot, foot, top), right(foot, foot, top), right(from, foot, top)
                },
                new double[] {from, foot, foot, from},
                4);
    }

    private static void line(GraphicsContext g, double y, double foot, double top, Color ink) {
        g.setStroke(ink);
        g.strokeLine(left(y, foot, top), y, CUP + 130, y);
    }

    /** The upper line's words stand above it, the lower one's below, so that they never meet. */
    private static void words(GraphicsContext g, double y, String grams, String what, Color ink) {
        g.setFill(ink);
        g.setTextAlign(TextAlignment.LEFT);
        g.setFont(Font.font("Asap", FontWeight.BOLD, 20));
        g.fillText(grams, CUP + 6, y);
        g.setFont(Font.font("Asap", FontWeight.NORMAL, 13));
        g.fillText(what, CUP + 72, y);
    }

    private static double left(double y, double foot, double top) {
        return 4 + TAPER * (y - top) / (foot - top);
    }

    private static double right(double y, double foot, double top) {
        return CUP - 4 - TAPER * (y - top) / (foot - top);
    }

    private static String grams(double g) {
        return Figures.fixed(g, 0) + " g";
    }
}
