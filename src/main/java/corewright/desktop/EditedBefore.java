package corewright.desktop;

import corewright.desktop.slip.SlipView;
import java.nio.file.Path;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** A folder was chosen that was edited before: which of the two is meant. */
final class EditedBefore extends VBox {
    EditedBefore(Path file, Runnable openFile, Runnable openFolder) {
        getStyleClass().add("walk-start");
        setId("edited-before");
        Label title = SlipView.text("This survey was edited before", "start-title");
        Label words = SlipView.text(
                "The folder is as it was brought in. What was changed in this window since is in " + file.getFileName()
                        + ", beside it.",
                "sentence");
        Button edited = SlipView.key("open-edited", "Go on with " + file.getFileName(), openFile);
        edited.setDefaultButton(true);
        Button folder = SlipView.key("open-folder-anew", "Begin anew from the folder", openFolder);
        Label anew = SlipView.text(
                "Begun anew, the next edit makes another file; " + file.getFileName() + " stays.", "quiet");
        edited.setMaxWidth(560);
        folder.setMaxWidth(560);
        getChildren().setAll(title, words, edited, folder, anew);
    }
}
