package corewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.Assessments;
import corewright.SurveyFolders;
import corewright.assessment.Ages;
import corewright.assessment.Assessed;
import corewright.assessment.Partial;
import corewright.desktop.sketch.Sketch;
import corewright.desktop.state.Chain;
import corewright.desktop.state.Step;
import corewright.survey.Edit;
import corewright.survey.Moisture;
import corewright.survey.Origin;
import corewright.survey.Part;
import corewright.survey.Photo;
import corewright.survey.Readings;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.TableCell;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Real windows without a screen, used by a hand on mouse and keys. */
class WindowTest {
    private static OpenWindow on(Path folder, Optional<Path> chosen) {
        return on(folder, chosen, MapChain::assess);
    }

    /** Nothing is calculated: for what a window does without it, in no time. */
    private static OpenWindow bare(Path folder) {
        return on(
                folder,
                Optional.empty(),
                (survey, findings, earlier, progress) ->
                        new Assessed(Assessments.fresh(Partial.bare(survey, findings)), earlier));
    }

    private static OpenWindow on(Path folder, Optional<Path> chosen, Chain chain) {
        OpenWindow window = new OpenWindow(chain, chosen);
        OpenWindow.doFx(() -> window.desk.open(SurveyFolders.minimal(folder).path()));
        window.waitUntilCalculated();
        return window;
    }

    private static Survey survey(OpenWindow window) {
        return window.desk.bench().survey().orElseThrow();
    }

    private static List<Moisture> moisture(OpenWindow window) {
        return survey(window).readings().moisture();
    }

    private static void waitForReadings(OpenWindow window, int number) {
        window.waitFor(number + " readings", () -> moisture(window).size() == number);
    }

    private static double area(OpenWindow window) {
        return survey(window).face("foredeck").outline().getArea();
    }

    @Test
    void aCsvIsBroughtInWithOneRowMended(@TempDir Path folder) throws IOException {
        Path csv = Files.writeString(
                folder.resolve("meter.csv"), "aft;stbd;reading\n100;150;12,5\n200;150;4l,5\n300;150;14\n");
        try (OpenWindow window = on(folder, Optional.of(csv))) {
            int before = moisture(window).size();
            window.click("#step-readings");
            window.click("#import");
            assertThat(window.shown("#import-effect", Label.class, l -> true).getText())
                    .isEqualTo(
                            "2 moisture readings from 0.10 to 0.30 m aft and 0.15 to 0.15 m to starboard, values 12.5"
                                    + " to 14. 1 row cannot be read and can be mended here.");

            window.doubleClick("#import-table .table-cell", TableCell.class, c -> "4l,5".equals(c.getText()));
            window.shown("#import-table .text-field", TextField.class, TextField::isFocused);
            window.hand.type(KeyCode.DIGIT4, KeyCode.DIGIT1); // no Enter: the key beside the table takes what is typed
            window.click("#import-take", Button.class, b -> b.getText().equals("Take 2 rows, leave 1 out"));
            waitForReadings(window, before + 3);

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
            window.click("#step-readings");
            window.click("#walk");
            window.overwrite("#spacing", "140");
            for (int i = 0; i < 10; i++) {
                window.hand.type(KeyCode.DIGIT1, KeyCode.DIGIT2).type(KeyCode.S).type(KeyCode.ENTER);
            }
            waitForReadings(window, before.moisture().size() + 10);
            assertThat(survey(window).readings().taps()).hasSize(before.taps().size() + 10);

            window.click("#leave-walk");
            window.hand.control(KeyCode.Z);
            waitForReadings(window, before.moisture().size() + 9);
            window.waitFor(
                    "what was taken back", () -> window.desk.bench().message().startsWith("Taken back: reading at "));
            window.shown("#redo", Button.class, b -> b.getText().startsWith("Redo: reading at "));

            window.click("#redo");
            waitForReadings(window, before.moisture().size() + 10);
            assertThat(Files.exists(folder.resolve("survey.gpkg")))
                    .as("the folder became a file beside it at the first edit")
                    .isTrue();
            window.waitUntilCalculated();
        }
    }

    @Test
    void anOutlineIsDrawnAndTakenBack(@TempDir Path folder) {
        try (OpenWindow window = on(folder, Optional.empty())) {
            double before = area(window);
            window.click("#step-plan");
            window.click("#draw");
            window.choose("#sketch-tool", Sketch.Tool.OUTLINE.ordinal());
            for (String point : List.of("0, 0", "1000, -50", "1000, 700", "0, 600")) {
                window.click("#sketch-point").write(point).type(KeyCode.ENTER);
            }
            window.click("#sketch-finish");
            window.waitFor("the outline", () -> area(window) != before);
            // half the sum of the parallel sides, 600 and 750, times 1000
            assertThat(area(window)).isEqualTo(675_000);

            window.click("#undo");
            window.waitFor("undo", () -> area(window) == before);
            window.click("#sketch-done");
            window.waitUntilCalculated();
        }
    }

    private static @Nullable Double dry(OpenWindow window) {
        return survey(window).meters().get(0).dry();
    }

    @Test
    void aMeterIsSetAndABadValueIsSaid(@TempDir Path folder) {
        try (OpenWindow window = bare(folder)) {
            double before = Objects.requireNonNull(dry(window));
            window.click("#step-readings");
            window.click("#setup");
            window.overwrite("#meter-0-dry", "99");
            window.shown("#setup-problem", Label.class, l -> l.getText().startsWith("Dry is below wet: 99 "));
            assertThat(dry(window)).isEqualTo(before);

            window.overwrite("#meter-0-dry", "9");
            window.waitFor("the dry reading", () -> Double.valueOf(9).equals(dry(window)));
            window.waitFor("no complaint", () -> ((Label) window.desk.view().lookup("#setup-problem"))
                    .getText()
                    .isEmpty());
            window.hand.control(KeyCode.Z);
            window.waitFor("undo", () -> Double.valueOf(before).equals(dry(window)));
            window.shown("#meter-0-dry", TextField.class, f -> Double.parseDouble(f.getText()) == before);

            window.click("#setup-leave");
            window.waitUntilCalculated();
        }
    }

    @Test
    void afterAChangeTheSlipSaysWhatIsOfBeforeUntilItIsFresh(@TempDir Path folder) {
        try (OpenWindow window = bare(folder)) {
            OpenWindow.doFx(() -> window.desk.bench().hold(true));
            OpenWindow.doFx(() -> window.desk.bench().edit("reading", s -> {
                Moisture first = s.readings().moisture().get(0);
                return Edit.remove(s, Part.MOISTURE, first);
            }));
            window.shown("#slip-before", Label.class, l -> l.getText().contains(Ages.WORDS));
            window.shown("#readout", Label.class, l -> l.getText().contains(Ages.WORDS));

            OpenWindow.doFx(() -> window.desk.bench().hold(false));
            window.waitUntilCalculated();
            window.waitFor("a slip that is fresh", () -> window.desk.view().lookup("#slip-before") == null);
        }
    }

    @Test
    void theWalkSpeaksInFeetAndWhatIsStoredStays(@TempDir Path folder) {
        try (OpenWindow window = bare(folder)) {
            Survey before = survey(window);
            window.click("#units");
            window.shown("#units", Button.class, b -> b.getText().equals("inch"));
            window.waitFor("the plan", () -> window.desk.view().plan().settled());
            window.click("#step-readings");
            window.click("#walk");
            window.click("#start-walk");
            window.shown("#walk-measured", Label.class, l -> l.getText().contains(" ft aft"));
            window.click("#leave-walk");
            window.waitFor("the plan again", () -> !window.desk.view().inTask());

            assertThat(survey(window)).isEqualTo(before);
            window.waitUntilCalculated();
        }
    }

    @Test
    void everyControlHasANameInEveryStep(@TempDir Path folder) {
        try (OpenWindow window = bare(folder)) {
            for (Step step : Step.values()) {
                OpenWindow.doFx(() -> window.desk.bench().sight().go(step));
                assertThat(nameless(window)).as(step.word()).isEmpty();
            }
            OpenWindow.doFx(window.desk::draw);
            assertThat(nameless(window)).as("drawing").isEmpty();
            OpenWindow.doFx(window.desk::setUp);
            assertThat(nameless(window)).as("setting up").isEmpty();
            OpenWindow.doFx(window.desk::startNew);
            assertThat(nameless(window)).as("a new survey").isEmpty();
            OpenWindow.doFx(window.desk::walk);
            assertThat(nameless(window)).as("a walk").isEmpty();
        }
    }

    /** What a screen reader could not name. */
    private static List<String> nameless(OpenWindow window) {
        return OpenWindow.onFx(() -> {
            window.desk.view().applyCss();
            window.desk.view().layout();
            return window.desk.view().lookupAll("*").stream()
                    .filter(n -> n instanceof ButtonBase
                            || n instanceof TextInputControl
                            || n instanceof ComboBox
                            || n instanceof Slider)
                    .filter(n -> !n.getStyleClass().contains("increment-button")
                            && !n.getStyleClass().contains("decrement-button")
                            && !(n.getParent() instanceof ComboBox))
                    .filter(n -> n.getAccessibleText() == null
                            || n.getAccessibleText().isEmpty())
                    .filter(n -> !(n instanceof ButtonBase b)
                            || b.getText() == null
                            || b.getText().isEmpty())
                    .map(Object::toString)
                    .toList();
        });
    }

    /** The slip is shown anew whenever a calculation tells how far it is. */
    @Test
    void wordsTypedForAPhotographStayWhileTheWindowCalculates(@TempDir Path folder) {
        Photo photo = new Photo(new Origin("window", 0), "photos/x.png", new Spot("foredeck", 300, 200), "");
        try (OpenWindow window = bare(folder)) {
            OpenWindow.doFx(() -> window.desk.bench().edit("photograph", s -> Edit.add(s, Part.PHOTOS, photo)));
            window.waitFor("the photograph", () -> !survey(window).photos().isEmpty());
            window.waitUntilCalculated();
            window.touch(300, 200);
            window.click("#photo-caption");
            window.hand.write("cra");
            OpenWindow.doFx(() -> window.desk.bench().say("half through"));
            window.hand.write("ck");

            assertThat(window.shown("#photo-caption", TextField.class, f -> true)
                            .getText())
                    .isEqualTo("crack");
        }
    }
}
