package corewright.desktop.slip;

import corewright.assessment.Ages;
import corewright.drawing.kit.Figures;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;

/** A figure with its range, drawn. */
public final class RangeBar {
    private static final double HEIGHT = 66;
    private static final double LABEL_PX = 30;

    private RangeBar() {}

    /** A thick bar from the low to the high figure on an axis from zero, the middle as a tall tick. */
    public static Canvas of(Slip.Range range, double width, Color ink) {
        Canvas canvas = new Canvas(width, HEIGHT);
        GraphicsContext g = canvas.getGraphicsContext2D();
        double left = 12;
        double right = width - 20;
        double axis = 42;
        double end = range.axisEnd();
        g.setFill(ink);
        g.setStroke(ink);
        g.setLineWidth(1);
        g.strokeLine(left, axis, right, axis);
        int parts = Math.abs(end / 3 * 10 - Math.rint(end / 3 * 10)) < 1e-9 ? 3 : 4;
        g.setFont(Font.font("Asap Condensed", 13));
        for (int i = 0; i <= parts; i++) {
            double x = left + (right - left) * i / parts;
            g.strokeLine(x, axis, x, axis + 5);
            g.setTextAlign(TextAlignment.CENTER);
            g.fillText(Figures.atMost(end * i / parts, 2), x, axis + 19);
        }
        double per = (right - left) / end;
        double low = left + range.low() * per;
        double middle = left + range.middle() * per;
        double high = left + range.high() * per;
        g.fillRect(low, axis - 3, high - low, 6);
        g.fillRect(middle - 1.5, axis - 11, 3, 20);
        g.setFont(Font.font("Asap Condensed", FontWeight.BOLD, 14));
        g.setTextAlign(TextAlignment.RIGHT);
        boolean lowFits = low - 3 > LABEL_PX && middle - low > 0.6 * LABEL_PX;
        g.fillText(lowFits ? figure(range, range.low()) : "", low - 3, axis - 7);
        g.setTextAlign(TextAlignment.LEFT);
        g.fillText(figure(range, range.high()), high + 3, axis - 7);
        g.setTextAlign(middle < 2 * LABEL_PX ? TextAlignment.LEFT : TextAlignment.CENTER);
        g.setFont(Font.font("Asap Condensed", FontWeight.BOLD, 15));
        g.fillText(figure(range, range.middle()) + " " + range.unit(), middle, axis - 21);
        canvas.setAccessibleText(words(range) + (range.old() ? " These figures are " + Ages.WORDS + "." : ""));
        return canvas;
    }

    /** "Most likely 0.88 litres; in 8 cases of 10 between 0.65 and 1.15." */
    public static String words(Slip.Range r) {
        return "Most likely " + figure(r, r.middle()) + " " + r.unit() + "; in 8 cases of 10 between "
                + figure(r, r.low()) + " and " + figure(r, r.high()) + ".";
    }

    /** Two decimals on an axis that ends below ten, else one. */
    private static String figure(Slip.Range range, double value) {
        return Figures.fixed(value, range.axisEnd() < 10 ? 2 : 1);
    }
}
