package corewright.desktop.resurvey;

import corewright.desktop.plan.Pixels;
import corewright.desktop.resurvey.Resurvey.FacePictures;
import corewright.desktop.slip.SlipView;
import java.util.function.UnaryOperator;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.ImageView;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Before, after and what changed as equal pictures, and in words what the readings prove; over the whole window. */
public final class ResurveyView extends VBox {
    private final Resurvey shown;
    private final GridPane pictures = new GridPane();
    private final HBox faces = new HBox();
    private final ScrollPane said;

    /** @param terms puts words into the reader's units and decimal sign */
    public ResurveyView(Resurvey shown, UnaryOperator<String> terms, Runnable leave) {
        this.shown = shown;
        getStyleClass().add("insight");
        setId("resurvey");
        setMinSize(0, 0); // pictures follow the window, never the other way round
        pictures.setMinSize(0, 0);
        Label title = new Label(shown.title());
        title.getStyleClass().add("slip-title");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        Button back = SlipView.key("resurvey-leave", "Back to the plan", leave);
        back.setMinWidth(USE_PREF_SIZE);
        back.setMaxWidth(USE_PREF_SIZE);
        HBox head = new HBox(16, title, gap, faces, back);
        head.setAlignment(Pos.CENTER_LEFT);
        head.getStyleClass().add("insight-head");
        VBox words = new VBox(8);
        shown.words().forEach(w -> words.getChildren().add(SlipView.text(terms.apply(w), "sentence")));
        words.setId("resurvey-words");
        said = new ScrollPane(words);
        said.setFitToWidth(true);
        said.getStyleClass().add("insight-scroll");
        pictures.setHgap(12);
        pictures.setVgap(8);
        VBox.setVgrow(pictures, Priority.ALWAYS);
        getChildren().setAll(head, pictures);
        if (shown.faces().isEmpty()) {
            pictures.add(said, 0, 0);
        } else {
            show(shown.faces().get(0));
        }
    }

    private void show(FacePictures face) {
        faces.getChildren().clear();
        if (shown.faces().size() > 1) {
            for (FacePictures other : shown.faces()) {
                Button key = SlipView.key("", other.face(), () -> show(other));
                key.setMinWidth(USE_PREF_SIZE);
                key.getStyleClass().addAll("face-key", other == face ? "current" : "other");
                faces.getChildren().add(key);
            }
        }
        faces.setAlignment(Pos.CENTER);
        pictures.getChildren().clear();
        pictures.add(picture(face.before(), "Before: " + face.face()), 0, 0);
        pictures.add(picture(face.after(), "After: " + face.face()), 1, 0);
        pictures.add(picture(face.change(), "What changed: " + face.face()), 0, 1);
        pictures.add(said, 1, 1);
        said.prefWidthProperty().bind(Bindings.max(1, widthProperty().divide(2).subtract(60)));
        said.prefHeightProperty()
                .bind(Bindings.max(1, heightProperty().subtract(130).divide(2)));
    }

    private ImageView picture(Pixels pixels, String name) {
        ImageView view = new ImageView(pixels.image());
        view.setPreserveRatio(true);
        view.setSmooth(true);
        view.fitWidthProperty().bind(Bindings.max(1, widthProperty().divide(2).subtract(40)));
        view.fitHeightProperty()
                .bind(Bindings.max(1, heightProperty().subtract(130).divide(2)));
        view.setAccessibleText(name);
        return view;
    }
}
