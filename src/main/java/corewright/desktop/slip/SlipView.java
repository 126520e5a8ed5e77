package corewright.desktop.slip;

import corewright.decision.Method;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;
import javafx.scene.text.TextFlow;
import org.jspecify.annotations.Nullable;

/** The slip at the right, from its words. */
public final class SlipView extends VBox {
    private static final double WIDTH = 350;

    /** Ink of a figure of before: as strong as the quiet words beside it, 6.4 : 1 by day. */
    private static final double QUIET = 0.75;

    private final Consumer<Slip.FindingLine> go;
    private final Help help;
    private final List<Node> above = new ArrayList<>();
    private final List<Node> below = new ArrayList<>();
    private final Region rule = rule();
    private @Nullable Slip shown;
    private @Nullable Color shownInk;
    private Consumer<Method> wanted = m -> {};

    public SlipView(Consumer<Slip.FindingLine> go, Help help) {
        this.go = go;
        this.help = help;
        getStyleClass().add("slip");
    }

    /** Told which method was touched. */
    public void onMethod(Consumer<Method> listener) {
        wanted = listener;
    }

    /**
     * Shows a slip. What is shown again stays the same nodes: a field keeps its focus, and a key that is pressed while a
     * calculation tells how far it is does its deed all the same.
     *
     * @param actions buttons and fields of the step, between the facts and the findings
     */
    public void show(Slip slip, Color ink, Node... actions) {
        if (!slip.equals(shown) || !ink.equals(shownInk)) {
            above.clear();
            below.clear();
            above(slip, ink);
            below(slip);
            shown = slip;
            shownInk = ink;
        }
        List<Node> all = new ArrayList<>(above);
        if (actions.length > 0) {
            all.add(rule);
            for (Node action : actions) {
                all.add(action instanceof Button key ? known(key) : action);
            }
        }
        all.addAll(below);
        if (!all.equals(getChildren())) {
            String inHand = inHand();
            getChildren().setAll(all);
            Node again = inHand.isEmpty() ? null : lookup("#" + inHand);
            if (again != null && !again.isFocused()) {
                again.requestFocus();
            }
        }
    }

    /** The name of the key or field here that has the focus: one that is made anew is to have it again. */
    private String inHand() {
        Node owner = getScene() == null ? null : getScene().getFocusOwner();
        for (Node n = owner; n != null; n = n.getParent()) {
            if (n.getParent() == this && n.getId() != null) {
                return n.getId();
            }
        }
        return "";
    }

    /** The key of that name that stands there already, with the words and the deed of the new one. */
    private Node known(Button fresh) {
        for (Node node : getChildren()) {
            if (node instanceof Button old
                    && old.getId() != null
                    && old.getId().equals(fresh.getId())
                    && old.getGraphic() == null
                    && fresh.getGraphic() == null) {
                old.setText(fresh.getText());
                old.setOnAction(fresh.getOnAction());
                old.setDisable(fresh.isDisable());
                old.setAccessibleText(fresh.getAccessibleText());
                return old;
            }
        }
        return fresh;
    }

    private void above(Slip slip, Color ink) {
        List<Node> all = above;
        all.add(head(slip));
        if (!slip.sentence().isEmpty()) {
            all.add(text(slip.sentence(), "sentence"));
        }
        if (!slip.before().isEmpty()) {
            Label age = text(slip.before(), "quiet");
            age.setId("slip-before");
            all.add(age);
        }
        if (!slip.facts().isEmpty() || slip.range() != null) {
            all.add(rule());
            all.add(text(slip.rangeTitle(), "head"));
        }
        Slip.Range range = slip.range();
        if (range != null) {
            all.add(RangeBar.of(range, WIDTH, range.old() ? ink.deriveColor(0, 1, 1, QUIET) : ink));
            if (range.middle() < 0.2 * range.axisEnd()) { // the low figure has no room beside the bar
                all.add(text(RangeBar.words(range), "quiet"));
            }
        }
        if (!slip.facts().isEmpty()) {
            all.add(facts(slip));
        }
    }

    private void below(Slip slip) {
        List<Node> all = below;
        if (!slip.work().methods().isEmpty()) {
            all.add(rule());
            all.add(text("What to do with it", "head"));
            all.add(methods(slip.work()));
        }
        if (!slip.work().advice().isEmpty()) {
            all.add(advice(slip.work().advice()));
        }
        if (!slip.work().findingsTitle().isEmpty()) {
            all.add(rule());
            all.add(text(slip.work().findingsTitle(), "head"));
            slip.work().findings().forEach(f -> all.add(finding(f)));
        }
    }

    private static Node head(Slip slip) {
        Label title = new Label(slip.title());
        title.getStyleClass().add("slip-title");
        title.setWrapText(true);
        Label aside = new Label(slip.aside());
        aside.getStyleClass().add("quiet");
        double together = slip.title().length() * 13.5 + slip.aside().length() * 8;
        if (together > WIDTH) {
            return new VBox(title, aside);
        }
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox row = new HBox(title, gap, aside);
        row.setAlignment(Pos.BASELINE_LEFT);
        return row;
    }

    /** A key that does one deed. */
    public static Button key(String id, String words, Runnable deed) {
        Button key = new Button(words);
        key.setId(id);
        key.getStyleClass().add("key");
        key.setMaxWidth(Double.MAX_VALUE);
        key.setOnAction(e -> deed.run());
        return key;
    }

    public static Label text(String words, String style) {
        Label label = new Label(words);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().add(style);
        return label;
    }

    static Region rule() {
        Region rule = new Region();
        rule.getStyleClass().add("rule");
        return rule;
    }

    private Node facts(Slip slip) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("facts");
        int row = 0;
        for (Slip.Fact fact : slip.facts()) {
            Label name = new Label(fact.name());
            String meaning = help.of(fact.name());
            if (!meaning.isEmpty()) {
                Tooltip tip = new Tooltip(meaning);
                tip.setWrapText(true);
                tip.setMaxWidth(WIDTH);
                name.setTooltip(tip);
                name.setAccessibleHelp(meaning);
            }
            Label value = new Label(fact.value());
            value.getStyleClass().add(fact.old() ? "fact-before" : "fact");
            value.setTextAlignment(TextAlignment.RIGHT);
            value.setWrapText(true);
            name.setMinWidth(Region.USE_PREF_SIZE);
            value.setMinHeight(Region.USE_PREF_SIZE);
            GridPane.setHgrow(value, Priority.ALWAYS);
            GridPane.setValignment(name, javafx.geometry.VPos.TOP);
            GridPane.setHalignment(value, javafx.geometry.HPos.RIGHT);
            grid.addRow(row++, name, value);
        }
        return grid;
    }

    private Node methods(Slip.Work work) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("methods");
        int i = 0;
        for (Slip.MethodKey m : work.methods()) {
            Label name = new Label(m.name());
            name.getStyleClass().add("method-name");
            Label note = new Label(m.note());
            note.getStyleClass().add("method-note");
            VBox words = new VBox(name, note);
            words.setAlignment(Pos.CENTER);
            Button key = new Button();
            key.setGraphic(words);
            key.getStyleClass().addAll("method", m.standing().name().toLowerCase(java.util.Locale.ROOT));
            key.setPrefWidth(WIDTH / 2);
            key.setOnAction(e -> wanted.accept(m.method()));
            key.setAccessibleText(m.name() + ", " + m.note());
            if (!m.why().isEmpty()) {
                Tooltip tip = new Tooltip(m.why());
                tip.setWrapText(true);
                tip.setMaxWidth(WIDTH);
                key.setTooltip(tip);
                key.setAccessibleHelp(m.why());
            }
            grid.add(key, i % 2, i / 2);
            i++;
        }
        return grid;
    }

    /** What is advised stands out, the reasons follow. */
    private static Node advice(String words) {
        int colon = words.indexOf(':') + 1;
        Text what = new Text(words.substring(0, colon));
        what.getStyleClass().add("strong");
        Text why = new Text(words.substring(colon));
        why.getStyleClass().add("plain");
        return new TextFlow(what, why);
    }

    private Node finding(Slip.FindingLine line) {
        Label mark = new Label(line.mark());
        mark.getStyleClass().add("finding-mark");
        Text fact = new Text(line.fact() + " ");
        fact.getStyleClass().add("strong");
        Text consequence = new Text(line.consequence());
        consequence.getStyleClass().add("plain");
        TextFlow words = new TextFlow(fact, consequence);
        HBox.setHgrow(words, Priority.ALWAYS);
        words.setPrefWidth(WIDTH - 30);
        HBox row = new HBox(mark, words);
        Button key = new Button();
        key.setGraphic(row);
        key.getStyleClass().add("finding");
        key.setWrapText(true); // as high as its words are at its width; else as high as at no width, one letter a line
        key.setMaxWidth(Double.MAX_VALUE);
        key.setAccessibleText(line.fact() + " " + line.consequence());
        key.setOnAction(e -> go.accept(line));
        return key;
    }
}
