package corewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.SurveyFolders;
import corewright.survey.Moisture;
import corewright.survey.Readings;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.TableCell;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Real windows without a screen, used by a hand on mouse and keys. */
class WindowTest {
    private static OpenWindow on(Path folder, Optional<Path> chosen) {
        OpenWindow window = new OpenWindow(MapChain::assess, chosen);
        OpenWindow.doFx(() -> window.desk.open(SurveyFolders.minimal(folder).path()));
        window.waitUntilCalculated();
        return window;
    }

    private static Survey survey(OpenWindow window) {
        return OpenWindow.onFx(() -> window.desk.bench().survey().orElseThrow());
    }

    private static List<Moisture> moisture(OpenWindow window) {
        return survey(window).readings().moisture();
    }

    @Test
    void aCsvIsBroughtInWithOneRowMended(@TempDir Path folder) throws IOException {
        Path csv = Files.writeString(
                folder.resolve("meter.csv"), "aft;stbd;reading\n100;150;12,5\n200;150;4l,5\n300;150;14\n");
        try (OpenWindow window = on(folder, Optional.of(csv))) {
            int before = moisture(window).size();
            window.hand.clickOn("#step-readings").clickOn("#import");
            window.waitFor("the table", () -> !window.hand
                    .lookup("#import-table .table-row-cell")
                    .queryAll()
                    .isEmpty());
            assertThat(window.hand.lookup("#import-effect").queryAs(Label.class).getText())
                    .isEqualTo(
                            "2 moisture readings from 0.10 to 0.30 m aft and 0.15 to 0.15 m to starboard, values 12.5"
                                    + " to 14. 1 row cannot be read and can be mended here.");

            TableCell<?, ?> wrong = window.hand.lookup("#import-table .table-cell").<TableCell<?, ?>>queryAll().stream()
                    .filter(c -> "4l,5".equals(c.getText()))
                    .findFirst()
                    .orElseThrow();
            window.hand
                    .doubleClickOn(wrong)
                    .type(KeyCode.DIGIT4, KeyCode.DIGIT1)
                    .type(KeyCode.ENTER);
            window.waitFor("the row", () -> window.hand
                    .lookup("#import-take")
                    .queryButton()
                    .getText()
                    .equals("Take all 3 rows"));
            window.hand.clickOn("#import-take");
            window.waitFor(
                    "the readings",
                    () -> window.desk
                                    .bench()
                                    .survey()
                                    .orElseThrow()
                                    .readings()
                                    .moisture()
                                    .size()
                            == before + 3);

            assertThat(moisture(window).subList(before, before + 3))
                    .extracting(Moisture::value)
                    .containsExactly(12.5, 41.0, 14.0);
            window.waitUntilCalculated();
        }
    }

    @Test
    void tenPointsAreWalkedTakenBackAndMadeAgain(@TempDir Path folder) {
        try (OpenWindow window = on(folder, Optional.empty())) {
            Readings before = survey(window).readings();
            window.hand.clickOn("#step-readings").clickOn("#walk");
            window.hand.doubleClickOn("#spacing").write("140").clickOn("#start-walk");
            for (int i = 0; i < 10; i++) {
                window.hand.type(KeyCode.DIGIT1, KeyCode.DIGIT2).type(KeyCode.S).type(KeyCode.ENTER);
            }
            window.waitFor(
                    "ten readings",
                    () -> window.desk
                                    .bench()
                                    .survey()
                                    .orElseThrow()
                                    .readings()
                                    .moisture()
                                    .size()
                            == before.moisture().size() + 10);
            assertThat(survey(window).readings().taps()).hasSize(before.taps().size() + 10);

            window.hand
                    .clickOn("#leave-walk")
                    .press(KeyCode.CONTROL)
                    .type(KeyCode.Z)
                    .release(KeyCode.CONTROL);
            window.waitFor(
                    "undo",
                    () -> window.desk
                                    .bench()
                                    .survey()
                                    .orElseThrow()
                                    .readings()
                                    .moisture()
                                    .size()
                            == before.moisture().size() + 9);
            assertThat(OpenWindow.onFx(() -> window.desk.bench().message())).startsWith("Taken back: reading at ");
            assertThat(window.hand.lookup("#redo").queryButton().getText()).startsWith("Redo: reading at ");

            window.hand.clickOn("#redo");
            window.waitFor(
                    "redo",
                    () -> window.desk
                                    .bench()
                                    .survey()
                                    .orElseThrow()
                                    .readings()
                                    .moisture()
                                    .size()
                            == before.moisture().size() + 10);
            assertThat(Files.exists(folder.resolve("survey.gpkg")))
                    .as("the folder became a file beside it at the first edit")
                    .isTrue();
            window.waitUntilCalculated();
        }
    }

    @Test
    void anOutlineIsDrawnAndTakenBack(@TempDir Path folder) {
        try (OpenWindow window = on(folder, Optional.empty())) {
            double before = survey(window).face("foredeck").outline().getArea();
            window.hand.clickOn("#step-plan").clickOn("#draw");
            OpenWindow.doFx(() -> window.hand
                    .lookup("#sketch-tool")
                    .queryComboBox()
                    .getSelectionModel()
                    .select(Sketch.Tool.OUTLINE.ordinal()));
            for (String point : List.of("0, 0", "1000, -50", "1000, 700", "0, 600")) {
                window.hand.clickOn("#sketch-point").write(point).type(KeyCode.ENTER);
            }
            window.hand.clickOn("#sketch-finish");
            window.waitFor(
                    "the outline",
                    () -> window.desk
                                    .bench()
                                    .survey()
                                    .orElseThrow()
                                    .face("foredeck")
                                    .outline()
                                    .getArea()
                            != before);
            // half the sum of the parallel sides, 600 and 750, times 1000
            assertThat(survey(window).face("foredeck").outline().getArea()).isEqualTo(675_000);

            window.hand.clickOn("#undo");
            window.waitFor(
                    "undo",
                    () -> window.desk
                                    .bench()
                                    .survey()
                                    .orElseThrow()
                                    .face("foredeck")
                                    .outline()
                                    .getArea()
                            == before);
            window.hand.clickOn("#sketch-done");
            window.waitUntilCalculated();
        }
    }

    @Test
    void everyControlHasAName(@TempDir Path folder) {
        try (OpenWindow window = on(folder, Optional.empty())) {
            List<String> nameless = window.hand.lookup(".button").queryAllAs(javafx.scene.control.Button.class).stream()
                    .filter(b -> (b.getText() == null || b.getText().isEmpty())
                            && (b.getAccessibleText() == null
                                    || b.getAccessibleText().isEmpty()))
                    .filter(b -> !b.getStyleClass().contains("increment-button")
                            && !b.getStyleClass().contains("decrement-button"))
                    .map(Object::toString)
                    .toList();
            assertThat(nameless).isEmpty();
        }
    }
}
