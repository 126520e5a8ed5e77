package corewright.desktop.stiffness;

import corewright.desktop.plan.Pixels;
import corewright.desktop.plan.PlanCamera;
import corewright.desktop.plan.PlanPane;
import corewright.desktop.slip.SlipView;
import corewright.desktop.state.Workbench;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.PlanView;
import corewright.drawing.screen.ScreenLook;
import corewright.stiffness.PanelStiffness;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.image.Image;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;

/** The step Stiffness: equal pictures in the middle or the panels on the plan, figures in the slip. */
public final class StiffnessDesk {
    private final Workbench bench;
    private final PlanPane plan;
    private final Runnable tell;
    private final StiffnessModel model;
    private final Middle middle = new Middle();
    private final OnPlan overlay = new OnPlan();
    private boolean onPlan;
    private boolean lent;

    public StiffnessDesk(Workbench bench, PlanPane plan, Runnable tell) {
        this.bench = bench;
        this.plan = plan;
        this.tell = tell;
        model = new StiffnessModel(bench);
    }

    public StiffnessModel model() {
        return model;
    }

    /** The pictures; null where the plan shows the panels, or there is none. */
    public @Nullable Node middle() {
        PanelStiffness panel = model.panel().orElse(null);
        if (panel == null || onPlan) {
            lend(panel != null);
            return null;
        }
        lend(false);
        middle.show(panel);
        return middle;
    }

    /** Whether the pictures are those of what is to be seen. */
    public boolean settled() {
        return middle.laid != null && middle.laid == middle.painted;
    }

    /** Gives the plan back when another step is shown. */
    public void leave() {
        lend(false);
    }

    private void lend(boolean on) {
        if (on == lent) {
            return;
        }
        lent = on;
        if (on) {
            plan.over(overlay);
            plan.giveTo(overlay);
        } else {
            plan.giveTo(null);
            plan.lift(overlay);
        }
    }

    private void toggle() {
        onPlan = !onPlan;
        tell.run();
    }

    public Node[] actions() {
        PanelStiffness panel = model.panel().orElse(null);
        if (panel == null) {
            return new Node[0];
        }
        List<Node> all = new ArrayList<>();
        String where = model.foot()
                .map(f -> "under the foot at " + bench.sight().units().place(f.xMm()) + " aft")
                .orElse("at the softest place");
        all.add(SlipView.text(panel.panel().name() + " gives, " + where, "head"));
        all.add(table(panel));
        if (model.foot().isPresent()) {
            all.add(SlipView.key("foot-lift", "Back to the softest place", () -> {
                model.lift();
                tell.run();
            }));
        } else {
            all.add(SlipView.text("Press anywhere on a picture to set the foot there.", "quiet"));
        }
        if (!panel.damaged()) {
            all.add(SlipView.text("No damage was found in this panel.", "sentence"));
        }
        model.loads(panel).forEach(load -> {
            all.add(SlipView.text("Under " + load.name(), "head"));
            load.lines().forEach(line -> all.add(SlipView.text(line.state() + ": " + line.answer(), "sentence")));
        });
        panel.notes().forEach(note -> all.add(SlipView.text(note, "quiet")));
        if (model.panels().size() > 1 || onPlan) {
            all.add(SlipView.key(
                    "panels-on-plan", onPlan ? "Back to the pictures" : "Panels on the plan", this::toggle));
            FlowPane names = new FlowPane(8, 8);
            model.panels().forEach(p -> names.getChildren().add(panelKey(p, p == panel)));
            all.add(names);
        }
        return all.toArray(Node[]::new);
    }

    private Button panelKey(PanelStiffness p, boolean current) {
        String name = p.panel().name();
        Button key = SlipView.key("panel-" + name.replaceAll("[^A-Za-z0-9-]", "_"), shortName(p), () -> {
            model.choose(name);
            tell.run();
        });
        key.setMaxWidth(Region.USE_PREF_SIZE);
        key.setAccessibleText(name);
        key.getStyleClass().add(current ? "chosen" : "open-choice");
        return key;
    }

    /** "P2" of "boat deck-P2". */
    private static String shortName(PanelStiffness p) {
        return p.panel().name().substring(p.panel().name().lastIndexOf('-') + 1);
    }

    private Node table(PanelStiffness panel) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("facts");
        grid.setId("stiffness-table");
        Label[] head = {new Label(""), new Label("gives"), new Label("of 100"), new Label("8 of 10")};
        for (Label l : head) {
            l.getStyleClass().add("quiet");
            l.setMinWidth(Region.USE_PREF_SIZE);
        }
        grid.addRow(0, head);
        int row = 1;
        for (StiffnessModel.Row r : model.rows(panel)) {
            Label name = new Label(r.name());
            name.setWrapText(true);
            GridPane.setHgrow(name, Priority.ALWAYS);
            Label gives = new Label(r.gives());
            Label of = new Label(r.ofBuilt());
            gives.getStyleClass().add("fact");
            of.getStyleClass().add("fact");
            Label range = new Label(r.range());
            for (Label l : new Label[] {gives, of, range}) {
                l.setMinWidth(Region.USE_PREF_SIZE);
            }
            grid.addRow(row++, name, gives, of, range);
        }
        return new HBox(grid);
    }

    private static javafx.scene.paint.Color fx(java.awt.Color c) {
        return PlanPane.fx(c);
    }

    /** The pictures with their names, and the foot in each. */
    private final class Middle extends Region {
        private static final double FOOT = 9;

        /** A title of one line needs so many pixels. */
        private static final double NARROW = 170;

        private final Canvas canvas = new Canvas();
        private @Nullable PanelStiffness panel;
        private @Nullable Pictures laid;
        private @Nullable Pictures painted;
        private @Nullable ScreenLook paintedIn;
        private @Nullable Measure paintedAs;
        private @Nullable Image image;

        Middle() {
            getChildren().add(canvas);
            setMinSize(200, 150);
            setId("stiffness-pictures");
            setAccessibleText("States of the panel as pictures in one scale; press to set a foot");
            addEventHandler(MouseEvent.MOUSE_PRESSED, this::press);
        }

        void show(PanelStiffness now) {
            panel = now;
            lay();
        }

        @Override
        protected void layoutChildren() {
            canvas.setWidth(getWidth());
            canvas.setHeight(getHeight());
            lay();
        }

        private void lay() {
            PanelStiffness now = panel;
            if (now == null || getWidth() < 200 || getHeight() < 150) {
                return;
            }
            ScreenLook look = bench.sight().appearance().look();
            Measure measure = bench.sight().units().measure();
            Pictures wish = laid;
            boolean same = wish != null
                    && wish.panel() == now
                    && wish.width() == getWidth()
                    && wish.height() == getHeight()
                    && look == paintedIn
                    && measure == paintedAs;
            if (!same) {
                Pictures next = Pictures.laidOut(
                        now,
                        bench.survey().orElseThrow().face(now.panel().face()),
                        StiffnessModel.states(now),
                        getWidth(),
                        getHeight());
                laid = next;
                paintedIn = look;
                paintedAs = measure;
                double sharpness = plan.sharpness();
                bench.jobs()
                        .run(
                                () -> next.painted(look.tone(), measure, sharpness),
                                p -> take(next, p),
                                e -> bench.say("The pictures could not be painted: " + e.getMessage()));
            }
            draw();
        }

        private void take(Pictures of, Pixels pixels) {
            if (of == laid) {
                painted = of;
                image = pixels.image();
                draw();
            }
        }

        private void draw() {
            GraphicsContext g = canvas.getGraphicsContext2D();
            ScreenLook look = bench.sight().appearance().look();
            g.setFill(fx(look.tone().ground()));
            g.fillRect(0, 0, canvas.getWidth(), canvas.getHeight());
            Pictures now = laid;
            PanelStiffness of = panel;
            if (now == null || of == null) {
                return;
            }
            if (now == painted && image != null) {
                g.drawImage(image, 0, 0, now.width(), now.height());
            }
            List<StiffnessModel.Row> rows = model.rows(of);
            for (int i = 0; i < now.boxes().size(); i++) {
                title(g, now.boxes().get(i), rows.get(i), look);
                foot(g, now, i, rows.get(i).gives(), look);
            }
        }

        /** The state and how stiff it is; over a narrow picture its name in two lines. */
        private void title(GraphicsContext g, Box box, StiffnessModel.Row row, ScreenLook look) {
            boolean narrow = box.width() < NARROW;
            String[] name = narrow ? halves(row.name()) : new String[] {row.name()};
            g.setFill(fx(look.tone().ink()));
            g.setFont(Font.font("Asap", FontWeight.BOLD, narrow ? 13.5 : 18));
            for (int line = 0; line < name.length; line++) {
                g.fillText(name[line], box.x(), box.y() - 26 - 15 * (name.length - 1 - line), box.width());
            }
            g.setFill(fx(look.tone().quiet()));
            g.setFont(Font.font("Asap", 14));
            String range = row.range().isEmpty() || narrow ? "" : ", in 8 cases of 10 " + row.range();
            g.fillText(row.ofBuilt() + " of 100" + range, box.x(), box.y() - 8, box.width());
        }

        /** Parted at the blank nearest the middle. */
        private static String[] halves(String words) {
            int middle = words.length() / 2;
            int before = words.lastIndexOf(' ', middle);
            int after = words.indexOf(' ', middle);
            int at = before < 0 || after >= 0 && after - middle < middle - before ? after : before;
            return at < 0 ? new String[] {words} : new String[] {words.substring(0, at), words.substring(at + 1)};
        }

        private void foot(GraphicsContext g, Pictures now, int i, String gives, ScreenLook look) {
            model.foot().ifPresent(f -> {
                PlanView view = now.view(i);
                double x = view.x(f.xMm());
                double y = view.y(f.yMm());
                double half = Math.max(FOOT / 2, 50 / view.scale());
                g.setStroke(fx(look.crayon()));
                g.setLineWidth(3);
                g.strokeRect(x - half, y - half, 2 * half, 2 * half);
                g.setFont(Font.font("Asap", FontWeight.BOLD, 18));
                g.setStroke(fx(look.tone().ground()));
                g.setLineWidth(5);
                g.strokeText(gives, x + half + 6, y - half);
                g.setFill(fx(look.crayon()));
                g.fillText(gives, x + half + 6, y - half);
            });
        }

        private void press(MouseEvent e) {
            Pictures now = laid;
            if (now == null) {
                return;
            }
            for (int i = 0; i < now.boxes().size(); i++) {
                if (now.boxes().get(i).shape().contains(e.getX(), e.getY())) {
                    PlanView view = now.view(i);
                    if (model.press(view.surveyX(e.getX()), view.surveyY(e.getY()))) {
                        tell.run();
                    }
                    return;
                }
            }
        }
    }

    /** Panels drawn and named over the plan; a touch chooses one. */
    private final class OnPlan implements PlanPane.Overlay, PlanPane.Hand {
        @Override
        public void paint(GraphicsContext g, PlanCamera camera) {
            ScreenLook look = bench.sight().appearance().look();
            PanelStiffness current = model.panel().orElse(null);
            for (PanelStiffness p : model.panels()) {
                boolean chosen = p == current;
                Coordinate[] ring = p.panel().area().getExteriorRing().getCoordinates();
                double[] xs = new double[ring.length];
                double[] ys = new double[ring.length];
                for (int i = 0; i < ring.length; i++) {
                    xs[i] = camera.px(ring[i].x);
                    ys[i] = camera.py(ring[i].y);
                }
                g.setStroke(fx(look.tone().ground()));
                g.setLineWidth(8);
                g.strokePolygon(xs, ys, ring.length);
                g.setStroke(fx(chosen ? look.crayon() : look.tone().ink()));
                g.setLineWidth(chosen ? 4 : 2);
                g.strokePolygon(xs, ys, ring.length);
            }
            for (PanelStiffness p : model.panels()) {
                Coordinate at = p.panel().area().getInteriorPoint().getCoordinate();
                String name = shortName(p);
                g.setFont(Font.font("Asap", FontWeight.BOLD, 18));
                g.setStroke(fx(look.tone().ground()));
                g.setLineWidth(6);
                g.strokeText(name, camera.px(at.x), camera.py(at.y));
                g.setFill(fx(p == current ? look.crayon() : look.tone().ink()));
                g.fillText(name, camera.px(at.x), camera.py(at.y));
            }
        }

        @Override
        public void dragged(PlanCamera camera, MouseEvent e) {
            // the plan moves
        }

        @Override
        public void released(PlanCamera camera, MouseEvent e) {
            // the plan was moved
        }

        @Override
        public boolean touched(PlanCamera camera, MouseEvent e) {
            if (model.chooseAt(camera.xMm(e.getX()), camera.yMm(e.getY()))) {
                tell.run();
            }
            return true;
        }
    }
}
