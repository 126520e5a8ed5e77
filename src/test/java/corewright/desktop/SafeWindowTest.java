package corewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.desktop.plan.PlanPane;
import corewright.desktop.state.Step;
import corewright.survey.Moisture;
import corewright.survey.Survey;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import javafx.geometry.Point2D;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a slip of the hand must not do; nothing is calculated here. */
class SafeWindowTest {
    private static Survey survey(OpenWindow window) {
        return window.desk.bench().survey().orElseThrow();
    }

    private static void says(OpenWindow window, String begin) {
        window.shown("#walk-question", Label.class, l -> l.getText().startsWith(begin));
    }

    @Test
    void aWalkWithSlipsIsMendedByOneKeyEach(@TempDir Path folder) {
        try (OpenWindow window = OpenWindow.bare(folder)) {
            List<Moisture> before = survey(window).readings().moisture();
            window.click("#step-readings");
            window.click("#walk");
            window.click("#start-walk");
            window.hand.type(KeyCode.DIGIT6, KeyCode.DIGIT8, KeyCode.BACK_SPACE, KeyCode.DIGIT1, KeyCode.ENTER);
            window.waitFor("61", () -> survey(window).readings().moisture().stream()
                    .anyMatch(m -> m.value() == 61 && m.taken() != null));
            window.hand.type(KeyCode.BACK_SPACE, KeyCode.DIGIT9, KeyCode.ENTER);
            says(window, "A, starboard 1: 9 replaces 61. Ctrl Z takes it back.");

            window.click("#walk-undo");
            says(window, "Taken back: reading at A, starboard 1.");
            window.hand.type(KeyCode.BACK_SPACE);
            window.shown("#walk-value", Label.class, l -> l.getText().equals("61"));
            window.hand.type(KeyCode.X);
            window.click("#why-standing-water");
            window.hand.type(KeyCode.ESCAPE);
            window.waitFor("the plan", () -> !window.desk.view().inTask());
            assertThat(survey(window).readings().moisture()).hasSize(before.size() + 1);
        }
    }

    @Test
    void drawingEndsWithItsStepAndADragMovesOnlyThePlan(@TempDir Path folder) {
        try (OpenWindow window = OpenWindow.bare(folder)) {
            Survey before = survey(window);
            window.click("#step-plan");
            window.click("#draw");
            PlanPane plan = window.desk.view().plan();
            double at = OpenWindow.onFx(() -> plan.camera().px(0));
            Point2D corner = window.onScreen(0, 0);
            window.hand.drag(corner, 60, 40);
            assertThat(OpenWindow.onFx(() -> plan.camera().px(0))).isNotEqualTo(at);
            assertThat(survey(window)).isEqualTo(before);

            OpenWindow.doFx(() -> window.desk.bench().sight().go(Step.DAMAGE));
            window.click("#step-plan");
            window.shown("#draw", Button.class, b -> true);
        }
    }

    @Test
    void aFolderEditedBeforeOffersItsFile(@TempDir Path folder) {
        try (OpenWindow window = OpenWindow.bare(folder)) {
            OpenWindow.doFx(() -> window.desk
                    .bench()
                    .edit(
                            "notes",
                            s -> corewright.survey.Edit.put(
                                    corewright.survey.Part.HEADING, s.heading().withNotes("kept"))));
            window.waitFor("the edit", () -> survey(window).heading().notes().equals("kept"));
            Path file = OpenWindow.onFx(
                    () -> Objects.requireNonNull(window.desk.bench().log()).place());
            window.waitFor(
                    "recent items with what was written",
                    () -> window.desk.recent().equals(List.of(file)));

            OpenWindow.doFx(() -> window.desk.bench().close());
            OpenWindow.doFx(() -> window.desk.open(folder.resolve("survey")));
            window.click("#open-edited");
            window.waitFor("the edited file", () -> window.desk.bench().survey().isPresent());
            assertThat(survey(window).heading().notes()).isEqualTo("kept");
        }
    }
}
