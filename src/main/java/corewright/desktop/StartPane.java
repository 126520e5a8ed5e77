package corewright.desktop;

import corewright.desktop.slip.LongNames;
import corewright.desktop.slip.SlipView;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** The empty window: the three ways to begin, what was open lately, and the sample. */
final class StartPane extends VBox {
    private final VBox lately = new VBox();
    private final Tasks tasks;

    StartPane(Tasks tasks) {
        this.tasks = tasks;
        getStyleClass().add("start");
        Label title = new Label("Which deck is it?");
        title.getStyleClass().add("start-title");
        Label sub = SlipView.text(
                "Readings over a plan become a map of what is wet, loose or empty, and how sure that is.", "sentence");
        HBox ways = new HBox(
                way(
                        "start-open",
                        "Open a survey",
                        "A survey file, or the survey.yaml of a folder. Either may be dropped on this window.",
                        tasks::open),
                way(
                        "start-new",
                        "Start a new one",
                        "A name and the face's size; then draw its outline and walk the grid.",
                        tasks::startNew),
                way(
                        "start-import",
                        "Bring in a CSV",
                        "Readings from a meter or a spreadsheet; their plan can be drawn after.",
                        tasks::importCsv));
        ways.getStyleClass().add("ways");
        ways.setFillHeight(false);
        ways.setMaxHeight(USE_PREF_SIZE);
        Button trial = new Button("Look at the sample survey");
        trial.setId("start-sample");
        trial.getStyleClass().add("key");
        trial.setOnAction(e -> tasks.sample());
        Button whole = new Button("Open a survey folder");
        whole.setId("start-folder");
        whole.getStyleClass().add("key");
        whole.setOnAction(e -> tasks.openFolder());
        lately.getStyleClass().add("lately");
        getChildren().addAll(title, sub, ways, new HBox(16, whole, trial), lately);
    }

    private static Button way(String id, String name, String about, Runnable deed) {
        Label head = new Label(name);
        head.getStyleClass().add("way-name");
        Label words = SlipView.text(about, "quiet");
        VBox all = new VBox(head, words);
        Button key = new Button();
        key.setGraphic(all);
        key.setId(id);
        key.getStyleClass().add("way");
        key.setAccessibleText(name + ". " + about);
        key.setOnAction(e -> deed.run());
        return key;
    }

    void show(List<Path> recent) {
        lately.getChildren().clear();
        if (!recent.isEmpty()) {
            lately.getChildren().add(SlipView.text("Open lately", "head"));
        }
        for (Path path : recent) {
            Button key = LongNames.shorten(new Button(path.getFileName() + "   " + path.getParent()));
            key.getStyleClass().add("finding");
            key.setOnAction(e -> tasks.open(path));
            lately.getChildren().add(key);
        }
    }
}
