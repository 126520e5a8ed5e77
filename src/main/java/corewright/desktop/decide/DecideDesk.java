package corewright.desktop.decide;

import corewright.damage.Region;
import corewright.decision.Flip;
import corewright.decision.Method;
import corewright.desktop.slip.SlipView;
import corewright.desktop.state.Workbench;
import corewright.drawing.kit.Figures;
import corewright.survey.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.BooleanSupplier;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyEvent;
import org.jspecify.annotations.Nullable;

/** The decision in the slip: of the region selected, or of the whole deck where none is. */
public final class DecideDesk {
    private final Workbench bench;
    private final Runnable tell;
    private final BooleanSupplier wide;
    private final BooleanSupplier roomy;
    private final DecideModel model;
    private final DeckDesk deck;
    private final TextField reason = new TextField();
    private final TextField who = new TextField();
    private final Label problem = SlipView.text("", "message");

    /**
     * @param wide whether the slip has room for a table's rows in one line
     * @param roomy whether the whole deck has a strip of its own
     */
    public DecideDesk(Workbench bench, Runnable tell, BooleanSupplier wide, BooleanSupplier roomy) {
        this.bench = bench;
        this.tell = tell;
        this.wide = wide;
        this.roomy = roomy;
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

    /** The whole deck as a strip over the window's width. */
    public Node strip() {
        return deck.strip();
    }

    /** Whether a key was meant for the whole deck's control. */
    public boolean key(KeyEvent e) {
        return deck.key(e);
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
            return bench.region().isPresent() || roomy.getAsBoolean() ? new Node[0] : deck.actions();
        }
        List<Node> all = new ArrayList<>();
        List<DecideModel.Row> rows = model.rows(region);
        MethodTable table =
                new MethodTable(wide.getAsBoolean(), bench.sight().appearance().look());
        if (rows.stream().anyMatch(DecideModel.Row::offered)) {
            all.add(table.heads(
                    model.currency(), bench.sight().units().measure().weightUnit()));
        }
        for (DecideModel.Row row : rows) {
            all.add(key(row, table, words(region, row)));
            if (model.wanted().filter(m -> m == row.method()).isPresent()) {
                all.addAll(asking(region, row.method()));
            }
        }
        String panel = model.panel(region);
        if (!panel.isEmpty()) {
            all.add(SlipView.text(
                    "Stiff: " + panel + " at its softest when " + region.id()
                            + " alone is treated so, 100 as built. Another method asks for one reason in your words.",
                    "quiet"));
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
        List<Flip> flips = model.flips(region);
        if (!flips.isEmpty()) {
            all.add(SlipView.text("What would change this", "head"));
            flips.forEach(f -> all.add(FlipLine.of(f, model.say(f.condition()), () -> show(f.spot()))));
        }
        return all.toArray(Node[]::new);
    }

    private void show(@Nullable Spot spot) {
        if (spot != null) {
            bench.goTo(spot);
            bench.sight().mark(spot, "");
        }
    }

    private Button key(DecideModel.Row row, MethodTable table, String words) {
        Button key = new Button();
        key.setGraphic(table.row(row, words));
        key.setId("method-" + row.method().word());
        key.getStyleClass().addAll("method", row.current() ? "advised" : row.offered() ? "offered" : "not_offered");
        key.setMaxWidth(Double.MAX_VALUE);
        key.setMinHeight(javafx.scene.layout.Region.USE_PREF_SIZE);
        key.setAccessibleText(Methods.name(row.method()) + standing(row) + ". " + row.figures() + stiff(row));
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

    private static String stiff(DecideModel.Row row) {
        return row.stiffness()
                .map(q -> ". " + Figures.fixed(100 * q.p50(), 0) + " of 100 stiff, "
                        + DecideModel.range(100 * q.p10(), 100 * q.p90(), 0) + ".")
                .orElse("");
    }

    /** What stands in a row under its figures: why it is decided so or not offered; where there is room also what the others ask. */
    private String words(Region region, DecideModel.Row row) {
        if (row.current()) {
            return (row.advised() ? "Advised. " : "Decided. ") + String.join(" ", model.reasons(region));
        }
        return !row.offered()
                ? "Not offered. " + row.why()
                : row.advised() || wide.getAsBoolean() ? (row.advised() ? "Advised. " : "") + row.why() : "";
    }

    private static String standing(DecideModel.Row row) {
        return !row.offered()
                ? ": not offered"
                : (row.advised() ? ", advised" : "") + (row.current() && !row.advised() ? ", decided" : "");
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
}
