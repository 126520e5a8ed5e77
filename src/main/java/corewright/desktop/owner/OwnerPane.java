package corewright.desktop.owner;

import corewright.assessment.Assessment;
import corewright.desktop.plan.Pixels;
import corewright.desktop.slip.RangeBar;
import corewright.desktop.slip.Slip;
import corewright.desktop.slip.SlipView;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.report.owner.OwnerView;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** One page for the owner, made of what was worked out beforehand. */
public final class OwnerPane extends VBox {
    /** Pixels to a millimetre of paper: the map's words of 2.6 mm are 11 px tall. */
    private static final double PX_PER_MM = 4.6;

    private static final double MAP_WIDTH = 640;

    /** Of the page's width, in a small window. */
    private static final double MAP_SHARE = 0.44;

    private static final double MAP_HEIGHT = 330;
    private static final double AMOUNT_WIDTH = 206;

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
     * @param measure of what is shown
     * @param leave back to work
     */
    public OwnerPane(Shown shown, String currency, Measure measure, Runnable leave) {
        getStyleClass().add("owner");
        setId("owner-pane");
        setFocusTraversable(true);
        OwnerView words = shown.words();
        Label title = SlipView.text(words.title(), "owner-title");
        title.setId("owner-title");
        HBox.setHgrow(title, Priority.ALWAYS);
        title.setMaxWidth(Double.MAX_VALUE);
        HBox head = new HBox(12, title, round(true));
        ImageView map = new ImageView(shown.map().image());
        map.setPreserveRatio(true);
        map.fitWidthProperty().bind(Bindings.min(MAP_WIDTH, widthProperty().multiply(MAP_SHARE)));
        map.setAccessibleText("Plan with what is wrong on it");
        VBox told = new VBox(
                6,
                SlipView.text("What is wrong", "owner-head"),
                SlipView.text(words.wrong(), "sentence"),
                SlipView.text("How sure we are", "owner-head"),
                SlipView.text(words.doubt(), "sentence"));
        told.getChildren().add(SlipView.text("What to do now", "owner-head"));
        for (int i = 0; i < words.now().size(); i++) {
            told.getChildren().add(step(i + 1, words.now().get(i), words.now().size() == 1));
        }
        HBox.setHgrow(told, Priority.ALWAYS);
        told.setMinWidth(0);
        VBox seen = new VBox(4, map, amounts(words.amounts()));
        HBox middle = new HBox(20, seen, told);
        VBox page = new VBox(6, middle);
        if (!words.choices().isEmpty()) {
            OwnerChoices choices = new OwnerChoices(words, currency, measure);
            page.getChildren().addAll(choices.head(), choices.table());
        }
        Button back = SlipView.key("owner-back", "Back to work", leave);
        back.setMinWidth(USE_PREF_SIZE);
        Label costs = SlipView.text(words.costs(), "quiet");
        HBox.setHgrow(costs, Priority.ALWAYS);
        costs.setMaxWidth(Double.MAX_VALUE);
        HBox foot = new HBox(16, back, costs, round(false));
        foot.setAlignment(Pos.CENTER_LEFT);
        ScrollPane scroll = new ScrollPane(new OnePage(page));
        scroll.setFitToWidth(true);
        scroll.setFitToHeight(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.getStyleClass().add("insight-scroll");
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().setAll(head, scroll, foot);
        addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                leave.run();
                e.consume();
            }
        });
    }

    /** At both long edges: whoever sits opposite reads the one that stands on its head for the other. */
    private Button round(boolean opposite) {
        Button round = SlipView.key(opposite ? "owner-turn-back" : "owner-turn", "Turn round", () -> {
            setRotate(getRotate() == 0 ? 180 : 0);
            setAccessibleText("Page turned.");
        });
        round.setMinWidth(USE_PREF_SIZE);
        round.setRotate(opposite ? 180 : 0);
        return round;
    }

    private static Node amounts(List<OwnerView.Amount> amounts) {
        HBox bars = new HBox(12);
        bars.setAlignment(Pos.BOTTOM_LEFT);
        for (OwnerView.Amount amount : amounts) {
            Slip.Range range = new Slip.Range(amount.low(), amount.middle(), amount.high(), amount.unit(), false);
            VBox one =
                    new VBox(SlipView.text(amount.what(), "quiet"), RangeBar.of(range, AMOUNT_WIDTH, FootPicture.INK));
            one.setMaxWidth(AMOUNT_WIDTH);
            bars.getChildren().add(one);
        }
        return bars;
    }

    private static Node step(int number, String words, boolean only) {
        Label text = SlipView.text(words, "sentence");
        HBox.setHgrow(text, Priority.ALWAYS);
        if (only) {
            return text;
        }
        Label count = SlipView.text(Integer.toString(number), "head");
        count.setMinWidth(18);
        return new HBox(6, count, text);
    }
}
