package corewright.desktop;

import corewright.desktop.walk.GridWalk;
import corewright.desktop.walk.WalkStart;
import corewright.desktop.walk.WalkView;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;

/** One window's parts put together, and the deeds it offers. */
final class Desk implements MainView.Tasks {
    private final Workbench bench;
    private final Chooser chooser;
    private final Recent recent;
    private final MainView view;

    Desk(Workbench bench, Chooser chooser, Recent recent) {
        this.bench = bench;
        this.chooser = chooser;
        this.recent = recent;
        this.view = new MainView(bench, this);
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
    public void open(Path path) {
        bench.open(String.valueOf(path.getFileName()), () -> {
            EditLog log = SurveyOpener.open(path);
            recent.opened(path);
            return log;
        });
    }

    @Override
    public void startNew() {
        bench.say("Starting a new survey here is not there yet.");
    }

    @Override
    public void importCsv() {
        bench.say("Bringing in a CSV is not there yet.");
    }

    /** Walks the grid of the face shown. */
    void walk() {
        bench.survey().ifPresent(survey -> {
            bench.hold(true);
            WalkStart choice = new WalkStart(survey, bench.face(), bench.sight().units(), this::walk, this::backToPlan);
            view.task(choice);
        });
    }

    private void walk(String face, String meter, double spacingMm) {
        bench.survey().ifPresent(survey -> {
            GridWalk walk = new GridWalk(survey, face, meter, spacingMm, bench::edit);
            view.task(new WalkView(walk, bench.sight().appearance().look(), this::backToPlan));
        });
    }

    private void backToPlan() {
        view.task(null);
        bench.hold(false);
    }

    @Override
    public void sample() {
        bench.open("the sample survey", SurveyOpener::sample);
    }

    @Override
    public List<Path> recent() {
        return recent.list();
    }

    @Override
    public Node[] actions(Step step) {
        return switch (step) {
            case READINGS ->
                new Node[] {key("walk", "Walk the grid", this::walk), key("import", "Bring in a CSV", this::importCsv)};
            default -> new Node[0];
        };
    }

    static Button key(String id, String words, Runnable deed) {
        Button key = new Button(words);
        key.setId(id);
        key.getStyleClass().add("key");
        key.setMaxWidth(Double.MAX_VALUE);
        key.setOnAction(e -> deed.run());
        return key;
    }

    void stop() {
        bench.close();
        view.plan().stop();
    }
}
