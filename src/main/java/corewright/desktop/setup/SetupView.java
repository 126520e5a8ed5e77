package corewright.desktop.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** Head, faces, meters and laminates over the whole window: a row each, a field a value. */
public final class SetupView extends VBox {
    private static final PseudoClass REFUSED = PseudoClass.getPseudoClass("refused");
    private static final String METERS = "What a meter reads over core known to be dry, and from which reading core"
            + " counts as wet, on the meter's own scale. What is left empty is estimated from the readings.";
    private static final String LAMINATES =
            "Skins and core as measured in a cut or a core-drilled hole; they decide stiffness, depth stops and mixes.";

    private static final String FACES = "Tilt is 0 flat, 90 a wall, 180 overhead; uphill is where the high side lies:"
            + " 0 aft, 90 to starboard, 180 to the bow, 270 to port. A new face is a plain sheet until its outline is drawn.";

    private interface Setter {
        boolean set(String name, SetupField field, String text);
    }

    /** What one kind of row can do; the head of the survey stays. */
    private record Kind(
            List<SetupRow> rows, Setter setter, @Nullable Consumer<String> remover) {
        boolean set(String name, SetupField field, String text) {
            return setter.set(name, field, text);
        }
    }

    private final SetupModel model;
    private final VBox body = new VBox(10);
    private final Label problem = new Label();
    private Shown shown = new Shown(List.of(), List.of(), List.of(), List.of(), "");
    private boolean building;

    private record Shown(
            List<SetupRow> heading,
            List<SetupRow> faces,
            List<SetupRow> meters,
            List<SetupRow> laminates,
            String notes) {}

    private Shown now() {
        return new Shown(model.heading(), model.faces(), model.meters(), model.laminates(), model.notes());
    }

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
        build();
    }

    /** The survey may have changed: rows are made anew where it did, and what is being typed stays where it did not. */
    public void show() {
        if (!shown.equals(now())) {
            build();
        }
        problem.setText(model.problem());
    }

    private void build() {
        shown = now();
        InHand before = inHand();
        building = true;
        FlowPane more = new FlowPane(12, 8, key("add-meter", "Another meter", model::addMeter));
        FlowPane moreLaminates = new FlowPane(12, 8, key("add-laminate", "Another laminate", model::addLaminate));
        TextArea notes = new TextArea(shown.notes);
        notes.setId("setup-notes");
        notes.setPrefRowCount(3);
        notes.setWrapText(true);
        notes.setAccessibleText("Notes");
        notes.setPromptText("what a reader should know of meters, weather and deck");
        notes.focusedProperty().addListener((o, was, is) -> {
            if (!is && !building) {
                after(model.notes(notes.getText()), notes);
            }
        });
        body.getChildren()
                .setAll(
                        head("Survey"),
                        table(
                                "survey",
                                new Kind(shown.heading, (name, field, text) -> model.heading(field, text), null)),
                        head("Faces"),
                        words(FACES),
                        table("face", new Kind(shown.faces, model::face, model::removeFace)),
                        new FlowPane(12, 8, key("add-face", "Another face", model::addFace)),
                        head("Meters"),
                        words(METERS),
                        table("meter", new Kind(shown.meters, model::meter, model::removeMeter)),
                        more,
                        head("Laminates"),
                        words(LAMINATES),
                        table("laminate", new Kind(shown.laminates, model::laminate, model::removeLaminate)),
                        moreLaminates,
                        head("Notes"),
                        notes);
        building = false;
        takeUp(before);
    }

    /** What the hand is at while the rows are made anew. */
    private record InHand(String id, String text, int caret) {}

    private InHand inHand() {
        Node owner = getScene() == null ? null : getScene().getFocusOwner();
        String id = owner == null || owner.getId() == null ? "" : owner.getId();
        return owner instanceof TextField field && !field.getText().equals(field.getUserData())
                ? new InHand(id, field.getText(), field.getCaretPosition())
                : new InHand(id, "", 0);
    }

    /** A value half typed is not lost because the one before it was kept meanwhile. */
    private void takeUp(InHand before) {
        Node node = before.id().isEmpty() ? null : lookup("#" + before.id());
        if (node != null) {
            node.requestFocus();
        }
        if (node instanceof TextField field && !before.text().isEmpty()) {
            field.setText(before.text());
            field.positionCaret(before.caret());
        }
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

    private Button key(String id, String words, Runnable deed) {
        Button key = new Button(words);
        key.setId(id);
        key.setMinWidth(Region.USE_PREF_SIZE);
        key.setOnAction(e -> {
            deed.run();
            show();
        });
        return key;
    }

    private GridPane table(String kind, Kind of) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("setup-table");
        List<SetupRow> rows = of.rows();
        for (int r = 0; r < rows.size(); r++) {
            SetupRow row = rows.get(r);
            int column = 0;
            for (SetupValue value : row.values()) {
                if (r == 0) {
                    Label head = new Label(model.head(value.field()));
                    head.getStyleClass().add("quiet");
                    head.setMinWidth(Region.USE_PREF_SIZE);
                    grid.add(head, column, 0);
                }
                String id = kind + "-" + r + "-" + value.field().name().toLowerCase(Locale.ROOT);
                Control control = control(of, row, value);
                control.setId(id);
                control.setAccessibleText(model.head(value.field()) + " of " + row.name());
                grid.add(control, column++, r + 1);
            }
            Consumer<String> remover = of.remover();
            if (remover != null) {
                Button away = key(kind + "-" + r + "-remove", "Take it away", () -> remover.accept(row.name()));
                away.setAccessibleText("Take " + row.name() + " away");
                grid.add(away, column, r + 1);
            }
        }
        return grid;
    }

    private Control control(Kind of, SetupRow row, SetupValue value) {
        if (!value.options().isEmpty()) {
            List<String> options = new ArrayList<>(value.options());
            if (!options.contains(value.text())) {
                options.add(value.text());
            }
            ComboBox<String> box = new ComboBox<>();
            box.getItems().setAll(options);
            box.setValue(value.text());
            box.setOnAction(e -> after(of.set(row.name(), value.field(), box.getValue()), box));
            return box;
        }
        TextField field = new TextField(value.text());
        field.setUserData(value.text());
        field.setPrefColumnCount(wide(value.field()) ? 11 : 6);
        field.setOnAction(e -> after(of.set(row.name(), value.field(), field.getText()), field));
        field.focusedProperty().addListener((o, was, is) -> {
            if (!is && !building && !field.getText().equals(value.text())) {
                after(of.set(row.name(), value.field(), field.getText()), field);
            }
        });
        return field;
    }

    private static boolean wide(SetupField field) {
        return switch (field) {
            case NAME, VESSEL, CLIENT, SURVEYOR, WEATHER -> true;
            default -> false;
        };
    }

    /** A value that will not do stays as typed, marked, beside the sentence that says why. */
    private void after(boolean good, Control control) {
        control.pseudoClassStateChanged(REFUSED, !good);
        show();
    }
}
