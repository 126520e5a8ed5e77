package corewright.desktop.insight;

import corewright.desktop.plan.Pixels;
import corewright.desktop.slip.SlipView;
import corewright.drawing.kit.Tone;
import corewright.drawing.screen.Chart;
import corewright.drawing.screen.ChartPainter;
import corewright.drawing.screen.ScreenLook;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.ImageView;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** Four pictures of what the map rests on, over the whole window. Made of pictures painted beforehand. */
public final class InsightView extends VBox {
    /** Four fit into the smallest window by scrolling, and into 1440 x 900 without. */
    static final double WIDTH = 660;

    static final double HEIGHT = 270;

    /** A panel with its chart painted, {@code null} where there is none. */
    public record Shown(InsightPanels.Panel panel, @Nullable Pixels image) {}

    public InsightView(String face, List<Shown> shown, Runnable done) {
        getStyleClass().addAll("insight");
        setId("insight-view");
        Label title = new Label("How good the map of the " + face + " is");
        title.getStyleClass().add("slip-title");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        Button back = new Button("Back to the plan");
        back.setId("insight-done");
        back.setCancelButton(true);
        back.setOnAction(e -> done.run());
        HBox head = new HBox(title, gap, back);
        head.getStyleClass().add("insight-head");
        FlowPane all = new FlowPane();
        all.getStyleClass().add("insight-all");
        shown.forEach(s -> all.getChildren().add(panel(s)));
        ScrollPane scroll = new ScrollPane(all);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.getStyleClass().add("insight-scroll");
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().addAll(head, scroll);
    }

    private static Node panel(Shown shown) {
        VBox box =
                new VBox(SlipView.text(shown.panel.title(), "head"), SlipView.text(shown.panel.sentence(), "sentence"));
        box.getStyleClass().add("insight-panel");
        box.setPrefWidth(WIDTH);
        Pixels image = shown.image;
        if (image != null) {
            ImageView view = new ImageView(image.image());
            view.setFitWidth(WIDTH);
            view.setFitHeight(HEIGHT);
            view.setAccessibleText(shown.panel.title() + ". " + shown.panel.sentence());
            box.getChildren().add(view);
        }
        return box;
    }

    /**
     * A panel with its chart painted; for a thread that may take its time.
     *
     * @param sharpness device pixels to one of the window
     */
    public static Shown painted(InsightPanels.Panel panel, ScreenLook look, double sharpness) {
        Chart chart = panel.chart();
        return new Shown(panel, chart == null ? null : image(chart, look.tone(), sharpness));
    }

    private static Pixels image(Chart chart, Tone tone, double sharpness) {
        BufferedImage image = new BufferedImage(
                (int) Math.ceil(WIDTH * sharpness),
                (int) Math.ceil(HEIGHT * sharpness),
                BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D g = image.createGraphics();
        g.scale(sharpness, sharpness);
        ChartPainter.onScreen(g, chart, WIDTH, HEIGHT, tone);
        g.dispose();
        return Pixels.of(image);
    }
}
