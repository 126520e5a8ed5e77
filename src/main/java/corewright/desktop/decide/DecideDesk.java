package corewright.desktop.decide;

import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.decision.Flip;
import corewright.decision.Method;
import corewright.desktop.plan.PlanPane;
import corewright.desktop.slip.SlipView;
import corewright.desktop.state.Workbench;
import corewright.drawing.kit.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;

/** The decision in the slip: of the region selected, or of the whole deck where none is. */
public final class DecideDesk {
    static final double WIDTH = 330;

    private final Workbench bench;
    private final Runnable tell;
    private final DecideModel model;
    private final DeckDesk deck;
    private final TextField reason = new TextField();
    private final TextField who = new TextField();
    private final Label problem = SlipView.text("", "message");

    public DecideDesk(Workbench bench, Runnable tell) {
        this.bench = bench;
        this.tell = tell;
        model = new DecideModel(bench);
        deck = new DeckDesk(bench, tell);
        reason.setId("decide-reason");
        reason.setPromptText("why, in your words");
        reason.setAccessibleText("The reason for another method");
        reason.setOnAction(e -> decide());
        who.setId("decide-who");
        who.setAccessibleText("Who decides");
        who.setOnAction(e -> decide());
        problem.setId("decide-problem");
    }

    public DecideModel model() {
        return model;
    }

    public DeckModel deck() {
        return deck.model();
    }

    /** A method is wanted for the region selected. */
    public void want(Method method) {
        model.want(method);
        problem.setText("");
        reason.clear();
        tell.run();
        if (model.wanted().isPresent()) {
            reason.requestFocus();
        }
    }

    private void decide() {
        String missing = model.decide(reason.getText(), who.getText());
        problem.setText(missing);
        if (missing.isEmpty()) {
            reason.clear();
        }
        tell.run();
    }

    public Node[] actions() {
        Region region = model.region().orElse(null);
        if (region == null) {
            return bench.region().isPresent() ? new Node[0] : deck.actions();
        }
        List<Node> all = new ArrayList<>();
        for (DecideModel.Row row : model.rows(region)) {
            all.add(key(row));
            if (model.wanted().filter(m -> m == row.method()).isPresent()) {
                all.addAll(asking(region, row.method()));
            }
        }
        model.overruled(region)
                .ifPresent(o -> all.add(SlipView.key(
                        "decide-as-advised",
                        "As advised: " + Methods.name(o.rules()).toLowerCase(Locale.ROOT),
                        () -> {
                            model.want(o.rules());
                            decide();
                        })));
        String first = model.first(region);
        if (first != null && !first.isEmpty()) {
            all.add(SlipView.text("To be proven first", "head"));
            all.add(SlipView.text(first, "sentence"));
        }
        List<String> reasons = model.reasons(region);
        if (!reasons.isEmpty()) {
            all.add(SlipView.text("Why", "head"));
            reasons.forEach(r -> all.add(SlipView.text(r, "sentence")));
        }
        List<Flip> flips = model.flips(region);
        if (!flips.isEmpty()) {
            all.add(SlipView.text("What would change this", "head"));
            flips.forEach(f -> all.add(SlipView.text(
                    Methods.name(f.becomes()) + " if " + model.say(f.condition()) + ": "
                            + (f.probability() < 0.005
                                    ? "less than 1 case in 100."
                                    : Figures.fixed(100 * f.probability(), 0) + " cases in 100."),
                    "sentence")));
        }
        return all.toArray(Node[]::new);
    }

    private Button key(DecideModel.Row row) {
        VBox words = new VBox(3);
        words.getChildren().add(line(Methods.name(row.method()) + standing(row), "method-title"));
        words.getChildren().add(line(row.offered() ? row.figures() : row.why(), "method-words"));
        if (row.offered()) {
            row.stiffness().ifPresent(q -> words.getChildren().add(bar(q, row.current())));
        }
        Button key = new Button();
        key.setGraphic(words);
        key.setId("method-" + row.method().word());
        key.getStyleClass().addAll("method", row.current() ? "advised" : row.offered() ? "offered" : "not_offered");
        key.setMaxWidth(Double.MAX_VALUE);
        key.setMinHeight(javafx.scene.layout.Region.USE_PREF_SIZE);
        key.setAccessibleText(Methods.name(row.method()) + standing(row) + ". " + row.figures());
        key.setAccessibleHelp(row.why());
        key.setOnAction(e -> {
            if (row.current()) {
                bench.say(Methods.name(row.method()) + ": " + row.why());
            } else {
                want(row.method());
            }
        });
        return key;
    }

    private static String standing(DecideModel.Row row) {
        return !row.offered()
                ? ": not offered"
                : (row.advised() ? ", advised" : "") + (row.current() && !row.advised() ? ", decided" : "");
    }

    /** Of a height that is known before it is laid out. */
    private static Text line(String words, String style) {
        Text text = new Text(words);
        text.setWrappingWidth(WIDTH - 20);
        text.getStyleClass().add(style);
        return text;
    }

    private List<Node> asking(Region region, Method method) {
        List<Node> all = new ArrayList<>();
        String stop = model.stop();
        if (!stop.isEmpty()) {
            all.add(SlipView.text("This goes past a stop sign: " + stop + " It stays in the report.", "message"));
        }
        if (method != model.advised(region)) {
            all.add(reason);
            who.setPromptText(model.named() ? "who decides, if not the surveyor" : "who decides");
            all.add(who);
        }
        all.add(problem);
        all.add(SlipView.key("decide-take", Methods.name(method) + " " + region.id(), this::decide));
        all.add(SlipView.key("decide-leave", "Leave it as it is", () -> {
            model.wantNothing();
            tell.run();
        }));
        problem.setManaged(!problem.getText().isEmpty());
        return all;
    }

    /** Stiffness as a thick bar from its low to its high figure, the middle as a tick with its figure; as built is 100. */
    private Canvas bar(Quantiles q, boolean onInk) {
        Canvas canvas = new Canvas(WIDTH - 20, 34);
        GraphicsContext g = canvas.getGraphicsContext2D();
        var tone = bench.sight().appearance().look().tone();
        Color ink = PlanPane.fx(onInk ? tone.ground() : tone.ink());
        double left = 4;
        double right = WIDTH - 60;
        double top = Math.max(1, q.p90());
        double per = (right - left) / top;
        g.setStroke(ink);
        g.setFill(ink);
        g.setLineWidth(1);
        g.strokeLine(left, 26, right, 26);
        g.strokeLine(left + per, 21, left + per, 31);
        g.fillRect(left + q.p10() * per, 22.5, Math.max(2, (q.p90() - q.p10()) * per), 7);
        g.fillRect(left + q.p50() * per - 1.5, 17, 3, 17);
        g.setFont(Font.font("Asap", FontWeight.BOLD, 14));
        String words = Figures.fixed(100 * q.p50(), 0) + " of 100 stiff, "
                + DecideModel.range(100 * q.p10(), 100 * q.p90(), 0);
        g.fillText(words, left, 13);
        canvas.setAccessibleText(words);
        return canvas;
    }
}
