package corewright.desktop.decide;

import corewright.decision.DeckSteps.Step;
import corewright.desktop.plan.PlanPane;
import corewright.desktop.slip.SlipView;
import corewright.desktop.state.Workbench;
import corewright.drawing.kit.Figures;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;

/** The whole deck: a stiffness or a sum as a control, the steps of least cost as a stair, and the mix it comes to. */
final class DeckDesk {
    private static final double WIDTH = 340;
    private static final double HEIGHT = 130;

    private final Workbench bench;
    private final Runnable tell;
    private final DeckModel model;
    private final Button stiffness;
    private final Button budget;
    private final Slider slider = new Slider();
    private final Canvas stair = new Canvas(WIDTH, HEIGHT);
    private final Label question = SlipView.text("", "sentence");
    private final Label answer = SlipView.text("", "head");
    private final Label mix = SlipView.text("", "sentence");
    private final Label up = SlipView.text("", "quiet");
    private final Label problem = SlipView.text("", "message");
    private final TextField reason = new TextField();
    private final TextField who = new TextField();
    private final Button take = SlipView.key("deck-take", "Take this mix", this::take);
    private boolean setting;

    DeckDesk(Workbench bench, Runnable tell) {
        this.bench = bench;
        this.tell = tell;
        model = new DeckModel(bench);
        stiffness = SlipView.key("deck-stiffness", "Stiffness", () -> ask(false));
        budget = SlipView.key("deck-budget", "Budget", () -> ask(true));
        slider.setId("deck-slider");
        slider.setAccessibleText("How stiff, or for how much");
        slider.setMinHeight(40);
        slider.valueProperty().addListener(o -> {
            if (!setting) {
                model.ask(slider.getValue());
                fill();
            }
        });
        reason.setId("deck-reason");
        reason.setPromptText("why this mix, in your words");
        who.setId("deck-who");
        who.setPromptText("who decides");
        answer.setId("deck-answer");
        mix.setId("deck-mix");
        stair.setOnMousePressed(e -> slide(e.getX()));
        stair.setOnMouseDragged(e -> slide(e.getX()));
    }

    DeckModel model() {
        return model;
    }

    private void slide(double px) {
        double share = Math.max(0, Math.min(1, px / WIDTH));
        slider.setValue(model.low() + share * (model.high() - model.low()));
    }

    private void ask(boolean forBudget) {
        model.ask(forBudget);
        tell.run();
    }

    private void take() {
        problem.setText(model.take(reason.getText(), who.getText()));
        if (problem.getText().isEmpty()) {
            reason.clear();
        }
        tell.run();
    }

    Node[] actions() {
        if (model.steps().isEmpty()) {
            return new Node[0];
        }
        setting = true;
        slider.setMin(model.low());
        slider.setMax(model.high());
        slider.setBlockIncrement((model.high() - model.low()) / 40);
        slider.setValue(model.asked());
        setting = false;
        HBox which = new HBox(0, stiffness, budget);
        HBox.setHgrow(stiffness, Priority.ALWAYS);
        HBox.setHgrow(budget, Priority.ALWAYS);
        style(stiffness, !model.byBudget());
        style(budget, model.byBudget());
        fill();
        List<Node> all = new ArrayList<>(List.of(
                SlipView.text("The whole deck, each step at least cost", "head"),
                which,
                question,
                stair,
                slider,
                answer,
                mix,
                up));
        if (!model.differing().isEmpty()) {
            all.add(reason);
            boolean named = bench.survey()
                    .filter(s -> !s.heading().surveyor().isBlank())
                    .isPresent();
            if (!named) {
                all.add(who);
            }
            if (!problem.getText().isEmpty()) {
                all.add(problem);
            }
            all.add(take);
        } else if (model.chosen().isPresent()) {
            all.add(SlipView.text("This is what is decided now.", "quiet"));
        }
        return all.toArray(Node[]::new);
    }

    private static void style(Button key, boolean chosen) {
        key.getStyleClass().removeAll("chosen", "open-choice");
        key.getStyleClass().add(chosen ? "chosen" : "open-choice");
    }

    /** At once, while the control moves. */
    private void fill() {
        question.setText(model.question());
        answer.setText(model.answer());
        mix.setText(model.mix());
        up.setText(model.up());
        take.setText("Take this mix"
                + (model.differing().isEmpty() ? "" : ": " + model.differing().size() + " to change"));
        draw();
    }

    private void draw() {
        GraphicsContext g = stair.getGraphicsContext2D();
        var tone = bench.sight().appearance().look().tone();
        Color ink = PlanPane.fx(tone.ink());
        Color crayon = PlanPane.fx(bench.sight().appearance().look().crayon());
        g.clearRect(0, 0, WIDTH, HEIGHT);
        List<Step> steps = model.steps();
        double most = steps.stream().mapToDouble(Step::cost).max().orElse(1);
        double base = HEIGHT - 22;
        Step chosen = model.chosen().orElse(null);
        double from = 0.2;
        g.setFont(Font.font("Asap Condensed", FontWeight.BOLD, 13));
        for (Step step : steps) {
            double x0 = x(model.byBudget() ? step.costHigh() : from);
            double next = model.byBudget() ? model.high() : step.share();
            int at = steps.indexOf(step);
            double x1 = x(
                    model.byBudget()
                            ? (at + 1 < steps.size() ? steps.get(at + 1).costHigh() : next)
                            : next);
            double h = (base - 22) * (model.byBudget() ? step.share() : step.cost() / Math.max(1, most)) + 2;
            g.setFill(step == chosen ? ink : PlanPane.fx(tone.ground()));
            g.setStroke(ink);
            g.setLineWidth(1.2);
            g.fillRect(x0, base - h, Math.max(1, x1 - x0), h);
            g.strokeRect(x0, base - h, Math.max(1, x1 - x0), h);
            if (step == chosen) {
                g.setFill(ink);
                g.setTextAlign(x0 > WIDTH / 2 ? TextAlignment.RIGHT : TextAlignment.LEFT);
                String words =
                        model.byBudget() ? Figures.fixed(100 * step.share(), 0) + " of 100" : model.money(step.cost());
                g.fillText(words, x0 > WIDTH / 2 ? x1 : x0, base - h - 5);
            }
            from = step.share();
        }
        g.setStroke(ink);
        g.setLineWidth(2);
        g.strokeLine(0, base, WIDTH, base);
        g.setStroke(crayon);
        g.setLineWidth(3);
        double at = x(model.asked());
        g.strokeLine(at, 8, at, base);
        g.setFill(ink);
        g.setTextAlign(TextAlignment.LEFT);
        g.fillText(Figures.fixed(model.byBudget() ? 0 : 100 * model.low(), 0), 0, HEIGHT - 6);
        g.setTextAlign(TextAlignment.CENTER);
        g.fillText(model.byBudget() ? "at most" : "stiff, of 100 as built", WIDTH / 2, HEIGHT - 6);
        g.setTextAlign(TextAlignment.RIGHT);
        g.fillText(model.byBudget() ? Figures.fixed(model.high(), 0) : "100", WIDTH, HEIGHT - 6);
    }

    private double x(double value) {
        return WIDTH * Math.max(0, Math.min(1, (value - model.low()) / Math.max(1e-9, model.high() - model.low())));
    }
}
