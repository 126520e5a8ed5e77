package corewright.desktop.decide;

import corewright.damage.Quantiles;
import corewright.desktop.plan.PlanPane;
import corewright.drawing.kit.Figures;
import corewright.drawing.screen.ScreenLook;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.paint.Color;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;

/**
 * The methods of a region as rows of one table, from the least that is done to the most: figures stand in columns under their heads
 * and every bar is on one scale. In a narrow slip the name stands over its figures.
 */
final class MethodTable {
    private static final double[] WIDE = {116, 106, 56, 52, 44, 112};
    private static final double[] NARROW = {0, 104, 50, 46, 38, 82};

    /** Between a row's edge and its words, as the style sheet has it, and its line. */
    private static final double EDGE = 12;

    private static final double BAR_HEIGHT = 30;
    private static final double OCTAGON = 9;

    private final boolean wide;
    private final double[] columns;
    private final ScreenLook look;

    MethodTable(boolean wide, ScreenLook look) {
        this.wide = wide;
        this.look = look;
        columns = wide ? WIDE : NARROW;
    }

    private double width() {
        double sum = 0;
        for (double column : columns) {
            sum += column;
        }
        return sum;
    }

    /** What the columns are, over the first row. */
    Node heads(String currency, String weightUnit) {
        GridPane grid = grid();
        grid.setStyle("-fx-padding: 0 0 0 " + EDGE + ";");
        String[] words = {"", "cost, " + currency, "hours", "days", weightUnit, "stiff, of 100"};
        for (int i = 1; i < words.length; i++) {
            Label head = new Label(words[i]);
            head.getStyleClass().add("column-head");
            head.setMinWidth(javafx.scene.layout.Region.USE_PREF_SIZE);
            GridPane.setHalignment(head, HPos.RIGHT);
            grid.add(head, i, 0);
        }
        return grid;
    }

    private GridPane grid() {
        GridPane grid = new GridPane();
        for (double column : columns) {
            ColumnConstraints constraints = new ColumnConstraints(column, column, column);
            constraints.setHalignment(HPos.RIGHT);
            grid.getColumnConstraints().add(constraints);
        }
        return grid;
    }

    /** A row's name, figures and words. */
    Node row(DecideModel.Row row, String words) {
        GridPane grid = grid();
        grid.setVgap(2);
        int line = 0;
        HBox name = new HBox(6);
        if (!row.offered()) {
            name.getChildren().add(stop());
        }
        name.getChildren().add(text(Methods.name(row.method()), "method-title", 0));
        GridPane.setHalignment(name, HPos.LEFT);
        if (wide && row.offered()) {
            name.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
            grid.add(name, 0, line);
        } else {
            grid.add(name, 0, line++, columns.length, 1);
        }
        if (row.offered()) {
            DecideModel.Asks asks = row.asks();
            String[] figures = {asks.cost(), asks.hours(), asks.days(), asks.weight()};
            for (int i = 0; i < figures.length; i++) {
                Node figure = text(figures[i], "method-figure", 0);
                GridPane.setValignment(figure, VPos.CENTER);
                grid.add(figure, i + 1, line);
            }
            int at = line;
            row.stiffness().ifPresent(q -> grid.add(bar(q, row.current()), columns.length - 1, at));
            line++;
        }
        if (!words.isEmpty()) {
            Text why = text(words, "method-words", width());
            GridPane.setHalignment(why, HPos.LEFT);
            grid.add(why, 0, line, columns.length, 1);
        }
        return grid;
    }

    /** Of a height that is known before it is laid out. */
    private static Text text(String words, String style, double wrap) {
        Text text = new Text(words);
        text.setWrappingWidth(wrap);
        text.getStyleClass().add(style);
        return text;
    }

    /** A stop sign: an octagon with a bar. */
    private Node stop() {
        Color ink = PlanPane.fx(look.tone().ink());
        Polygon octagon = new Polygon();
        for (int i = 0; i < 8; i++) {
            double angle = Math.PI / 8 + i * Math.PI / 4;
            octagon.getPoints().addAll(OCTAGON * (1 + Math.cos(angle)), OCTAGON * (1 + Math.sin(angle)));
        }
        octagon.setFill(Color.TRANSPARENT);
        octagon.setStroke(ink);
        octagon.setStrokeWidth(1.5);
        Line bar = new Line(OCTAGON - 4, OCTAGON, OCTAGON + 4, OCTAGON);
        bar.setStroke(ink);
        bar.setStrokeWidth(3);
        return new Pane(octagon, bar);
    }

    /** From the low to the high figure a thick bar, the middle a tick under its figure; the scale goes from nothing to the deck as built. */
    private Canvas bar(Quantiles q, boolean onInk) {
        double width = columns[columns.length - 1];
        Canvas canvas = new Canvas(width, BAR_HEIGHT);
        GraphicsContext g = canvas.getGraphicsContext2D();
        Color ink = PlanPane.fx(onInk ? look.tone().ground() : look.tone().ink());
        double left = 14;
        double right = width - 8;
        double y = 22;
        g.setStroke(ink);
        g.setFill(ink);
        g.setLineWidth(1);
        g.strokeLine(left, y, right, y);
        g.strokeLine(left, y - 4, left, y);
        g.strokeLine(right, y - 4, right, y);
        double from = x(q.p10(), left, right);
        double to = x(q.p90(), left, right);
        double middle = x(q.p50(), left, right);
        g.fillRect(from, y - 3, Math.max(2, to - from), 6);
        g.fillRect(middle - 1.5, y - 7, 3, 14);
        g.setFont(Font.font("Asap", FontWeight.BOLD, 14));
        String figure = Figures.fixed(100 * q.p50(), 0);
        g.setTextAlign(TextAlignment.CENTER);
        g.fillText(figure, Math.min(middle, width - 5.5 * figure.length()), 12);
        return canvas;
    }

    private double x(double share, double left, double right) {
        return left + (right - left) * Math.max(0, Math.min(1, share));
    }
}
