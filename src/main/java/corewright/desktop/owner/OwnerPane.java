package corewright.desktop.owner;

import corewright.assessment.Assessment;
import corewright.damage.Quantiles;
import corewright.decision.Choice;
import corewright.desktop.plan.Pixels;
import corewright.desktop.plan.PlanPane;
import corewright.desktop.slip.SlipView;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Paper;
import corewright.drawing.screen.ScreenLook;
import corewright.report.owner.OwnerView;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** One page for the owner, made of what was worked out beforehand. */
public final class OwnerPane extends VBox {
    /** Pixels to a millimetre of paper: the map's words of 2.6 mm are 11 px tall. */
    private static final double PX_PER_MM = 4.6;

    private static final double MAP_WIDTH = 640;

    /** Of the page's width, in a small window. */
    private static final double MAP_SHARE = 0.46;

    private static final double MAP_HEIGHT = 390;
    private static final double BAR = 165;

    /** What is shown, with its map painted. */
    public record Shown(OwnerView words, Pixels map) {}

    /** For a thread that may take its time. */
    public static Shown made(Assessment found, double sharpness) {
        BufferedImage image = new BufferedImage(
                (int) Math.ceil(MAP_WIDTH * sharpness),
                (int) Math.ceil(MAP_HEIGHT * sharpness),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.scale(sharpness * PX_PER_MM, sharpness * PX_PER_MM);
        OwnerView.paintMap(new Paper(g), found, new Box(0, 0, MAP_WIDTH / PX_PER_MM, MAP_HEIGHT / PX_PER_MM));
        g.dispose();
        return new Shown(OwnerView.of(found), Pixels.of(image));
    }

    /**
     * @param currency before a sum
     * @param leave back to work
     */
    public OwnerPane(Shown shown, String currency, ScreenLook look, Runnable leave) {
        getStyleClass().add("owner");
        setId("owner-pane");
        setFocusTraversable(true);
        OwnerView words = shown.words();
        Label title = SlipView.text(words.title(), "owner-title");
        title.setId("owner-title");
        HBox.setHgrow(title, Priority.ALWAYS);
        title.setMaxWidth(Double.MAX_VALUE);
        Button round = SlipView.key("owner-turn", "Turn round", () -> setRotate(getRotate() == 0 ? 180 : 0));
        Button back = SlipView.key("owner-back", "Back to work", leave);
        round.setMinWidth(USE_PREF_SIZE);
        back.setMinWidth(USE_PREF_SIZE);
        HBox head = new HBox(12, title, round, back);
        ImageView map = new ImageView(shown.map().image());
        map.setPreserveRatio(true);
        map.fitWidthProperty().bind(Bindings.min(MAP_WIDTH, widthProperty().multiply(MAP_SHARE)));
        map.setAccessibleText("Plan with what is wrong on it");
        VBox told = new VBox(
                6,
                SlipView.text("What is wrong", "owner-head"),
                SlipView.text(words.wrong(), "sentence"),
                SlipView.text("How sure we are", "owner-head"),
                SlipView.text(words.doubt(), "sentence"),
                SlipView.text("What to do now", "owner-head"),
                SlipView.text(words.now(), "sentence"));
        HBox.setHgrow(told, Priority.ALWAYS);
        HBox middle = new HBox(20, map, told);
        VBox page = new VBox(12, middle);
        if (!words.choices().isEmpty()) {
            page.getChildren().add(SlipView.text("What can be done", "owner-head"));
            HBox choices = new HBox(16);
            words.choices().forEach(c -> choices.getChildren().add(choice(c, words.standing(), currency, look)));
            page.getChildren().addAll(choices, SlipView.text(words.costs(), "quiet"));
        }
        ScrollPane scroll = new ScrollPane(page);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.getStyleClass().add("insight-scroll");
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().setAll(head, scroll);
        addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                leave.run();
                e.consume();
            }
        });
    }

    private static Node choice(Choice choice, String standing, String currency, ScreenLook look) {
        VBox box = new VBox(4, SlipView.text(choice.title(), "owner-choice"), SlipView.text(choice.regions(), "quiet"));
        choice.ofAsBuilt().ifPresent(q -> box.getChildren().add(bar(q, look)));
        box.getChildren()
                .addAll(
                        SlipView.text(OwnerView.effort(currency, choice), "head"),
                        SlipView.text((choice.advised() ? standing + " " : "") + choice.toKnow(), "sentence"));
        box.getStyleClass().add(choice.advised() ? "owner-advised" : "owner-offered");
        HBox.setHgrow(box, Priority.ALWAYS);
        box.setPrefWidth(240);
        box.setMaxWidth(Double.MAX_VALUE);
        box.setMinHeight(Region.USE_PREF_SIZE);
        return box;
    }

    /** Stiffness where the deck is weakest, as built 100, from the low to the high figure. */
    private static Canvas bar(Quantiles q, ScreenLook look) {
        Canvas canvas = new Canvas(BAR + 20, 40);
        GraphicsContext g = canvas.getGraphicsContext2D();
        g.setFill(PlanPane.fx(look.tone().ink()));
        g.setStroke(PlanPane.fx(look.tone().ink()));
        double end = Math.max(1, q.p90());
        g.strokeLine(1, 30.5, 1 + BAR, 30.5);
        g.fillRect(1, 26, BAR * q.p10() / end, 9);
        g.strokeRect(1 + BAR * q.p10() / end, 26, BAR * (q.p90() - q.p10()) / end, 9);
        g.fillRect(BAR * q.p50() / end - 0.5, 21, 3, 19);
        g.setFont(javafx.scene.text.Font.font("Asap", javafx.scene.text.FontWeight.BOLD, 15));
        String words = Figures.fixed(100 * q.p50(), 0) + " of 100 as stiff as built";
        g.fillText(words, 1, 15);
        canvas.setAccessibleText(words);
        return canvas;
    }
}
