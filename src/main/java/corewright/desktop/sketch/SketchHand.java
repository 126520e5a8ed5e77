package corewright.desktop.sketch;

import corewright.desktop.plan.PlanCamera;
import corewright.desktop.plan.PlanPane;
import corewright.desktop.sketch.Sketch.Tool;
import corewright.desktop.slip.SlipView;
import corewright.desktop.state.Workbench;
import corewright.survey.Survey;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.image.Image;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;

/** The sketch in the window: the hand on the plan, what lies over it, and the tools in the slip. */
public final class SketchHand implements PlanPane.Hand, PlanPane.Overlay {
    private static final double REACH_PX = 12;

    private final Sketch sketch;
    private final Workbench bench;
    private final PlanPane plan;
    private final Label message = SlipView.text("", "sentence");
    private final VBox tools = new VBox(8);
    private @Nullable Image picture;
    private @Nullable Underlay underlay;

    public SketchHand(Sketch sketch, Workbench bench, PlanPane plan, Runnable pickPicture, Runnable done) {
        this.sketch = sketch;
        this.bench = bench;
        this.plan = plan;
        compose(pickPicture, done);
        plan.giveTo(this);
        plan.over(this);
    }

    private void compose(Runnable pickPicture, Runnable done) {
        ComboBox<Tool> what = new ComboBox<>();
        what.setId("sketch-tool");
        what.setAccessibleText("What to draw");
        what.getItems().setAll(Tool.values());
        what.setValue(sketch.tool());
        what.setConverter(new ToolWords());
        what.setMaxWidth(Double.MAX_VALUE);
        what.setOnAction(e -> {
            sketch.take(what.getValue());
            show();
        });
        TextField name = new TextField();
        name.setPromptText("its name");
        name.setAccessibleText("Name of what is drawn");
        name.setId("sketch-name");
        name.textProperty().addListener((o, before, now) -> sketch.name(now));
        TextField typed = new TextField();
        typed.setPromptText(
                "a point: aft, starboard, in " + bench.sight().units().depthUnit());
        typed.setId("sketch-point");
        typed.setAccessibleText(typed.getPromptText());
        typed.setOnAction(e -> {
            sketch.type(typed.getText(), bench.sight().units());
            typed.clear();
            show();
        });
        Button finish = SlipView.key("sketch-finish", "Finish", this::finish);
        Button back = SlipView.key("sketch-back", "Back one", () -> {
            sketch.backOne();
            show();
        });
        Button curve = SlipView.key("sketch-curve", "Curve", () -> {
            sketch.curve();
            show();
        });
        curve.setAccessibleText("Bend the last three points into a curve");
        HBox deeds = new HBox(8, finish, curve, back);
        Button under = SlipView.key("sketch-picture", "Lay a picture under it", pickPicture);
        Button end = SlipView.key("sketch-done", "Done drawing", done);
        tools.getChildren().setAll(what, name, typed, deeds, message, under, end);
        sketch.take(sketch.tool());
        message.setText(sketch.message());
    }

    private static final class ToolWords extends javafx.util.StringConverter<Tool> {
        @Override
        public String toString(Tool tool) {
            return tool == null ? "" : tool.word();
        }

        @Override
        public Tool fromString(String word) {
            return List.of(Tool.values()).stream()
                    .filter(t -> t.word().equals(word))
                    .findFirst()
                    .orElse(Tool.MOVE);
        }
    }

    public Node tools() {
        return tools;
    }

    private void finish() {
        sketch.finish();
        show();
    }

    private void show() {
        message.setText(sketch.message());
        plan.refresh();
    }

    /** Lays a picture under the plan: its width over the face's length until two points say better. */
    void lay(Image image, Coordinate p, Coordinate q, Coordinate at, double lengthMm, double deg) {
        picture = image;
        boolean yDown =
                survey().map(s -> s.face(bench.face()).plusYPointsDown()).orElse(false);
        underlay = Underlay.of(p, q, at, lengthMm, deg, yDown);
        show();
    }

    public void stop() {
        plan.giveTo(null);
        plan.lift(this);
    }

    private Optional<Survey> survey() {
        return bench.survey();
    }

    @Override
    public boolean pressed(PlanCamera camera, MouseEvent e) {
        double reach = REACH_PX * camera.mmPerPx();
        return survey().map(s -> sketch.grasp(camera.xMm(e.getX()), camera.yMm(e.getY()), reach))
                .orElse(false);
    }

    @Override
    public void dragged(PlanCamera camera, MouseEvent e) {
        double reach = REACH_PX * camera.mmPerPx();
        survey().ifPresent(s -> sketch.drag(s, camera.xMm(e.getX()), camera.yMm(e.getY()), reach));
        plan.refresh();
    }

    @Override
    public void released(PlanCamera camera, MouseEvent e) {
        sketch.release();
        show();
    }

    @Override
    public boolean touched(PlanCamera camera, MouseEvent e) {
        double reach = REACH_PX * camera.mmPerPx();
        survey().ifPresent(s -> sketch.touch(s, camera.xMm(e.getX()), camera.yMm(e.getY()), reach));
        show();
        return true;
    }

    @Override
    public void paint(GraphicsContext g, PlanCamera camera) {
        picture(g, camera);
        Color crayon = PlanPane.fx(bench.sight().appearance().look().crayon());
        Color ground = PlanPane.fx(bench.sight().appearance().look().tone().ground());
        g.setStroke(crayon);
        g.setLineWidth(3);
        List<Coordinate> points = sketch.points();
        for (int i = 1; i < points.size(); i++) {
            g.strokeLine(
                    camera.px(points.get(i - 1).x),
                    camera.py(points.get(i - 1).y),
                    camera.px(points.get(i).x),
                    camera.py(points.get(i).y));
        }
        points.forEach(c -> handle(g, camera, c, crayon, ground));
        if (sketch.tool() == Tool.MOVE) {
            Color ink = PlanPane.fx(bench.sight().appearance().look().tone().ink());
            survey().ifPresent(s -> sketch.vertices(s).forEach(v -> handle(g, camera, v.at(), ink, ground)));
        }
        Coordinate picked = sketch.pickedAt();
        if (picked != null) {
            handle(g, camera, picked, crayon, crayon);
        }
        Coordinate held = sketch.heldAt();
        if (held != null) {
            handle(g, camera, held, crayon, ground);
            g.setFill(crayon);
            g.fillText(Math.round(held.x) + ", " + Math.round(held.y), camera.px(held.x) + 12, camera.py(held.y) - 60);
        }
    }

    private void picture(GraphicsContext g, PlanCamera camera) {
        Image image = picture;
        Underlay u = underlay;
        if (image == null || u == null) {
            return;
        }
        Coordinate o = u.place(0, 0);
        Coordinate right = u.place(1, 0);
        Coordinate down = u.place(0, 1);
        double ox = camera.px(o.x);
        double oy = camera.py(o.y);
        g.save();
        g.setGlobalAlpha(0.45);
        g.transform(
                camera.px(right.x) - ox,
                camera.py(right.y) - oy,
                camera.px(down.x) - ox,
                camera.py(down.y) - oy,
                ox,
                oy);
        g.drawImage(image, 0, 0);
        g.restore();
    }

    private static void handle(GraphicsContext g, PlanCamera camera, Coordinate c, Color line, Color ground) {
        double x = camera.px(c.x);
        double y = camera.py(c.y);
        g.setFill(ground);
        g.fillOval(x - 5, y - 5, 10, 10);
        g.setStroke(line);
        g.setLineWidth(2);
        g.strokeOval(x - 5, y - 5, 10, 10);
    }
}
