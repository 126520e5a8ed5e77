package corewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.desktop.state.Step;
import corewright.desktop.state.SurveyOpener;
import corewright.survey.CoreState;
import corewright.survey.Feature;
import corewright.survey.Moisture;
import corewright.survey.Probe;
import corewright.survey.ReadingOverride;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Readings and features touched, corrected, judged, noted and taken away; nothing is calculated here. */
class TouchWindowTest {
    private static Survey survey(OpenWindow window) {
        return window.desk.bench().survey().orElseThrow();
    }

    private static void undo(OpenWindow window) {
        window.hand.control(KeyCode.Z);
    }

    private static Moisture reading(OpenWindow window, String id) {
        return survey(window).readings().moisture().stream()
                .filter(m -> m.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aReadingIsCorrectedSetAsideAndLeftAgain(@TempDir Path folder) throws IOException {
        Moisture before;
        Path file;
        try (OpenWindow window = OpenWindow.bare(folder)) {
            window.click("#step-readings");
            before = survey(window).readings().moisture().get(7);
            String id = before.id();
            window.touch(before.spot().xMm(), before.spot().yMm());
            window.shown(".slip-title", Label.class, l -> l.getText().equals("Reading " + id));

            window.overwrite("#form-value", "many");
            window.shown("#form-problem", Label.class, l -> l.getText().startsWith("The reading reads \"many\""));
            window.overwrite("#form-value", "41,5");
            window.waitFor("the value", () -> reading(window, id).value() == 41.5);
            undo(window);
            window.waitFor("undo", () -> reading(window, id).equals(before));
            window.shown("#form-value", TextField.class, f -> !f.getText().equals("41,5"));
            window.click("#redo");
            window.waitFor("redo", () -> reading(window, id).value() == 41.5);

            window.click("#judge-aside");
            assertThat(survey(window).judgements().readings())
                    .as("without a reason nothing is set aside")
                    .isEmpty();
            window.click("#judge-why").write("the foot slipped");
            window.click("#judge-aside");
            window.waitFor(
                    "a judgement", () -> !survey(window).judgements().readings().isEmpty());
            window.shown("#judge-none", javafx.scene.control.Button.class, b -> true);
            file = OpenWindow.onFx(() -> Objects.requireNonNull(
                    Objects.requireNonNull(window.desk.bench().log()).place()));
            window.waitUntilCalculated();
        }
        try (var log = SurveyOpener.open(file)) {
            assertThat(log.survey().readings().moisture())
                    .anyMatch(m -> m.id().equals(before.id()) && m.value() == 41.5);
            assertThat(log.survey().judgements().readings())
                    .singleElement()
                    .isEqualTo(new ReadingOverride(
                            before.key().kind(),
                            before.id(),
                            before.spot(),
                            ReadingOverride.Trust.SET_ASIDE,
                            "the foot slipped"));
        }
    }

    @Test
    void aPilotHoleIsNotedAndAFittingEditedAndTakenAway(@TempDir Path folder) {
        try (OpenWindow window = OpenWindow.bare(folder)) {
            window.click("#step-readings");
            window.click("#note");
            window.overwrite("#form-depth", "4.5");
            window.choose("#form-core", "rotted");
            window.touch(620, 310);
            window.waitFor(
                    "a pilot hole", () -> survey(window).readings().probes().size() == 4);
            Probe noted = survey(window).readings().probes().get(3);
            assertThat(noted.id()).isEqualTo("HP1");
            assertThat(noted.voidDepthMm()).isEqualTo(4.5);
            assertThat(noted.coreState()).isEqualTo(CoreState.ROTTED);
            assertThat(noted.spot().xMm()).isBetween(610.0, 630.0);
            window.click("#hand-place").write("A s1").type(KeyCode.ENTER);
            window.shown("#hand-problem", Label.class, l -> l.getText().startsWith("The depth reads \"\""));
            window.click("#hand-done");

            window.click("#step-plan");
            window.touch(450, 300);
            window.shown(".slip-title", Label.class, l -> l.getText().equals("Cleat"));
            window.overwrite("#form-keepout", "85");
            window.waitFor("the keep-out", () -> cleat(window).keepoutMm() == 85);
            window.choose("#form-load", "no");
            window.waitFor("no load", () -> !cleat(window).loadBearing());
            window.waitUntilCalculated();
            window.click("#take-away");
            window.waitFor(
                    "no cleat", () -> survey(window).faces().get(0).features().isEmpty());
            undo(window);
            window.waitFor(
                    "undo", () -> !survey(window).faces().get(0).features().isEmpty());
            assertThat(cleat(window).keepoutMm()).isEqualTo(85);
            window.waitUntilCalculated();
        }
    }

    private static Feature.Fitting cleat(OpenWindow window) {
        return (Feature.Fitting) survey(window).faces().get(0).features().get(0);
    }

    @Test
    void whatIsFoundStaysMarkedUntilTheNextDeed(@TempDir Path folder) {
        try (OpenWindow window = OpenWindow.bare(folder)) {
            window.hand.control(KeyCode.F);
            window.hand.write("cleat").type(KeyCode.ENTER);
            window.waitFor("a mark", () -> window.desk.bench().sight().mark().isPresent());
            assertThat(window.desk.bench().sight().mark().orElseThrow().spot().xMm())
                    .isEqualTo(450);
            OpenWindow.doFx(() -> window.desk.bench().sight().go(Step.READINGS));
            assertThat(window.desk.bench().sight().mark()).isPresent();
            window.touch(30, 30);
            window.waitFor("no mark", () -> window.desk.bench().sight().mark().isEmpty());
            window.waitUntilCalculated();
        }
    }
}
