package corewright.desktop;

import corewright.assessment.Assessment;
import corewright.decision.Method;
import corewright.desktop.find.FindBox;
import corewright.desktop.plan.LegendBar;
import corewright.desktop.plan.PlaceMark;
import corewright.desktop.plan.PlanPainter;
import corewright.desktop.plan.PlanPane;
import corewright.desktop.plan.Readout;
import corewright.desktop.slip.FindingLines;
import corewright.desktop.slip.Held;
import corewright.desktop.slip.Help;
import corewright.desktop.slip.Holding;
import corewright.desktop.slip.Slip;
import corewright.desktop.slip.SlipView;
import corewright.desktop.slip.StepSlips;
import corewright.desktop.state.EditLog;
import corewright.desktop.state.Sight;
import corewright.desktop.state.Step;
import corewright.desktop.state.Steps;
import corewright.desktop.state.Units;
import corewright.desktop.state.Workbench;
import corewright.drawing.kit.Figures;
import corewright.drawing.placing.Lettering;
import corewright.drawing.screen.ScreenLayer;
import corewright.drawing.screen.ScreenLook;
import corewright.survey.Heading;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.settings.Settings.Terms;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** The window's content: step rule, plan, legend, slip; or the ways to begin; or a task that takes the whole window. */
final class MainView extends StackPane {
    private static final double SMALL_HEIGHT = 720;
    private static final double SMALL_WIDTH = 1180;
    private static final double WIDE_WIDTH = 1280;
    private static final double ROOMY_HEIGHT = 760;

    /** "Undo: " and some letters. */
    private static final double DEED_LEAST = 90;

    private final Workbench bench;
    private final Tasks tasks;
    private final StepBar steps;
    private final LegendBar legend;
    private final SlipView slip;
    private final PlanPane plan;
    private final StartPane start;
    private final BorderPane work = new BorderPane();
    private final FindBox find;
    private final Button appearance = new Button();
    private final Button units = new Button();
    private final FaceKeys faces;
    private final Button undo = new Button("Undo");
    private final Button redo = new Button("Redo");
    private final Label readout = new Label();
    private final NoticePane notice;
    private final VBox under = new VBox();
    private final BorderPane left = new BorderPane();
    private final SlipRoom room;
    private @Nullable Node task;
    private final Holding holding = new Holding();
    private Consumer<Spot> found = s -> {};
    private boolean tableWide;
    private boolean deckBelow;
    private double pointedX = Double.NaN;
    private double pointedY = Double.NaN;

    MainView(Workbench bench, Tasks tasks) {
        this.bench = bench;
        this.tasks = tasks;
        getStyleClass().addAll("window", "day");
        steps = new StepBar(bench.sight());
        legend = new LegendBar(bench.sight(), bench.jobs());
        slip = new SlipView(this::go, new Help(() -> bench.sight().units()));
        plan = new PlanPane(e -> bench.say("The plan could not be painted: " + e.getMessage()));
        find = new FindBox(bench, plan::requestFocus);
        start = new StartPane(tasks);
        notice = new NoticePane(bench);
        faces = new FaceKeys(bench);
        room = new SlipRoom(slip);
        compose();
        widthProperty().addListener(o -> fitStyle());
        heightProperty().addListener(o -> fitStyle());
        plan.onTouch(this::touch);
        plan.onPoint(this::point);
        bench.listen(this::show);
        bench.jobs().paintFirst(plan::awaitPainted);
        plan.over(new PlaceMark(() -> new PlaceMark.Seen(
                bench.sight().mark(), bench.face(), bench.sight().appearance().look())));
        bench.listenToMoves(s -> plan.centre(s.xMm(), s.yMm()));
        Drops.taken(this, tasks::open);
        show();
    }

    private void compose() {
        appearance.setId("appearance");
        appearance.getStyleClass().add("key");
        appearance.setOnAction(
                e -> bench.sight().appear(bench.sight().appearance().next()));
        units.setId("units");
        units.getStyleClass().add("key");
        units.setOnAction(e -> bench.sight().measure(bench.sight().units() == Units.METRIC ? Units.US : Units.METRIC));
        HBox tools = new HBox(find, units, appearance);
        tools.getStyleClass().add("tools");
        tools.setMinWidth(USE_PREF_SIZE);
        HBox.setHgrow(steps, Priority.ALWAYS);
        HBox top = new HBox(steps, tools);
        top.getStyleClass().add("top");
        readout.setId("readout");
        readout.getStyleClass().add("readout");
        readout.setMinWidth(0);
        readout.setMaxWidth(Double.MAX_VALUE);
        undo.getStyleClass().add("foot-key");
        undo.setId("undo");
        undo.setOnAction(e -> bench.undo());
        redo.getStyleClass().add("foot-key");
        redo.setId("redo");
        redo.setOnAction(e -> bench.redo());
        undo.setMinWidth(DEED_LEAST);
        redo.setMinWidth(DEED_LEAST);
        HBox.setHgrow(readout, Priority.ALWAYS);
        HBox foot = new HBox(readout, undo, redo, faces);
        foot.getStyleClass().add("foot");
        under.getChildren().setAll(foot, legend);
        work.setTop(top);
        work.setCenter(left);
        VBox.setVgrow(room, Priority.ALWAYS);
        VBox right = new VBox(room, notice);
        right.getStyleClass().add("right");
        work.setRight(right);
        getChildren().addAll(start, work);
    }

    /** Smaller type and keys where the window is small, as at 200 % on a common screen of 1920 x 1080. */
    private void fitStyle() {
        boolean before = wideSlip() == tableWide && roomy() == deckBelow;
        boolean small = getHeight() < SMALL_HEIGHT || getWidth() < SMALL_WIDTH;
        if (small != getStyleClass().contains("small")) {
            if (small) {
                getStyleClass().add("small");
            } else {
                getStyleClass().remove("small");
            }
        }
        room.fit(wideSlip(), small);
        if (!before) {
            show(); // a table and a strip are made anew
        }
    }

    /** Four methods beside each other need one scale, and room for it. */
    boolean wideSlip() {
        return getWidth() >= WIDE_WIDTH
                && bench.sight().step() == Step.REPAIR
                && bench.region().isPresent()
                && !tasks.onHoles();
    }

    /** Whether there is room for a strip under the plan. */
    boolean roomy() {
        return getHeight() >= ROOMY_HEIGHT;
    }

    /** Everything as the workbench now has it. */
    private void show() {
        Sight sight = bench.sight();
        String style = sight.appearance().name().toLowerCase(java.util.Locale.ROOT);
        if (!getStyleClass().contains(style)) { // every change has the whole window styled anew
            getStyleClass().removeAll("day", "night", "sunlight");
            getStyleClass().add(style);
        }
        boolean open = bench.survey().isPresent();
        work.setVisible(
                (open || !bench.complaints().isEmpty() || !bench.busy().what().isEmpty()) && task == null);
        start.setVisible(!work.isVisible() && task == null);
        if (start.isVisible()) {
            start.show(tasks.recent());
        }
        appearance.setText(sight.appearance().word());
        appearance.setAccessibleText("Appearance: " + sight.appearance().word());
        units.setText(sight.units() == Units.METRIC ? "mm" : "inch");
        units.setAccessibleText("Units: " + (sight.units() == Units.METRIC ? "metric" : "US customary"));
        notice.show();
        EditLog log = bench.log();
        deed(undo, "Undo", log != null && log.canUndo(), bench.undoName());
        deed(redo, "Redo", log != null && log.canRedo(), bench.redoName());
        Optional<Assessment> shown = bench.shown();
        shown.ifPresent(this::show);
        if (shown.isEmpty()) {
            steps.show("Corewright", "", Map.of(), sight.step());
            slip.show(complaints(), ink(), tasks.ways());
        }
    }

    private void show(Assessment shown) {
        Survey survey = shown.survey();
        Sight sight = bench.sight();
        Heading h = survey.heading();
        steps.show(
                h.vessel().isEmpty() ? h.name() : h.vessel().split(",", -1)[0],
                bench.face() + ", survey of " + Figures.date(h.surveyed()),
                Steps.of(survey, bench.found().orElse(null), !bench.stopped(), bench.ages(), sight.units()),
                sight.step());
        ScreenLook look = look();
        tableWide = wideSlip();
        deckBelow = roomy();
        Node instead = tasks.middle(sight.step());
        room.fit(tableWide, getStyleClass().contains("small"));
        left.setCenter(instead == null ? plan : instead);
        left.setBottom(instead == null ? under : null);
        work.setBottom(tasks.below(sight.step()));
        Set<ScreenLayer> layers = new HashSet<>(sight.layers());
        if (tasks.onHoles()) {
            layers.remove(ScreenLayer.DEEDS);
        }
        plan.show(
                shown,
                bench.face(),
                new PlanPainter.Showing(
                        layers,
                        look,
                        Lettering.onScreen(sight.units().measure(), bench.ages().oldVolumes()),
                        bench.region().map(r -> r.id()).orElse(""),
                        tasks.onHoles()));
        legend.show(layers, look, sight.units().measure(), nothingOf(survey));
        point(pointedX, pointedY);
        faces.show(survey);
        Terms.Sign decimal = survey.settings().terms().decimal();
        UnaryOperator<String> terms =
                words -> Figures.signed(sight.units().measure().say(words), decimal);
        Held held = holding.held().orElse(null);
        if (held != null) {
            slip.show(held.slip().orElseThrow().said(terms), ink(), held.nodes());
        } else if (bench.complaints().isEmpty()) {
            Slip said = StepSlips.of(sight.step(), shown, bench).said(terms);
            slip.show(said, ink(), tasks.actions(sight.step()));
        } else {
            slip.show(complaints(), ink());
        }
    }

    /** What there is nothing of to show or hide. */
    private Set<ScreenLayer> nothingOf(Survey survey) {
        Set<ScreenLayer> none = new HashSet<>();
        if (survey.photos().isEmpty()) {
            none.add(ScreenLayer.PHOTOGRAPHS);
        }
        if (bench.sight().step() != Step.REPAIR) {
            none.add(ScreenLayer.DEEDS);
        }
        return none;
    }

    private static void deed(Button key, String word, boolean can, String name) {
        key.setVisible(can);
        key.setManaged(can);
        key.setText(can ? name : word);
        key.setAccessibleText(name);
    }

    private ScreenLook look() {
        ScreenLook look = bench.sight().appearance().look();
        return bench.sight().tinted() ? look : look.untinted();
    }

    private javafx.scene.paint.Color ink() {
        return PlanPane.fx(bench.sight().appearance().look().tone().ink());
    }

    private Slip complaints() {
        List<Slip.FindingLine> lines = bench.complaints().stream()
                .map(c -> new Slip.FindingLine(
                        corewright.survey.Finding.Severity.HAZARD, c.place() + ":", c.problem(), null, ""))
                .toList();
        return new Slip(
                lines.isEmpty() ? "Nothing is open" : "To be mended first",
                "",
                bench.message(),
                "",
                null,
                List.of(),
                new Slip.Work(List.of(), "", lines.isEmpty() ? "" : "Complaints, " + lines.size(), lines));
    }

    private void touch(double xMm, double yMm) {
        if (holding.touch(xMm, yMm)) {
            return;
        }
        bench.found()
                .flatMap(a -> FindingLines.regionAt(a, bench.face(), xMm, yMm))
                .ifPresentOrElse(r -> bench.select(r.id()), () -> bench.select(""));
    }

    private void point(double xMm, double yMm) {
        pointedX = xMm;
        pointedY = yMm;
        readout.setText(bench.shown()
                .map(a -> Readout.at(a, bench.face(), xMm, yMm, bench.sight().units(), bench.ages()))
                .orElse(""));
    }

    private void go(Slip.FindingLine line) {
        if (!line.region().isEmpty()) {
            bench.select(line.region());
        }
        Spot spot = line.spot();
        if (spot != null) {
            bench.goTo(spot);
            bench.sight().mark(spot, "");
            found.accept(spot);
        }
    }

    /** Goes to the next finding that can hurt or spoil. */
    void nextFinding() {
        bench.findings().stream()
                .map(f -> f.about().spot())
                .filter(Objects::nonNull)
                .findFirst()
                .ifPresent(bench::goTo);
    }

    void focusFind() {
        find.requestFocus();
        find.selectAll();
    }

    /** Shows everything anew. */
    void refresh() {
        show();
    }

    /** Gives the whole window to a task, or back to the plan. */
    void task(@Nullable Node node) {
        if (task != null) {
            getChildren().remove(task);
        }
        task = node;
        if (node != null) {
            getChildren().add(node);
            node.requestFocus();
        }
        show();
    }

    /** Touching a method beside the map. */
    void onMethod(Consumer<Method> wanted) {
        slip.onMethod(wanted);
    }

    /** Told where a finding led to. */
    void onFinding(Consumer<Spot> listener) {
        found = listener;
    }

    /** What a touch may take up. */
    Holding holding() {
        return holding;
    }

    /** Device pixels to one of the window. */
    double sharpness() {
        return plan.sharpness();
    }

    boolean inTask() {
        return task != null;
    }

    PlanPane plan() {
        return plan;
    }

    LegendBar legend() {
        return legend;
    }
}
