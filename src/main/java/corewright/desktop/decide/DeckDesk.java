package corewright.desktop.decide;

import corewright.desktop.slip.SlipView;
import corewright.desktop.state.Workbench;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * The whole deck: a stiffness or a sum as a control on the stair of least cost, and the mix it comes to. A strip under the plan; in a
 * low window it stands in the slip.
 */
final class DeckDesk {
    private final Workbench bench;
    private final Runnable tell;
    private final DeckModel model;
    private final Button stiffness;
    private final Button budget;
    private final Stair stair;
    private final Label title = SlipView.text("The whole deck", "deck-title");
    private final HBox which;
    private final Label question = SlipView.text("", "deck-words");
    private final FlowPane figures = new FlowPane(18, 2);
    private final Label mix = SlipView.text("", "deck-mix");
    private final Label up = SlipView.text("", "deck-words");
    private final Label problem = SlipView.text("", "message");
    private final TextField reason = new TextField();
    private final TextField who = new TextField();
    private final Button take = SlipView.key("deck-take", "Take this mix", this::take);
    private final Label decided = SlipView.text("This is what is decided now.", "quiet");
    private final HBox deed = new HBox(8);
    private final VBox left = new VBox(8);
    private final VBox right = new VBox(6);
    private final HBox strip = new HBox(20);

    DeckDesk(Workbench bench, Runnable tell) {
        this.bench = bench;
        this.tell = tell;
        model = new DeckModel(bench);
        stiffness = SlipView.key("deck-stiffness", "Stiffness", () -> ask(false));
        budget = SlipView.key("deck-budget", "Budget", () -> ask(true));
        which = new HBox(stiffness, budget);
        stair = new Stair(bench, model, this::fill);
        HBox.setHgrow(stiffness, Priority.ALWAYS);
        HBox.setHgrow(budget, Priority.ALWAYS);
        figures.setId("deck-figures");
        question.setId("deck-question");
        mix.setId("deck-mix");
        reason.setId("deck-reason");
        reason.setPromptText("why, in your words");
        reason.setAccessibleText("The reason for this mix");
        reason.setOnAction(e -> take());
        HBox.setHgrow(reason, Priority.ALWAYS);
        take.setMinWidth(Region.USE_PREF_SIZE);
        who.setId("deck-who");
        who.setPrefColumnCount(7);
        who.setPromptText("who decides");
        who.setAccessibleText("Who decides");
        who.setOnAction(e -> take());
        deed.setAlignment(Pos.CENTER_LEFT);
        left.getStyleClass().add("deck-asked");
        right.setId("deck-answer");
        right.getStyleClass().add("deck-answer");
        HBox.setHgrow(stair, Priority.ALWAYS);
        strip.setId("deck-strip");
        strip.getStyleClass().add("deck-strip");
    }

    DeckModel model() {
        return model;
    }

    boolean key(KeyEvent e) {
        return stair.isFocused() && stair.key(e);
    }

    private void ask(boolean forBudget) {
        model.ask(forBudget);
        fill();
    }

    private void take() {
        problem.setText(model.take(reason.getText(), who.getText()));
        if (problem.getText().isEmpty()) {
            reason.clear();
        }
        tell.run();
    }

    /** Over the window's whole width; empty where no panel with damage was calculated. */
    Node strip() {
        boolean any = !model.steps().isEmpty();
        part(strip, any);
        if (any) {
            left.getChildren().setAll(title, which, question);
            if (!deed.getChildren().contains(reason)) { // a field that changes its parent loses the focus
                deed.getChildren().setAll(deed());
            }
            right.getChildren().setAll(figures, mix, up, deed);
            strip.getChildren().setAll(left, stair, right);
            fill();
        }
        return strip;
    }

    /** The same in the slip. */
    Node[] actions() {
        if (model.steps().isEmpty()) {
            return new Node[0];
        }
        List<Node> all = new ArrayList<>(List.of(title, which, question, stair, figures, mix, up));
        all.addAll(List.of(deed()));
        fill();
        return all.toArray(Node[]::new);
    }

    /** What is left to do: a reason, and by whom where the survey names nobody; which of it stands {@link #fill} says. */
    private Node[] deed() {
        return new Node[] {reason, who, take, decided};
    }

    private void fillDeed() {
        boolean differs = !model.differing().isEmpty();
        part(reason, differs);
        part(
                who,
                differs
                        && bench.survey()
                                .filter(s -> !s.heading().surveyor().isBlank())
                                .isEmpty());
        part(take, differs);
        part(decided, !differs && model.chosen().isPresent());
    }

    private static void part(Node node, boolean shown) {
        node.setVisible(shown);
        node.setManaged(shown);
    }

    private static void style(Button key, boolean chosen) {
        key.getStyleClass().removeAll("chosen", "open-choice");
        key.getStyleClass().add(chosen ? "chosen" : "open-choice");
    }

    /** At once, while the control moves. */
    private void fill() {
        style(stiffness, !model.byBudget());
        style(budget, model.byBudget());
        question.setText(model.question());
        figures.getChildren().clear();
        for (DeckModel.Told told : model.told()) {
            Label figure = new Label(told.figure());
            figure.getStyleClass().add("deck-figure");
            figure.setMinWidth(Region.USE_PREF_SIZE);
            Label what = new Label(told.what());
            what.getStyleClass().add("quiet");
            what.setMinWidth(Region.USE_PREF_SIZE);
            figures.getChildren().add(new VBox(-2, figure, what));
        }
        int differing = model.differing().size();
        mix.setText(
                model.told().isEmpty()
                        ? model.answer()
                        : model.mix() + (differing > 0 ? " " + differing + " to change." : ""));
        up.setText(problem.getText().isEmpty() ? model.up() : problem.getText());
        fillDeed();
        stair.show();
    }
}
