package corewright.desktop;

import corewright.desktop.slip.SlipView;
import corewright.desktop.state.Workbench;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Under the slip: the last sentence in full, how far a calculation is, and the way back where it was stopped. */
final class NoticePane extends VBox {
    private final Workbench bench;
    private final Label message = SlipView.text("", "message");
    private final Label words = SlipView.text("", "message");
    private final ProgressBar progress = new ProgressBar();
    private final Button stop = new Button("Stop");
    private final Button again = new Button("Calculate");
    private final HBox busy;

    NoticePane(Workbench bench) {
        this.bench = bench;
        getStyleClass().add("notice");
        setMinHeight(USE_PREF_SIZE);
        setPrefWidth(380); // the slip above it decides how wide it is
        message.setId("message");
        words.setId("busy-words");
        progress.setMaxWidth(Double.MAX_VALUE);
        VBox state = new VBox(4, words, progress);
        HBox.setHgrow(state, Priority.ALWAYS);
        for (Button key : new Button[] {stop, again}) {
            key.getStyleClass().add("key");
            key.setMinWidth(USE_PREF_SIZE);
        }
        stop.setId("stop");
        stop.setOnAction(e -> bench.stop());
        again.setId("calculate");
        again.setOnAction(e -> bench.calculate());
        busy = new HBox(12, state, stop, again);
        busy.getStyleClass().add("busy");
        getChildren().setAll(message, busy);
    }

    void show() {
        boolean under = !bench.busy().what().isEmpty();
        boolean stopped = !under && bench.stopped() && bench.survey().isPresent();
        part(message, !bench.message().isEmpty());
        message.setText(bench.message());
        words.setText(under ? bench.busy().what() : "Not calculated yet: it was stopped.");
        progress.setProgress(bench.busy().fraction());
        part(progress, under);
        part(stop, under);
        part(again, stopped);
        part(busy, under || stopped);
        part(this, !bench.message().isEmpty() || under || stopped);
    }

    private static void part(javafx.scene.Node node, boolean shown) {
        node.setVisible(shown);
        node.setManaged(shown);
    }
}
