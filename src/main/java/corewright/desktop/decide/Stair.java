package corewright.desktop.decide;

import corewright.decision.DeckSteps.Step;
import corewright.desktop.plan.PlanPane;
import corewright.desktop.state.Workbench;
import corewright.drawing.kit.Figures;
import corewright.drawing.screen.ScreenLook;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;
import org.jspecify.annotations.Nullable;

/**
 * The steps of least cost as a stair, and a disc on its foot that says what is asked for: dragged, pressed, or moved by arrows by its
 * finest and by Page Up and Page Down a step.
 */
final class Stair extends Region {
    private static final double DISC = 17;
    private static final double SIDE = 22;
    private static final double FOOT = 36;
    private static final double HEAD = 22;

    private final Workbench bench;
    private final DeckModel model;
    private final Runnable moved;
    private final Canvas canvas = new Canvas();

    /** @param moved something else is asked for */
    Stair(Workbench bench, DeckModel model, Runnable moved) {
        this.bench = bench;
        this.model = model;
        this.moved = moved;
        setId("deck-stair");
        getStyleClass().add("stair");
        getChildren().add(canvas);
        setMinSize(200, 110);
        setPrefSize(340, 150);
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.SLIDER);
        setOnMousePressed(e -> {
            requestFocus();
            slide(e.getX());
        });
        setOnMouseDragged(e -> slide(e.getX()));
        focusedProperty().addListener(o -> show());
    }

    private void slide(double px) {
        double share = (px - SIDE) / Math.max(1, getWidth() - 2 * SIDE);
        ask(model.low() + share * (model.high() - model.low()));
    }

    private void ask(double value) {
        model.ask(model.onControl(value));
        told();
    }

    private void told() {
        moved.run();
        notifyAccessibleAttributeChanged(AccessibleAttribute.VALUE);
    }

    /** Whether the key was meant for the stair. */
    boolean key(KeyEvent e) {
        switch (e.getCode()) {
            case LEFT, DOWN -> ask(model.asked() - model.finest());
            case RIGHT, UP -> ask(model.asked() + model.finest());
            case HOME -> ask(model.low());
            case END -> ask(model.high());
            case PAGE_UP -> climb(1);
            case PAGE_DOWN -> climb(-1);
            default -> {
                return false;
            }
        }
        return true;
    }

    private void climb(int by) {
        model.climb(by);
        told();
    }

    @Override
    public @Nullable Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
        return switch (attribute) {
            case VALUE -> model.asked();
            case MIN_VALUE -> model.low();
            case MAX_VALUE -> model.high();
            default -> super.queryAccessibleAttribute(attribute, parameters);
        };
    }

    @Override
    public void executeAccessibleAction(AccessibleAction action, Object... parameters) {
        switch (action) {
            case INCREMENT -> ask(model.asked() + model.finest());
            case DECREMENT -> ask(model.asked() - model.finest());
            case BLOCK_INCREMENT -> climb(1);
            case BLOCK_DECREMENT -> climb(-1);
            default -> super.executeAccessibleAction(action, parameters);
        }
    }

    @Override
    protected void layoutChildren() {
        canvas.setWidth(getWidth());
        canvas.setHeight(getHeight());
        show();
    }

    private double x(double value) {
        double share = (value - model.low()) / Math.max(1e-9, model.high() - model.low());
        return SIDE + (getWidth() - 2 * SIDE) * Math.max(0, Math.min(1, share));
    }

    /** As it is now. */
    void show() {
        setAccessibleText("What is asked for: " + model.question() + " " + model.answer() + " " + model.mix());
        GraphicsContext g = canvas.getGraphicsContext2D();
        g.clearRect(0, 0, getWidth(), getHeight());
        if (getWidth() > 2 * SIDE && !model.steps().isEmpty()) {
            draw(g);
        }
    }

    private void draw(GraphicsContext g) {
        ScreenLook look = bench.sight().appearance().look();
        Color ink = PlanPane.fx(look.tone().ink());
        double base = getHeight() - FOOT;
        steps(g, base, ink, PlanPane.fx(look.tone().ground()));
        g.setFill(ink);
        g.fillRect(SIDE, base, getWidth() - 2 * SIDE, 5);
        scale(g, base, ink);
        Color crayon = PlanPane.fx(look.crayon());
        double at = x(model.asked());
        double y = base + 2.5;
        g.setFill(PlanPane.fx(look.tone().ground()));
        g.fillOval(at - DISC - 3, y - DISC - 3, 2 * DISC + 6, 2 * DISC + 6);
        g.setFill(crayon);
        g.fillOval(at - DISC, y - DISC, 2 * DISC, 2 * DISC);
        if (isFocused()) {
            g.setStroke(ink);
            g.setLineWidth(3);
            g.strokeOval(at - DISC - 3, y - DISC - 3, 2 * DISC + 6, 2 * DISC + 6);
        }
        g.setFill(PlanPane.fx(look.tone().ground()));
        words(g, asked(), at, y, 15, TextAlignment.CENTER, VPos.CENTER);
    }

    /** What the disc says: the stiffness, or thousands of the sum. */
    private String asked() {
        return !model.byBudget()
                ? DeckModel.hundredths(model.asked())
                : model.high() < 1000
                        ? Figures.fixed(model.asked(), 0)
                        : Figures.fixed(model.asked() / 1000, model.asked() < 9950 ? 1 : 0) + "k";
    }

    private static void words(
            GraphicsContext g, String words, double x, double y, double px, TextAlignment align, VPos at) {
        g.setFont(Font.font("Asap Condensed", FontWeight.BOLD, px));
        g.setTextAlign(align);
        g.setTextBaseline(at);
        g.fillText(words, x, y);
    }

    /** Width is stiffness given back, height is cost; for a budget the other way round. */
    private void steps(GraphicsContext g, double base, Color ink, Color ground) {
        List<Step> steps = model.steps();
        double most = steps.stream().mapToDouble(Step::cost).max().orElse(1);
        int chosen = model.chosen().map(steps::indexOf).orElse(-1);
        List<Written> figures = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            double x0 = x(from(i));
            double x1 = Math.max(x0 + 1, x(to(i)));
            double height = (base - HEAD) * (model.byBudget() ? step.share() : step.cost() / Math.max(1, most)) + 2;
            g.setFill(i == chosen ? ink : ground);
            g.fillRect(x0, base - height, x1 - x0, height);
            g.setStroke(ink);
            g.setLineWidth(1.5);
            g.strokeRect(x0, base - height, x1 - x0, height);
            inside(g, step, new double[] {x0, x1, base - height, base}, i == chosen ? ground : ink);
            String figure = model.byBudget() ? DeckModel.hundredths(step.share()) : model.money(step.cost());
            double half = width(figure, 14) / 2;
            double middle = Math.max(half, Math.min(getWidth() - half, (x0 + x1) / 2));
            figures.add(i == chosen ? 0 : figures.size(), new Written(figure, middle, half, base - height - 4));
        }
        g.setFill(ink);
        g.setStroke(ground);
        g.setLineWidth(4); // a figure may stand over a higher step beside its own
        List<Written> written = new ArrayList<>();
        for (Written figure : figures) {
            if (written.stream().noneMatch(figure::meets)) {
                written.add(figure);
                halo(g, figure);
                words(g, figure.words, figure.x, figure.y, 14, TextAlignment.CENTER, VPos.BOTTOM);
            }
        }
    }

    private static void halo(GraphicsContext g, Written figure) {
        g.setFont(Font.font("Asap Condensed", FontWeight.BOLD, 14));
        g.setTextAlign(TextAlignment.CENTER);
        g.setTextBaseline(VPos.BOTTOM);
        g.strokeText(figure.words, figure.x, figure.y);
    }

    /** The figure over a step; that of the step chosen comes first, and those that would run into another are left out. */
    private record Written(String words, double x, double half, double y) {
        boolean meets(Written o) {
            return Math.abs(x - o.x) < half + o.half + 6;
        }
    }

    private double from(int i) {
        return model.byBudget()
                ? DeckModel.price(model.steps().get(i))
                : i == 0 ? model.low() : model.steps().get(i - 1).share();
    }

    private double to(int i) {
        List<Step> steps = model.steps();
        return !model.byBudget()
                ? steps.get(i).share()
                : i + 1 < steps.size() ? DeckModel.price(steps.get(i + 1)) : model.high();
    }

    /** What makes this step stiffer than the one before, where it has room. */
    private void inside(GraphicsContext g, Step step, double[] box, Color colour) {
        String words = model.decided().filter(d -> d == step).isPresent() ? "decided now" : model.differs(step);
        if (!words.isEmpty() && width(words, 13) < box[1] - box[0] - 8 && box[3] - box[2] > 40) {
            g.setFill(colour);
            words(g, words, (box[0] + box[1]) / 2, box[2] + 4, 13, TextAlignment.CENTER, VPos.TOP);
        }
    }

    private static double width(String words, double px) {
        Text text = new Text(words);
        text.setFont(Font.font("Asap Condensed", FontWeight.BOLD, px));
        return text.getLayoutBounds().getWidth();
    }

    private void scale(GraphicsContext g, double base, Color ink) {
        g.setFill(ink);
        double y = base + FOOT - 2;
        double by = model.byBudget() ? model.finest() * 10 : 0.1;
        double every = by * Math.max(1, Math.ceil((model.high() - model.low()) / by / 8));
        for (double v = model.low(); v <= model.high() + 1e-9; v += every) {
            double at = x(v);
            if (Math.abs(at - x(model.asked())) > 2 * DISC) {
                String figure = model.byBudget() ? Figures.fixed(v, 0) : DeckModel.hundredths(v);
                words(g, figure, at, y, 14, TextAlignment.CENTER, VPos.BOTTOM);
            }
        }
    }
}
