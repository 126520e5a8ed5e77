package corewright.desktop;

import corewright.desktop.photos.PhotoDesk;
import corewright.desktop.setup.SetupModel;
import corewright.desktop.setup.SetupView;
import corewright.desktop.sketch.Sketch;
import corewright.desktop.sketch.SketchHand;
import corewright.desktop.sketch.UnderlayPicture;
import corewright.desktop.sketch.UnderlayView;
import corewright.desktop.slip.SlipView;
import corewright.desktop.state.Complaints;
import corewright.desktop.state.EditLog;
import corewright.desktop.state.Recent;
import corewright.desktop.state.Step;
import corewright.desktop.state.Steps;
import corewright.desktop.state.SurveyOpener;
import corewright.desktop.state.Workbench;
import corewright.desktop.touch.HandReading;
import corewright.desktop.touch.TouchDesk;
import corewright.desktop.walk.GridWalk;
import corewright.desktop.walk.WalkStart;
import corewright.desktop.walk.WalkView;
import corewright.survey.Spot;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.KeyEvent;
import org.jspecify.annotations.Nullable;

/** One window's parts put together, and the deeds it offers. */
final class Desk implements Tasks {
    private final Workbench bench;
    private final Chooser chooser;
    private final Recent recent;
    private final MainView view;
    private final Openings openings;
    private final PhotoDesk photos;
    private final TouchDesk touch;
    private final HandReading noting;
    private final @Nullable SecondHalf half; // null while the view is made
    private @Nullable SketchHand hand;
    private @Nullable SetupView setup;
    private @Nullable WalkView walk;
    private String drawnOn = "";
    private @Nullable EditLog followed;
    private @Nullable Path place;
    private List<Path> lately = List.of();

    Desk(Workbench bench, Chooser chooser, Recent recent, Consumer<Path> viewer) {
        this.bench = bench;
        this.chooser = chooser;
        this.recent = recent;
        this.view = new MainView(bench, this);
        this.openings = new Openings(bench, chooser, recent, view, this::backToPlan, this::lately);
        this.photos = new PhotoDesk(bench, view.plan());
        SecondHalf second = new SecondHalf(bench, view, chooser, viewer);
        this.half = second;
        this.touch = new TouchDesk(bench, view.plan());
        this.noting = new HandReading(bench, view.plan());
        view.onFinding(touch::openAt);
        view.holding().of(List.of(noting, second.check(), photos, touch));
        view.onMethod(second::want);
        bench.listen(this::follow);
        bench.listenToUndo(said -> {
            WalkView walking = walk;
            if (walking != null) {
                bench.survey().ifPresent(s -> walking.follow(s, said));
            }
        });
    }

    private void follow() {
        SetupView open = setup;
        if (open != null) {
            open.show();
        }
        if (hand != null && (bench.sight().step() != Step.PLAN || !bench.face().equals(drawnOn))) {
            stopDrawing();
        }
        EditLog log = bench.log();
        Path now = log == null ? null : log.place();
        Path before = log == followed ? place : null;
        followed = log;
        place = now;
        if (now != null && before != null && !now.equals(before)) {
            bench.jobs().run(() -> recent.written(before, now), this::lately, e -> {});
        }
    }

    /** The scene of the window, 1440 x 900. */
    Scene scene() {
        Scene scene = new Scene(view, 1440, 900);
        Theme.dress(scene);
        new Keys(bench, view, this).listen(scene);
        return scene;
    }

    Workbench bench() {
        return bench;
    }

    MainView view() {
        return view;
    }

    @Override
    public void open() {
        Optional<Path> chosen = chooser.file("Open a survey", "Survey file or survey.yaml", "*.gpkg", "survey.yaml");
        chosen.ifPresent(this::open);
    }

    @Override
    public void openFolder() {
        chooser.folder("Open a survey folder").ifPresent(this::open);
    }

    @Override
    public void open(Path path) {
        open(path, () -> SurveyOpener.open(path));
    }

    /** Opens what a test gives as if it lay at that path. */
    void open(Path path, Callable<EditLog> source) {
        openings.open(path, source);
    }

    @Override
    public void startNew() {
        openings.startNew();
    }

    @Override
    public void importCsv() {
        openings.importCsv();
    }

    /** Draws on the face shown. */
    void draw() {
        bench.survey().ifPresent(survey -> {
            stopDrawing();
            bench.sight().go(Step.PLAN);
            Sketch sketch = new Sketch(bench.face(), bench::edit);
            drawnOn = bench.face();
            hand = new SketchHand(sketch, bench, view.plan(), this::underlay, this::stopDrawing);
            bench.hold(true);
            view.refresh();
        });
    }

    private void stopDrawing() {
        SketchHand drawing = hand;
        if (drawing != null) {
            hand = null;
            drawing.stop();
            bench.hold(false);
            bench.sight().go(bench.sight().step());
        }
    }

    /** A picture or a page under the plan; where it lies and how large it is is said by two points. */
    private void underlay() {
        chooser.file("A picture of the plan", "Picture or PDF", "*.png", "*.jpg", "*.jpeg", "*.pdf")
                .ifPresent(f -> underlay(f, 1));
    }

    private void underlay(Path file, int page) {
        bench.waiting()
                .on(
                        "Reading " + file.getFileName(),
                        progress -> UnderlayPicture.read(file, page),
                        picture -> {
                            SketchHand drawing = hand;
                            if (drawing != null) {
                                view.task(new UnderlayView(
                                        picture,
                                        bench.sight().units(),
                                        drawing,
                                        p -> underlay(file, p),
                                        () -> view.task(null)));
                            }
                        },
                        e -> bench.say(Complaints.sentence(e)));
    }

    /** Pins a photograph to a place of the face shown. */
    void photograph() {
        if (bench.survey().isPresent()) {
            view.holding().letGo();
            chooser.file("A photograph", "Picture", "*.jpg", "*.jpeg", "*.png").ifPresent(photos::begin);
        }
    }

    /** Takes up the reading at a place. */
    void openReading(Spot spot) {
        touch.openAt(spot);
    }

    /** Notes readings one by one. */
    private void note() {
        view.holding().letGo();
        noting.open();
    }

    /** Walks the grid of the face shown. */
    @Override
    public void walk() {
        bench.survey().ifPresent(survey -> {
            bench.hold(true);
            WalkStart choice = new WalkStart(survey, bench.face(), bench.sight().units(), this::walk, this::backToPlan);
            view.task(choice);
        });
    }

    private void walk(String face, String meter, double spacingMm) {
        bench.survey().ifPresent(survey -> {
            GridWalk begun =
                    new GridWalk(survey, face, meter, spacingMm, bench.sight().units(), bench::edit);
            WalkView shown = new WalkView(begun, bench.sight().appearance().look(), this::backToPlan, bench::undo);
            walk = shown;
            view.task(shown);
        });
    }

    @Override
    public void showInsight() {
        InsightTask.show(bench, view, this::backToPlan);
    }

    /** The survey that is open beside another one of the same boat. */
    void resurvey() {
        chooser.file("Another survey of this boat", "Survey file or survey.yaml", "*.gpkg", "survey.yaml")
                .ifPresent(other -> ResurveyTask.show(bench, view, other));
    }

    private void backToPlan() {
        setup = null;
        walk = null;
        view.task(null);
        bench.hold(false);
    }

    /** Meters and laminates of the survey that is open. */
    @Override
    public void setUp() {
        bench.survey().ifPresent(opened -> {
            bench.hold(true);
            SetupModel model = new SetupModel(
                    () -> bench.survey().orElse(opened), bench.sight().units(), bench::edit);
            setup = new SetupView(model, this::backToPlan);
            view.task(setup);
        });
    }

    @Override
    public void sample() {
        bench.open("the sample survey", SurveyOpener::sample);
    }

    @Override
    public List<Path> recent() {
        return lately;
    }

    /** Has the list read aside. */
    void listRecent() {
        bench.jobs().run(recent::list, this::lately, e -> lately(List.of()));
    }

    private void lately(List<Path> list) {
        lately = list;
        view.refresh();
    }

    @Override
    public Node[] ways() {
        return bench.complaints().isEmpty()
                ? new Node[0]
                : new Node[] {
                    SlipView.key("way-file", "Open a survey file", this::open),
                    SlipView.key("way-folder", "Open a survey folder", this::openFolder),
                    SlipView.key("way-new", "Begin a new survey", this::startNew)
                };
    }

    @Override
    public Node[] actions(Step step) {
        boolean unread =
                bench.survey().filter(s -> Steps.nothingRead(s.readings())).isPresent();
        if (unread && step.ordinal() >= Step.DAMAGE.ordinal()) {
            return readingKeys();
        }
        return switch (step) {
            case PLAN -> planKeys();
            case READINGS -> {
                List<Node> keys = new ArrayList<>(List.of(readingKeys()));
                keys.add(SlipView.key("photo", "Pin a photograph", this::photograph));
                keys.add(SlipView.key("setup", "Survey, meters, laminates", this::setUp));
                yield keys.toArray(Node[]::new);
            }
            case DAMAGE ->
                bench.found().isEmpty() || bench.region().isPresent()
                        ? new Node[0]
                        : new Node[] {
                            SlipView.key("insight", "How good this map is", this::showInsight),
                            SlipView.key("resurvey", "Beside another survey", this::resurvey)
                        };
            default -> half == null ? new Node[0] : half.actions(step);
        };
    }

    /** The ways to readings. */
    private Node[] readingKeys() {
        return new Node[] {
            SlipView.key("walk", "Walk the grid", this::walk),
            SlipView.key("import", "Bring in a CSV", this::importCsv),
            SlipView.key("note", "Note one by hand", this::note)
        };
    }

    @Override
    public boolean key(KeyEvent e) {
        return half().key(e);
    }

    SecondHalf half() {
        return Objects.requireNonNull(half);
    }

    private Node[] planKeys() {
        SketchHand drawing = hand;
        if (drawing != null) {
            return new Node[] {drawing.tools()};
        }
        List<Node> keys = new ArrayList<>();
        keys.add(SlipView.key("draw", "Draw the plan", this::draw));
        keys.add(SlipView.key("setup", "Survey, meters, laminates", this::setUp));
        if (bench.log() != null && place == null) {
            keys.add(SlipView.key("keep-copy", "Keep a copy of this survey", () -> bench.survey()
                    .ifPresent(s -> openings.create(s.heading().name(), s))));
        }
        return keys.toArray(Node[]::new);
    }

    @Override
    public @Nullable Node middle(Step step) {
        return half == null ? null : half.middle(step);
    }

    @Override
    public @Nullable Node below(Step step) {
        return half == null ? null : half.below(step);
    }

    @Override
    public boolean onHoles() {
        return half != null && half.onHoles();
    }

    void stop() {
        bench.close();
        view.plan().stop();
    }
}
