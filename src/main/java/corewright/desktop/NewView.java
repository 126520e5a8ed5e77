package corewright.desktop;

import corewright.desktop.slip.SlipView;
import corewright.desktop.state.Units;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.locationtech.jts.geom.Envelope;

/** Starting a new survey: what it is called and how large its first face is. */
final class NewView extends VBox {
    /** Where it goes on. */
    interface Begin {
        void start(String name, String face, Envelope box);
    }

    private final TextField name = field("new-name", "Name of the survey", "");
    private final TextField face = field("new-face", "Its first face", "foredeck");
    private final TextField length;
    private final TextField width;
    private final Label problem = SlipView.text("", "message");
    private final Units units;

    NewView(Units units, Begin begin, Runnable leave) {
        this.units = units;
        getStyleClass().add("walk-start");
        setId("new-view");
        length = field("new-length", "", units == Units.METRIC ? "3400" : "134");
        width = field("new-width", "", units == Units.METRIC ? "2500" : "98");
        Label title = new Label("A new survey");
        title.getStyleClass().add("start-title");
        Button go = new Button("Start it");
        go.setId("new-start");
        go.setDefaultButton(true);
        go.setOnAction(e -> begin(begin));
        Button no = new Button("Not now");
        no.setCancelButton(true);
        no.setOnAction(e -> leave.run());
        getChildren()
                .addAll(
                        title,
                        asked("What is it called", name),
                        name,
                        asked("Its first face", face),
                        face,
                        asked("How long, fore and aft, " + units.depthUnit(), length),
                        length,
                        asked("How wide, side to side, " + units.depthUnit(), width),
                        width,
                        new HBox(12, go, no),
                        problem);
    }

    private static Label asked(String question, TextField answer) {
        answer.setAccessibleText(question);
        return new Label(question);
    }

    private static TextField field(String id, String prompt, String text) {
        TextField field = new TextField(text);
        field.setId(id);
        field.setPromptText(prompt);
        field.setMaxWidth(420);
        return field;
    }

    private void begin(Begin begin) {
        try {
            double l = units.mm(Double.parseDouble(length.getText().strip()));
            double w = units.mm(Double.parseDouble(width.getText().strip()));
            if (name.getText().isBlank() || face.getText().isBlank() || !(l > 0 && w > 0)) {
                problem.setText("A name, a face and two lengths above zero are needed.");
                return;
            }
            begin.start(name.getText().strip(), face.getText().strip(), new Envelope(0, l, -w / 2, w / 2));
        } catch (NumberFormatException e) {
            problem.setText("Length and width are numbers, such as 3400.");
        }
    }
}
