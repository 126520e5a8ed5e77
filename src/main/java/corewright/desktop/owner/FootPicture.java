package corewright.desktop.owner;

import corewright.desktop.plan.PlanPane;
import corewright.drawing.kit.Measure;
import corewright.drawing.screen.ScreenLook;
import java.util.function.DoubleUnaryOperator;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;

/** A boot on a deck that gives under it, not to scale but with all its dips in one. As built is a broken line. */
final class FootPicture {
    /** The page is white paper, by night too. */
    static final Color INK = PlanPane.fx(ScreenLook.DAY.tone().ink());

    private static final double WIDTH = 208;
    private static final double HEIGHT = 92;

    /** The deck where nobody stands. */
    private static final double LEVEL = 42;

    private static final double DEEPEST = 30;
    private static final double THICK = 15;
    private static final double MIDDLE = 76;
    private static final double SPREAD = 42;
    private static final double SOLE = 74;
    private static final double SOLE_HIGH = 7;

    private final GraphicsContext g;

    private FootPicture(GraphicsContext g) {
        this.g = g;
    }

    /**
     * @param dipMm how far the deck gives
     * @param builtMm how far it did as built
     * @param deepestMm the largest dip of all pictures beside each other
     */
    static Canvas of(double dipMm, double builtMm, double deepestMm, Measure measure) {
        Canvas canvas = new Canvas(WIDTH, HEIGHT);
        FootPicture picture = new FootPicture(canvas.getGraphicsContext2D());
        double scale = DEEPEST / deepestMm;
        picture.paint(dipMm * scale, builtMm * scale, measure.deflectionFigure(dipMm) + " " + measure.depthUnit());
        canvas.setAccessibleText("Gives " + measure.deflectionFigure(dipMm) + " " + measure.depthUnit()
                + " under a foot; as built " + measure.deflectionFigure(builtMm) + ".");
        return canvas;
    }

    private void paint(double dip, double built, String words) {
        g.setStroke(INK);
        g.setFill(Color.web("#F2F1EC"));
        g.setLineWidth(1.8);
        DoubleUnaryOperator deck = x -> LEVEL + dip * shape(x);
        g.beginPath();
        for (double x = 1; x <= WIDTH - 1; x += 3) {
            g.lineTo(x, deck.applyAsDouble(x));
        }
        for (double x = WIDTH - 1; x >= 1; x -= 3) {
            g.lineTo(x, deck.applyAsDouble(x) + THICK);
        }
        g.closePath();
        g.fill();
        line(deck);
        line(x -> deck.applyAsDouble(x) + THICK);
        g.setLineWidth(1.2);
        g.setLineDashes(2, 4);
        line(x -> LEVEL);
        g.setLineDashes(7, 4);
        line(x -> LEVEL + built * shape(x));
        g.setLineDashes();
        boot(LEVEL + dip);
        g.setFill(INK);
        g.setFont(Font.font("Asap", FontWeight.BOLD, 24));
        g.setTextAlign(TextAlignment.RIGHT);
        g.fillText(words, WIDTH - 2, 28);
    }

    private void line(DoubleUnaryOperator height) {
        g.beginPath();
        for (double x = 1; x <= WIDTH - 1; x += 3) {
            g.lineTo(x, height.applyAsDouble(x));
        }
        g.stroke();
    }

    /** One under the sole, falling off on both sides. */
    private static double shape(double x) {
        double beside = Math.max(0, Math.abs(x - MIDDLE) - SOLE / 2) / SPREAD;
        return Math.exp(-beside * beside);
    }

    private void boot(double ground) {
        double heel = MIDDLE - SOLE / 2;
        double toe = MIDDLE + SOLE / 2;
        double sole = ground - SOLE_HIGH;
        g.setFill(Color.WHITE);
        g.setLineWidth(2.2);
        g.beginPath();
        g.moveTo(heel + 2, 2);
        g.lineTo(heel + 2, sole);
        g.lineTo(toe - 1, sole);
        g.quadraticCurveTo(toe, sole - 13, toe - 16, sole - 15);
        g.quadraticCurveTo(heel + 40, sole - 18, heel + 36, sole - 28);
        g.lineTo(heel + 36, 2);
        g.fill();
        g.stroke();
        g.setFill(INK);
        g.fillRect(heel, sole, SOLE, SOLE_HIGH);
    }
}
