package corewright.desktop.work;

import corewright.desktop.plan.PlanPane;
import corewright.desktop.slip.SlipView;
import corewright.drawing.screen.ScreenLook;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;

/** The cups as a row: shut when they are done, half full in hand, empty to come, in broken lines where they are held back. */
final class WorkCups extends ScrollPane {
    private static final double WIDE = 26;
    private static final double HIGH = 30;

    private final ScreenLook look;
    private final HBox row = new HBox();
    private List<CupsInRow.Cup> shown = List.of();

    WorkCups(ScreenLook look) {
        this.look = look;
        setId("work-cups");
        setContent(row);
        setFitToHeight(true);
        setPannable(true);
        setVbarPolicy(ScrollBarPolicy.NEVER);
        setMinHeight(USE_PREF_SIZE);
        getStyleClass().add("work-cups");
    }

    void show(List<CupsInRow.Cup> cups) {
        if (cups.equals(shown)) {
            return;
        }
        shown = cups;
        List<Node> cells = new ArrayList<>();
        cups.forEach(c -> cells.add(cell(c)));
        row.getChildren().setAll(cells);
        int at = cups.stream().map(CupsInRow.Cup::state).toList().indexOf(CupsInRow.State.IN_HAND);
        setHvalue(at <= 1 ? 0 : (double) at / (cups.size() - 1));
    }

    private Node cell(CupsInRow.Cup cup) {
        Label title = SlipView.text(cup.title(), "work-cup-title");
        Label words = SlipView.text(cup.words(), "work-cup-words");
        for (Label label : List.of(title, words)) {
            label.setWrapText(false);
            label.setMinWidth(Region.USE_PREF_SIZE);
        }
        HBox cell = new HBox(8, glyph(cup.state()), new VBox(title, words));
        cell.getStyleClass().add("work-cup-cell");
        return cell;
    }

    private Canvas glyph(CupsInRow.State state) {
        Canvas canvas = new Canvas(WIDE, HIGH);
        GraphicsContext g = canvas.getGraphicsContext2D();
        Color ink = PlanPane.fx(look.tone().ink());
        double[] xs = {2, 6, WIDE - 6, WIDE - 2};
        double[] ys = {5, HIGH - 2, HIGH - 2, 5};
        g.setStroke(ink);
        g.setLineWidth(2.2);
        if (state == CupsInRow.State.IN_HAND) {
            g.setFill(ink.deriveColor(0, 1, 1, 0.3));
            g.fillPolygon(new double[] {4, 6, WIDE - 6, WIDE - 4}, new double[] {16, HIGH - 2, HIGH - 2, 16}, 4);
        }
        if (state == CupsInRow.State.HELD_BACK) {
            g.setLineDashes(3, 4);
        }
        g.strokePolyline(xs, ys, 4);
        if (state == CupsInRow.State.DONE) {
            g.setFill(ink);
            g.fillRect(0, 2, WIDE, 5);
        }
        return canvas;
    }
}
