package corewright.desktop.decide;

import corewright.decision.Flip;
import corewright.desktop.slip.SlipView;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** What would change a decision: what has to be found, and how many cases in how many it is, as boxes to be counted. */
final class FlipLine {
    private FlipLine() {}

    /**
     * @param condition in the reader's units
     * @param go shows where to look; not offered where that is no one place
     */
    static Node of(Flip flip, String condition, Runnable go) {
        Cases cases = Cases.of(flip.probability());
        String words = Methods.name(flip.becomes()) + " if " + condition + ".";
        Label said = SlipView.text(words, "sentence");
        HBox.setHgrow(said, Priority.ALWAYS);
        said.setMaxWidth(Double.MAX_VALUE);
        Label count = SlipView.text(cases.words(), "quiet");
        count.setMinWidth(Region.USE_PREF_SIZE);
        VBox counted = new VBox(2, boxes(cases), count);
        counted.setAlignment(Pos.TOP_RIGHT);
        counted.setMinWidth(Region.USE_PREF_SIZE);
        HBox line = new HBox(10, said, counted);
        if (flip.spot() == null) {
            return line;
        }
        Button key = new Button();
        key.setGraphic(line);
        line.prefWidthProperty().bind(key.widthProperty().subtract(4));
        key.getStyleClass().addAll("finding", "flip");
        key.setMaxWidth(Double.MAX_VALUE);
        key.setAccessibleText(words + " " + cases.words() + ". Press to see where to look.");
        key.setOnAction(e -> go.run());
        return key;
    }

    private static Node boxes(Cases cases) {
        HBox boxes = new HBox(3);
        boxes.setAlignment(Pos.CENTER_RIGHT);
        for (int i = 0; i < cases.of(); i++) {
            Region box = new Region();
            box.getStyleClass().addAll("case", i < cases.hit() ? "hit" : "missed");
            boxes.getChildren().add(box);
        }
        return boxes;
    }
}
