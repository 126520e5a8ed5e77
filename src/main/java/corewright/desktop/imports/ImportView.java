package corewright.desktop.imports;

import corewright.desktop.imports.ImportModel.PreviewLine;
import corewright.intake.CsvImport.What;
import corewright.intake.text.LengthUnit;
import corewright.survey.Meter;
import corewright.survey.Survey;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.cell.TextFieldTableCell;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.converter.DefaultStringConverter;

/** The import over the whole window: choices above, the file's rows below, and what would come of it. */
public final class ImportView extends VBox {
    private static final Map<String, Character> SEPARATORS = Map.of("comma", ',', "semicolon", ';', "tab", '\t');
    private static final String NOTHING = "–";

    private final ImportModel model;
    private final Label effect = new Label();
    private final Button take = new Button();
    private final TableView<PreviewLine> table = new TableView<>();
    private boolean filling;

    /** @param take what to do with the readings when they are accepted */
    public ImportView(ImportModel model, Survey survey, Runnable take, Runnable leave) {
        this.model = model;
        getStyleClass().add("import");
        setId("import-view");
        Label title = new Label("Bring in " + model.deed().replace("import of ", ""));
        title.getStyleClass().add("import-title");
        effect.setWrapText(true);
        effect.setId("import-effect");
        effect.getStyleClass().add("sentence");
        table.setEditable(true);
        table.setId("import-table");
        table.setColumnResizePolicy(TableView.CONSTRAINED_RESIZE_POLICY_FLEX_LAST_COLUMN);
        VBox.setVgrow(table, Priority.ALWAYS);
        this.take.setId("import-take");
        this.take.getStyleClass().add("advance");
        this.take.setOnAction(e -> take.run());
        Button no = new Button("Leave it");
        no.setId("import-leave");
        no.setOnAction(e -> leave.run());
        HBox deeds = new HBox(12, this.take, no);
        getChildren().addAll(title, choices(survey), effect, table, deeds);
        show();
    }

    private FlowPane choices(Survey survey) {
        FlowPane row = new FlowPane(16, 10);
        row.getChildren()
                .addAll(
                        choice(
                                "what",
                                "These are",
                                words(What.values()),
                                word(model.choice().what()),
                                w -> model.what(What.valueOf(upper(w)))),
                        choice(
                                "separator",
                                "Parted by",
                                List.of("comma", "semicolon", "tab"),
                                separator(),
                                this::separate),
                        choice(
                                "decimal",
                                "Decimal sign",
                                List.of("point", "comma"),
                                model.choice().decimalComma() ? "comma" : "point",
                                w -> model.decimalComma(w.equals("comma"))),
                        choice(
                                "length",
                                "Places are in",
                                words(LengthUnit.values()),
                                word(model.choice().length()),
                                w -> model.length(LengthUnit.valueOf(upper(w)))),
                        choice(
                                "face",
                                "On face",
                                survey.faces().stream().map(f -> f.name()).toList(),
                                model.choice().face(),
                                model::face),
                        choice(
                                "meter",
                                "With meter",
                                survey.meters().stream().map(Meter::name).toList(),
                                model.choice().meter(),
                                model::meter));
        CheckBox header = new CheckBox("the first row names the columns");
        header.setId("import-header");
        header.setSelected(model.choice().header());
        header.setOnAction(e -> {
            model.header(header.isSelected());
            show();
        });
        VBox box = new VBox(new Label(""), header);
        row.getChildren().add(box);
        return row;
    }

    private String separator() {
        return SEPARATORS.entrySet().stream()
                .filter(e -> e.getValue() == model.separator())
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse("comma");
    }

    private void separate(String word) {
        try {
            model.separate(SEPARATORS.getOrDefault(word, ','));
        } catch (IOException e) {
            effect.setText(String.valueOf(e.getMessage()));
        }
    }

    private static List<String> words(Enum<?>[] values) {
        List<String> words = new ArrayList<>();
        for (Enum<?> value : values) {
            words.add(word(value));
        }
        return words;
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private static String upper(String word) {
        return word.toUpperCase(Locale.ROOT);
    }

    private VBox choice(String id, String name, List<String> options, String chosen, Consumer<String> choose) {
        ComboBox<String> box = combo(options, chosen, choose);
        box.setId("import-" + id);
        box.setAccessibleText(name);
        Label label = new Label(name);
        label.setLabelFor(box);
        return new VBox(2, label, box);
    }

    private ComboBox<String> combo(List<String> options, String chosen, Consumer<String> choose) {
        ComboBox<String> box = new ComboBox<>();
        box.getItems().setAll(options);
        box.setValue(chosen);
        box.setOnAction(e -> {
            String value = box.getValue();
            if (!filling && value != null) {
                choose.accept(value);
                show();
            }
        });
        return box;
    }

    private void show() {
        filling = true;
        effect.setText(model.effect());
        int bad = model.bad();
        take.setText(
                bad == 0
                        ? "Take all " + model.good() + " rows"
                        : "Take " + model.good() + " rows, leave " + bad + " out");
        take.setDisable(model.good() == 0);
        table.getColumns().clear();
        table.getColumns().add(number());
        List<String> names = model.columnNames();
        for (int i = 0; i < names.size(); i++) {
            table.getColumns().add(column(names.get(i), i));
        }
        table.getColumns().add(problem());
        table.getItems().setAll(model.preview());
        filling = false;
    }

    private static TableColumn<PreviewLine, String> number() {
        TableColumn<PreviewLine, String> column = new TableColumn<>("row");
        column.setSortable(false);
        column.setEditable(false);
        column.setMaxWidth(70);
        column.setCellValueFactory(c ->
                new ReadOnlyStringWrapper(String.valueOf(c.getValue().line().number())));
        return column;
    }

    private TableColumn<PreviewLine, String> column(String name, int at) {
        List<String> options = new ArrayList<>(List.of(NOTHING));
        options.addAll(model.choice().what().columns());
        String holds = model.holds(at);
        ComboBox<String> box = combo(
                options,
                holds.isEmpty() || !options.contains(holds) ? NOTHING : holds,
                w -> model.column(at, w.equals(NOTHING) ? "" : w));
        box.setId("column-" + at);
        box.setAccessibleText("Column " + name + " holds");
        Label label = new Label(name);
        label.getStyleClass().add("quiet");
        TableColumn<PreviewLine, String> column = new TableColumn<>();
        column.setGraphic(new VBox(label, box));
        column.setSortable(false);
        column.setMinWidth(120);
        column.setCellValueFactory(
                c -> new ReadOnlyStringWrapper(c.getValue().line().cell(at)));
        column.setCellFactory(c -> new MendCell((line, text) -> mend(line, at, text)));
        column.setOnEditCommit(e -> mend(e.getRowValue(), at, e.getNewValue() == null ? "" : e.getNewValue()));
        return column;
    }

    private void mend(PreviewLine line, int at, String text) {
        model.mend(line.line().number(), at, text);
        show();
    }

    private static TableColumn<PreviewLine, String> problem() {
        TableColumn<PreviewLine, String> column = new TableColumn<>("what is wrong");
        column.setSortable(false);
        column.setEditable(false);
        column.setMinWidth(260);
        column.setCellValueFactory(c -> new ReadOnlyStringWrapper(c.getValue().problem()));
        column.setCellFactory(c -> {
            TextFieldTableCell<PreviewLine, String> cell = new TextFieldTableCell<>(new DefaultStringConverter());
            cell.getStyleClass().add("problem");
            return cell;
        });
        return column;
    }
}
