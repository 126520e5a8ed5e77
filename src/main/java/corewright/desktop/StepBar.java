package corewright.desktop;

import corewright.desktop.slip.LongNames;
import corewright.desktop.state.Sight;
import corewright.desktop.state.Step;
import java.util.EnumMap;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The rule at the window's head: six steps, each with its state; the one shown is the filled length. */
final class StepBar extends HBox {
    private final Map<Step, Button> keys = new EnumMap<>(Step.class);
    private final Map<Step, Label> states = new EnumMap<>(Step.class);
    private final Label name = new Label();
    private final Label what = new Label();

    StepBar(Sight sight) {
        getStyleClass().add("step-bar");
        name.getStyleClass().add("survey-name");
        what.getStyleClass().add("quiet");
        VBox head = new VBox(LongNames.shorten(name), LongNames.shorten(what));
        head.setAlignment(Pos.CENTER_LEFT);
        head.getStyleClass().add("survey-head");
        head.setMinWidth(0);
        getChildren().add(head);
        for (Step step : Step.values()) {
            Label title = new Label(step.word());
            title.getStyleClass().add("step-name");
            Label state = new Label();
            state.getStyleClass().add("step-state");
            VBox words = new VBox(title, state);
            words.getStyleClass().add("step-words");
            Region tooth = new Region();
            tooth.getStyleClass().add("step-tooth");
            Region fill = new Region();
            fill.getStyleClass().add("step-fill");
            StackPane all = new StackPane(fill, tooth, words);
            StackPane.setAlignment(words, Pos.TOP_LEFT);
            StackPane.setAlignment(tooth, Pos.BOTTOM_LEFT);
            StackPane.setAlignment(fill, Pos.BOTTOM_LEFT);
            all.getStyleClass().add("step-face");
            Button key = new Button();
            key.setGraphic(all);
            key.getStyleClass().add("step");
            key.setId("step-" + step.name().toLowerCase(java.util.Locale.ROOT));
            key.setMaxWidth(Double.MAX_VALUE);
            all.prefWidthProperty().bind(key.widthProperty());
            key.setOnAction(e -> sight.go(step));
            HBox.setHgrow(key, Priority.ALWAYS);
            keys.put(step, key);
            states.put(step, state);
            getChildren().add(key);
        }
    }

    void show(String survey, String about, Map<Step, String> words, Step current) {
        name.setText(survey);
        what.setText(about);
        keys.forEach((step, key) -> {
            String state = words.getOrDefault(step, "");
            Label label = java.util.Objects.requireNonNull(states.get(step));
            label.setText(state);
            key.setAccessibleText(step.word() + ", " + state);
            key.getStyleClass().remove("current");
            if (step == current) {
                key.getStyleClass().add("current");
            }
        });
    }
}
