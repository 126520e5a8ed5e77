package corewright.desktop;

import corewright.desktop.slip.SlipView;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** The list of keys, over the whole window. */
final class KeysView extends VBox {
    private static final String[][] KEYS = {
        {"1 to 6", "the six steps"},
        {"Ctrl F, G", "find a region, a hole, a name, a reading or a place, such as R1 or E s2"},
        {"Page Down, Page Up", "next, previous region"},
        {"F, +, −", "the whole plan, closer, further"},
        {"arrows", "move the plan while it has the focus"},
        {"!", "the gravest finding"},
        {"W", "walk the grid"},
        {"I", "bring in a CSV"},
        {"M", "survey, faces, meters, laminates"},
        {"U", "how good the map is"},
        {"L, then 1 to 9", "a legend entry on or off"},
        {"N, T", "day, night, sunlight; tints on or off"},
        {"Escape", "let go of what is held; leave what takes the whole window"},
        {"Ctrl Z, Shift Ctrl Z", "undo, redo"},
        {"Ctrl O, Shift Ctrl O", "open a file, a folder"},
        {"In the walk", "figures, S D H, Enter keeps, Backspace, > over the scale, R one more, X leave out"},
        {"Among the holes", "H a hole, V a vent, Page Down the next; arrows 5 mm, with Shift 25; Delete takes away"},
        {"At the boat", "figures, Enter keeps, G grams, D depth felt, L leaks below"},
        {"F1", "this list"},
    };

    KeysView(Runnable leave) {
        getStyleClass().add("setup");
        setId("keys-view");
        Label title = new Label("Keys");
        title.getStyleClass().add("import-title");
        GridPane grid = new GridPane();
        grid.setHgap(28);
        grid.setVgap(9);
        int row = 0;
        for (String[] line : KEYS) {
            Label key = SlipView.text(line[0], "head");
            key.setMinWidth(USE_PREF_SIZE);
            grid.addRow(row++, key, SlipView.text(line[1], "sentence"));
        }
        ScrollPane scroll = new ScrollPane(grid);
        scroll.setFitToWidth(true);
        scroll.getStyleClass().add("setup-scroll");
        Button back = new Button("Back");
        back.setId("keys-leave");
        back.getStyleClass().add("advance");
        back.setCancelButton(true);
        back.setOnAction(e -> leave.run());
        getChildren().addAll(title, scroll, back);
    }
}
