package corewright.desktop.owner;

import corewright.damage.Quantiles;
import corewright.decision.Choice;
import corewright.desktop.slip.SlipView;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.report.owner.OwnerView;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;

/** What can be done, from least to most, side by side. */
final class OwnerChoices {
    private static final int LINES = 6;
    private static final double BAR = 150;
    private static final double BAR_TOP = 6;
    private static final double BAR_HIGH = 10;

    private final OwnerView words;
    private final String currency;
    private final Measure measure;
    private final double deepestMm;
    private final Optional<Double> today;

    OwnerChoices(OwnerView words, String currency, Measure measure) {
        this.words = words;
        this.currency = currency;
        this.measure = measure;
        today = words.choices().get(0).ofAsBuilt().map(Quantiles::p50);
        deepestMm = words.foot().stream()
                .flatMap(f -> words.choices().stream()
                        .flatMap(c -> c.ofAsBuilt().stream())
                        .map(q -> f.dipMm(q.p50())))
                .reduce(Math::max)
                .orElse(1.0);
    }

    /** With what the pictures mean. */
    Node head() {
        Label title = SlipView.text("What can be done", "owner-head");
        title.setMinWidth(Region.USE_PREF_SIZE);
        HBox head = new HBox(14, title);
        words.foot().filter(f -> today.isPresent()).ifPresent(f -> head.getChildren()
                .add(SlipView.text(
                        measure.say("how far " + f.face() + " gives under one foot (100 kg) where it lost most;"
                                        + " broken line: as built, ")
                                + measure.deflectionFigure(f.builtMm()) + " " + measure.depthUnit()
                                + ". Bar: stiffness, as built 100; white line in it: today",
                        "quiet")));
        head.getChildren().forEach(n -> ((Region) n).setMinHeight(Region.USE_PREF_SIZE));
        head.setAlignment(Pos.BASELINE_LEFT);
        return head;
    }

    /** A column a choice, line by line on one height. */
    Node table() {
        GridPane table = new GridPane();
        table.setHgap(16);
        table.setVgap(2);
        List<Choice> choices = words.choices();
        for (int i = 0; i < choices.size(); i++) {
            ColumnConstraints column = new ColumnConstraints();
            column.setPercentWidth(100.0 / choices.size());
            table.getColumnConstraints().add(column);
            column(table, i, choices.get(i));
        }
        return table;
    }

    private void column(GridPane table, int i, Choice choice) {
        Region edge = new Region();
        edge.getStyleClass().add(choice.advised() ? "owner-advised" : "owner-offered");
        table.add(edge, i, 0, 1, LINES + 2);
        List<Node> lines = new ArrayList<>();
        lines.add(SlipView.text(choice.title(), "owner-choice"));
        lines.add(SlipView.text(choice.regions(), "quiet"));
        lines.add(choice.ofAsBuilt()
                .flatMap(q -> words.foot().map(f -> picture(f, q)))
                .orElseGet(Region::new));
        lines.add(choice.ofAsBuilt().<Node>map(this::bar).orElseGet(Region::new));
        lines.add(SlipView.text(OwnerView.effort(currency, choice), "head"));
        lines.add(SlipView.text((choice.advised() ? words.standing() + " " : "") + choice.toKnow(), "sentence"));
        for (int line = 0; line < LINES; line++) {
            Node node = lines.get(line);
            GridPane.setValignment(node, VPos.TOP);
            table.add(node, i, line + 1);
        }
        Region foot = new Region();
        foot.setMinHeight(4);
        table.add(foot, i, LINES + 1);
    }

    private Node picture(OwnerView.Foot foot, Quantiles left) {
        return FootPicture.of(foot.dipMm(left.p50()), foot.builtMm(), deepestMm, measure);
    }

    /** Stiffness where the deck is weakest, as built 100, from the low to the high figure, with today's in it. */
    private Canvas bar(Quantiles q) {
        Canvas canvas = new Canvas(BAR + 58, BAR_TOP + BAR_HIGH + 6);
        GraphicsContext g = canvas.getGraphicsContext2D();
        g.setFill(FootPicture.INK);
        g.setStroke(FootPicture.INK);
        double per = BAR / Math.max(1, q.p90());
        double foot = BAR_TOP + BAR_HIGH;
        g.strokeLine(1, foot + 0.5, 1 + BAR, foot + 0.5);
        g.fillRect(1, BAR_TOP, per * q.p10(), BAR_HIGH);
        g.strokeRect(1 + per * q.p10(), BAR_TOP, per * (q.p90() - q.p10()), BAR_HIGH);
        g.fillRect(per * q.p50() - 0.5, BAR_TOP - 5, 3, BAR_HIGH + 9);
        g.setFont(Font.font("Asap", FontWeight.BOLD, 20));
        g.fillText(Figures.fixed(100 * q.p50(), 0), BAR + 12, foot + 2);
        today.filter(t -> t < q.p10() - 0.02).ifPresent(t -> {
            g.setFill(Color.WHITE);
            g.fillRect(per * t, BAR_TOP, 2.5, BAR_HIGH);
        });
        canvas.setAccessibleText(Figures.fixed(100 * q.p50(), 0) + " of 100 as stiff as built, in 8 cases of 10 "
                + Figures.fixed(100 * q.p10(), 0) + " to " + Figures.fixed(100 * q.p90(), 0));
        return canvas;
    }
}
