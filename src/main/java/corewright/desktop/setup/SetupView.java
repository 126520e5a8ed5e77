package corewright.desktop.setup;

import corewright.desktop.slip.Entry;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextArea;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** Head, faces, meters and laminates over the whole window: a row each, a field a value. */
public final class SetupView extends VBox {
    private static final String METERS = "What a meter reads over core known to be dry, and from which reading core"
            + " counts as wet, on the meter's own scale. What is left empty is estimated from the readings.";
    private static final String LAMINATES =
            "Skins and core as measured in a cut or a core-drilled hole; they decide stiffness, depth stops and mixes.";

    private static final String FACES = "Tilt is 0 flat, 90 a wall, 180 overhead; uphill is where the high side lies:"
            + " 0 aft, 90 to starboard, 180 to the bow, 270 to port. A new face is a plain sheet until its outline is drawn.";

    private final SetupModel model;
    private final VBox body = new VBox(10);
    private final Label problem = new Label();
    private final List<SetupTable> tables = new ArrayList<>();
    private final TextArea notes = new TextArea();
    private final Entry noted;

    public SetupView(SetupModel model, Runnable leave) {
        this.model = model;
        getStyleClass().add("setup");
        setId("setup-view");
        Label title = new Label("Survey, faces, meters, laminates");
        title.getStyleClass().add("import-title");
        problem.setId("setup-problem");
        problem.setWrapText(true);
        problem.getStyleClass().add("setup-problem");
        ScrollPane scroll = new ScrollPane(body);
        scroll.setFitToWidth(true);
        scroll.getStyleClass().add("setup-scroll");
        VBox.setVgrow(scroll, Priority.ALWAYS);
        Button back = new Button("Back to the plan");
        back.setId("setup-leave");
        back.getStyleClass().add("advance");
        back.setMinWidth(Region.USE_PREF_SIZE);
        back.setOnAction(e -> leave.run());
        HBox deeds = new HBox(20, back, problem);
        deeds.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
        getChildren().addAll(title, scroll, deeds);
        notes.setId("setup-notes");
        notes.setPrefRowCount(3);
        notes.setWrapText(true);
        notes.setAccessibleText("Notes");
        notes.setPromptText("what a reader should know of meters, weather and deck");
        noted = new Entry(notes, this::note);
        compose();
        show();
    }

    private boolean note(String text) {
        boolean good = model.notes(text);
        show();
        return good;
    }

    /** The survey may have changed; what is being typed stays. */
    public void show() {
        tables.forEach(SetupTable::show);
        noted.show(model.notes());
        problem.setText(model.problem());
    }

    private void compose() {
        body.getChildren()
                .setAll(
                        head("Survey"),
                        table("survey", model::heading, (name, field, text) -> model.heading(field, text), null),
                        head("Faces"),
                        words(FACES),
                        table("face", model::faces, model::face, model::removeFace),
                        another("add-face", "Another face", model::addFace),
                        head("Meters"),
                        words(METERS),
                        table("meter", model::meters, model::meter, model::removeMeter),
                        another("add-meter", "Another meter", model::addMeter),
                        head("Laminates"),
                        words(LAMINATES),
                        table("laminate", model::laminates, model::laminate, model::removeLaminate),
                        another("add-laminate", "Another laminate", model::addLaminate),
                        head("Notes"),
                        notes);
    }

    private SetupTable table(
            String id, Supplier<List<SetupRow>> rows, SetupTable.Setter set, @Nullable Consumer<String> remove) {
        SetupTable table = new SetupTable(new SetupTable.Kind(id, rows, model::head, set, remove), this::show);
        tables.add(table);
        return table;
    }

    private static Label head(String words) {
        Label label = new Label(words);
        label.getStyleClass().add("setup-head");
        return label;
    }

    private static Label words(String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().add("quiet");
        return label;
    }

    private FlowPane another(String id, String words, Runnable deed) {
        Button key = new Button(words);
        key.setId(id);
        key.setMinWidth(Region.USE_PREF_SIZE);
        key.setOnAction(e -> {
            deed.run();
            show();
        });
        return new FlowPane(key);
    }
}
