package corewright.desktop.work;

import corewright.desktop.plan.PlanPane;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.PlanView;
import corewright.drawing.screen.ScreenLook;
import corewright.repair.plan.Hole;
import corewright.survey.Face;
import corewright.survey.Spot;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.geometry.Point2D;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/** The holes of the work: done with their grams, the one in hand large, the rest in their order. */
final class WorkPlan extends Region {
    private static final double DISC = 16;

    /** How far above its hole a plug's bar lies. */
    private static final double PLUG = DISC + 6;

    /** The longest rule, px. */
    private static final double RULE = 120;

    private final WorkModel model;
    private final Face face;
    private final ScreenLook look;
    private final Canvas canvas = new Canvas();

    WorkPlan(WorkModel model, Face face, ScreenLook look, Consumer<Hole> touched) {
        this.model = model;
        this.face = face;
        this.look = look;
        getChildren().add(canvas);
        setMinSize(200, 120);
        setAccessibleText("Holes of the injection; touch one to take it in hand");
        setOnMouseClicked(e -> view().ifPresent(v -> model.holes().stream()
                .filter(h -> distance(v, h, e.getX(), e.getY()) < 2 * DISC)
                .min(Comparator.comparingDouble(h -> distance(v, h, e.getX(), e.getY())))
                .ifPresent(touched)));
    }

    private static double distance(PlanView v, Hole h, double x, double y) {
        return Math.hypot(x(v, h.spot()) - x, y(v, h.spot()) - y);
    }

    private java.util.Optional<PlanView> view() {
        Envelope box = new Envelope();
        model.regions().forEach(r -> box.expandToInclude(r.likely().getEnvelopeInternal()));
        Stream.concat(model.holes().stream(), model.vents().stream())
                .forEach(h -> box.expandToInclude(h.spot().coordinate()));
        if (box.isNull() || getWidth() < 100 || getHeight() < 100) {
            return java.util.Optional.empty();
        }
        double scale = Math.max(
                0.05, Math.max(box.getWidth() / (getWidth() - 80), box.getHeight() / Math.max(20, getHeight() - 80)));
        return java.util.Optional.of(PlanView.centred(face, box, scale, getWidth() / 2, getHeight() / 2));
    }

    private static double x(PlanView v, Spot s) {
        return v.x(s.xMm());
    }

    private static double y(PlanView v, Spot s) {
        return v.y(s.yMm());
    }

    void show() {
        draw();
    }

    @Override
    protected void layoutChildren() {
        canvas.setWidth(getWidth());
        canvas.setHeight(getHeight());
        draw();
    }

    private void draw() {
        GraphicsContext g = canvas.getGraphicsContext2D();
        Color ink = PlanPane.fx(look.tone().ink());
        Color ground = PlanPane.fx(look.tone().ground());
        g.setFill(ground);
        g.fillRect(0, 0, canvas.getWidth(), canvas.getHeight());
        PlanView v = view().orElse(null);
        if (v == null) {
            return;
        }
        Hole inHand = model.hole().orElse(null);
        g.setStroke(ink);
        g.setLineWidth(2.5);
        model.regions().forEach(r -> outline(g, v, r));
        List<Hole> holes = model.holes();
        g.setStroke(ink);
        g.setLineWidth(1.5);
        for (int i = 1; i < holes.size(); i++) {
            g.strokeLine(
                    x(v, holes.get(i - 1).spot()),
                    y(v, holes.get(i - 1).spot()),
                    x(v, holes.get(i).spot()),
                    y(v, holes.get(i).spot()));
        }
        for (Hole h : model.vents()) {
            disc(g, x(v, h.spot()), y(v, h.spot()), 0.85 * DISC, number(h), ground, ink);
        }
        WorkLabels labels = labels(v, holes, inHand);
        upwards(holes, inHand).forEach(h -> hole(g, v, h, h == inHand, labels));
        scale(g, v, ink, ground);
    }

    /** What the figures are not to lie on. */
    private WorkLabels labels(PlanView v, List<Hole> holes, @Nullable Hole inHand) {
        WorkLabels labels = new WorkLabels();
        Stream.concat(holes.stream(), model.vents().stream())
                .forEach(h -> labels.disc(x(v, h.spot()), y(v, h.spot()), h == inHand ? 2 * DISC : DISC));
        holes.stream()
                .filter(h -> model.logged(h).isPresent())
                .forEach(h -> labels.plug(x(v, h.spot()), y(v, h.spot()) - PLUG, DISC));
        for (int i = 1; i < holes.size(); i++) {
            Spot from = holes.get(i - 1).spot();
            Spot to = holes.get(i).spot();
            labels.line(x(v, from), y(v, from), x(v, to), y(v, to));
        }
        return labels;
    }

    private void hole(GraphicsContext g, PlanView v, Hole h, boolean isInHand, WorkLabels labels) {
        Color ink = PlanPane.fx(look.tone().ink());
        Color ground = PlanPane.fx(look.tone().ground());
        Color crayon = PlanPane.fx(look.crayon());
        double x = x(v, h.spot());
        double y = y(v, h.spot());
        Optional<Double> logged = model.logged(h);
        boolean done = logged.isPresent();
        if (isInHand) {
            g.setFill(crayon);
            g.fillOval(x - 2 * DISC, y - 2 * DISC, 4 * DISC, 4 * DISC);
            disc(g, x, y, 1.7 * DISC, number(h), crayon, ground);
            stop(g, labels.beside(x, y, 2 * DISC, 22), h, crayon, ground, 22);
        } else {
            disc(g, x, y, DISC, number(h), done ? ground : ink, done ? ink : ground);
            if (!done) {
                stop(g, labels.beside(x, y, DISC, 15), h, ink, ground, 15);
            }
        }
        if (done) {
            g.setStroke(ink);
            g.setLineWidth(4.5);
            g.strokeLine(x - DISC, y - PLUG, x + DISC, y - PLUG); // plugged
            Point2D at = labels.beside(x, y, isInHand ? 2 * DISC : DISC, 15);
            words(g, at.getX(), at.getY() + 18, Figures.fixed(logged.orElseThrow(), 0) + " g", ink, ground, 15);
        }
    }

    /** In the order of painting: what is filled lies under what is to come, the one in hand over all. */
    private List<Hole> upwards(List<Hole> holes, @Nullable Hole inHand) {
        return holes.stream()
                .sorted(Comparator.comparingInt(
                        h -> h == inHand ? 2 : model.logged(h).isPresent() ? 0 : 1))
                .toList();
    }

    /** A rule at the upper right, of a round length. */
    private void scale(GraphicsContext g, PlanView v, Color ink, Color ground) {
        WorkRule rule = WorkRule.fitting(v.scale(), RULE, model.bench().sight().units());
        double right = getWidth() - 24;
        double left = right - rule.mm() / v.scale();
        double y = 30;
        g.setFill(ground);
        g.fillRect(left - 10, y - 16, right - left + 34, 40);
        g.setStroke(ink);
        g.setLineWidth(1.5);
        g.strokePolyline(new double[] {left, left, right, right}, new double[] {y - 8, y, y, y - 8}, 4);
        words(g, left, y + 17, "0", ink, ground, 13);
        words(g, right - 8, y + 17, rule.words(), ink, ground, 13);
    }

    /** The depth stop as the work card has it: its figure under a bar. */
    private void stop(GraphicsContext g, Point2D at, Hole hole, Color ink, Color ground, double px) {
        if (!hole.drilled()) {
            return;
        }
        double x = at.getX();
        double top = at.getY();
        words(g, x, top + 4 + 1.1 * px, model.stop(hole), ink, ground, px);
        g.setStroke(ink);
        g.setLineWidth(2.5);
        g.strokeLine(x - px, top + 4, x + px, top + 4);
    }

    private static void outline(GraphicsContext g, PlanView v, corewright.damage.Region region) {
        Coordinate[] ring = region.likely().getExteriorRing().getCoordinates();
        double[] xs = new double[ring.length];
        double[] ys = new double[ring.length];
        for (int i = 0; i < ring.length; i++) {
            xs[i] = v.x(ring[i].x);
            ys[i] = v.y(ring[i].y);
        }
        g.strokePolygon(xs, ys, ring.length);
    }

    private static String number(Hole hole) {
        return Figures.holeNumber(hole.id());
    }

    private static void disc(GraphicsContext g, double x, double y, double r, String number, Color fill, Color words) {
        g.setFill(fill);
        g.fillOval(x - r, y - r, 2 * r, 2 * r);
        g.setStroke(words);
        g.setLineWidth(2);
        g.strokeOval(x - r, y - r, 2 * r, 2 * r);
        g.setFill(words);
        g.setFont(Font.font("Asap", FontWeight.BOLD, r));
        g.setTextAlign(TextAlignment.CENTER);
        g.fillText(number, x, y + 0.36 * r);
    }

    private static void words(GraphicsContext g, double x, double y, String words, Color ink, Color ground, double px) {
        g.setFont(Font.font("Asap", FontWeight.BOLD, px));
        g.setTextAlign(TextAlignment.CENTER);
        g.setStroke(ground);
        g.setLineWidth(5);
        g.strokeText(words, x, y);
        g.setFill(ink);
        g.fillText(words, x, y);
    }
}
