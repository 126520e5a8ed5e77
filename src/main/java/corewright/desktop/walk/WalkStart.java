package corewright.desktop.walk;

import corewright.desktop.state.Units;
import corewright.survey.Meter;
import corewright.survey.Survey;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Before the walk: which face, which meter, how far apart. */
public final class WalkStart extends VBox {
    private static final double USUAL_MM = 300;

    private final ToggleGroup face = new ToggleGroup();
    private final ToggleGroup meter = new ToggleGroup();
    private final TextField spacing = new TextField();
    private final Label problem = new Label();
    private final Units units;
    private final Begin begin;

    /** The walk begins. */
    public interface Begin {
        /** @throws IllegalArgumentException with a sentence where no point lies on the face */
        void walk(String face, String meter, double spacingMm);
    }

    public WalkStart(Survey survey, String onFace, Units units, Begin begin, Runnable leave) {
        this.units = units;
        this.begin = begin;
        getStyleClass().add("walk-start");
        setId("walk-start");
        Label title = new Label("Walk the grid");
        title.getStyleClass().add("start-title");
        List<String> faces = survey.faces().stream().map(f -> f.name()).toList();
        List<String> meters = survey.meters().stream().map(Meter::name).toList();
        spacing.setId("spacing");
        spacing.setText(units == Units.METRIC ? "300" : "12");
        spacing.setAccessibleText("Distance between points");
        spacing.setMaxWidth(160);
        spacing.setOnAction(e -> start());
        Button go = new Button("Start the walk");
        go.setId("start-walk");
        go.setDefaultButton(true);
        go.setOnAction(e -> start());
        Button no = new Button("Back to the plan");
        no.setCancelButton(true);
        no.setOnAction(e -> leave.run());
        HBox deeds = new HBox(12, go, no);
        problem.setWrapText(true);
        problem.getStyleClass().add("message");
        getChildren()
                .addAll(
                        title,
                        new Label("Which face"),
                        choice(face, faces, onFace),
                        new Label("With which meter"),
                        choice(meter, meters, meters.isEmpty() ? "" : meters.get(0)),
                        new Label("How far apart, " + units.depthUnit()
                                + (units == Units.METRIC ? " (" + (int) USUAL_MM + " to find, 75 to map)" : "")),
                        spacing,
                        deeds,
                        problem);
    }

    private static HBox choice(ToggleGroup group, List<String> names, String chosen) {
        HBox row = new HBox(8);
        for (String name : names) {
            ToggleButton key = new ToggleButton(name);
            key.setUserData(name);
            key.setToggleGroup(group);
            key.setSelected(name.equals(chosen));
            key.getStyleClass().add("choice");
            row.getChildren().add(key);
        }
        return row;
    }

    private void start() {
        if (face.getSelectedToggle() == null || meter.getSelectedToggle() == null) {
            problem.setText("Choose a face and a meter first.");
            return;
        }
        try {
            double mm = units.mm(Double.parseDouble(spacing.getText().strip().replace(',', '.')));
            begin.walk(
                    String.valueOf(face.getSelectedToggle().getUserData()),
                    String.valueOf(meter.getSelectedToggle().getUserData()),
                    mm);
        } catch (NumberFormatException e) {
            problem.setText("The distance reads \"" + spacing.getText() + "\"; a number is expected, such as 300.");
        } catch (IllegalArgumentException e) {
            problem.setText(String.valueOf(e.getMessage()));
        }
    }
}
