package corewright.desktop.slip;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.desktop.WindowToolkit;
import corewright.desktop.state.Units;
import corewright.survey.Finding;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FindingRowsTest {
    @BeforeAll
    static void toolkit() {
        WindowToolkit.begin();
    }

    /** Each once was as high as its words would be with one letter a line, so that only the first was ever in sight. */
    @ParameterizedTest
    @ValueSource(ints = {382, 396, 568})
    void oneFindingStandsRightUnderAnother(int width) {
        CompletableFuture<List<Double>> heights = new CompletableFuture<>();
        Platform.runLater(() -> {
            try {
                heights.complete(heights(width));
            } catch (RuntimeException e) {
                heights.completeExceptionally(e);
            }
        });
        assertThat(heights.join()).hasSize(2).allSatisfy(h -> assertThat(h).isBetween(40.0, 150.0));
    }

    private static List<Double> heights(int width) {
        SlipView view = new SlipView(line -> {}, new Help(() -> Units.METRIC));
        ScrollPane room = new ScrollPane(view);
        room.setFitToWidth(true);
        Scene scene = new Scene(room, width, 800);
        scene.getStylesheets().add("/corewright/desktop/desktop.css");
        Slip.FindingLine line = new Slip.FindingLine(
                Finding.Severity.HAZARD,
                "R3 holds or touches the place of the mast step, which carries load.",
                "Injection is not offered under a load. Keep it out of use until a naval architect has decided.",
                null,
                "");
        Slip.Work work = new Slip.Work(List.of(), "", "Findings, 2 open", List.of(line, line));
        view.show(new Slip("Boat deck", "", "", "", null, List.of(), work), Color.BLACK);
        scene.getRoot().applyCss();
        scene.getRoot().layout();
        return view.getChildren().stream()
                .filter(Button.class::isInstance)
                .map(Node::getBoundsInParent)
                .map(b -> b.getHeight())
                .toList();
    }
}
