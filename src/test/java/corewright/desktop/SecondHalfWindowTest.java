package corewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.SurveyFolders;
import corewright.assessment.Assessor;
import corewright.damage.Region;
import corewright.desktop.state.EditLog;
import corewright.desktop.state.Step;
import corewright.desktop.state.SurveyOpener;
import corewright.desktop.work.WorkView;
import corewright.repair.plan.Hole;
import corewright.survey.MethodOverride;
import corewright.survey.Sound;
import corewright.survey.Survey;
import corewright.survey.WorkEntry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One window from the map to the log of the work, with the whole chain on the small test deck; opened once, for it takes its time. */
class SecondHalfWindowTest {
    private static Survey survey(OpenWindow window) {
        return window.desk.bench().survey().orElseThrow();
    }

    private static void click(OpenWindow window, String selector) {
        Button key = window.shown(selector, Button.class, b -> true);
        OpenWindow.doFx(key::fire); // some stand below the fold of the slip
    }

    @Test
    void fromTheMapToTheLogOfTheWork(@TempDir Path folder, @TempDir Path out) throws IOException {
        try (OpenWindow window = new OpenWindow(Assessor::assess, Optional.empty())) {
            OpenWindow.doFx(() -> window.desk.open(SurveyFolders.minimal(folder).path()));
            window.waitUntilCalculated();
            String loose = window.desk.bench().found().orElseThrow().plans().injections().stream()
                    .findFirst()
                    .orElseThrow()
                    .region();
            OpenWindow.doFx(() -> {
                window.desk.bench().sight().go(Step.REPAIR);
                window.desk.bench().select(loose);
            });

            anotherMethodTakesAReason(window);
            aHoleOutOfReachIsPutBackAndOneIsKept(window, loose);
            aFootIsPressed(window);
            threeLinesAreLogged(window, loose);
            theFillIsChecked(window, loose);
            Path file = OpenWindow.onFx(
                    () -> Objects.requireNonNull(window.desk.bench().log()).place());
            try (EditLog again = SurveyOpener.open(Files.copy(file, out.resolve("killed.gpkg")))) {
                assertThat(again.survey().log())
                        .as("what a window that is killed now leaves")
                        .hasSize(3);
            }
        }
    }

    private static void anotherMethodTakesAReason(OpenWindow window) {
        click(window, "#method-inject");
        click(window, "#decide-take");
        window.shown("#decide-problem", Label.class, l -> l.getText().startsWith("Another method needs one reason"));
        TextField reason = window.shown("#decide-reason", TextField.class, f -> true);
        TextField who = window.shown("#decide-who", TextField.class, f -> true);
        OpenWindow.doFx(() -> {
            reason.setText("the owner sells her in May");
            who.setText("J. Vestergaard");
        });
        click(window, "#decide-take");
        window.waitFor(
                "the decision", () -> survey(window).judgements().methods().size() == 1);
        MethodOverride decided = survey(window).judgements().methods().get(0);
        assertThat(decided.reason()).isEqualTo("the owner sells her in May");
        assertThat(decided.who()).isEqualTo("J. Vestergaard");
        window.waitUntilCalculated();
        theWholeDeckIsClimbed(window);
    }

    /** The steps of the whole deck are climbed by keys, and the region in hand stays. */
    private static void theWholeDeckIsClimbed(OpenWindow window) {
        Node stair = window.shown("#deck-stair", Node.class, n -> true);
        var deck = window.desk.half().decide().deck();
        OpenWindow.doFx(() -> {
            deck.ask(deck.low());
            stair.requestFocus();
        });
        String region = window.desk.bench().region().orElseThrow().id();
        String cheapest = OpenWindow.onFx(deck::mix);
        window.hand.type(KeyCode.PAGE_UP);
        assertThat(OpenWindow.<Boolean>onFx(
                        () -> deck.steps().size() == 1 || !deck.mix().equals(cheapest)))
                .isTrue();
        assertThat(window.desk.bench().region().orElseThrow().id()).isEqualTo(region);
        Node reason = window.desk.view().lookup("#deck-reason");
        Node under = reason.getParent();
        OpenWindow.doFx(() -> window.desk.bench().say("half through"));
        assertThat(reason.getParent())
                .as("a field that changes its parent loses the focus")
                .isSameAs(under);
    }

    private static void aHoleOutOfReachIsPutBackAndOneIsKept(OpenWindow window, String region) {
        OpenWindow.doFx(() -> window.desk.bench().select(region));
        click(window, "#plan-holes");
        var model = window.desk.half().holes().model();
        window.waitFor("the first trial", () -> model.now().isPresent());
        window.waitUntilCalculated();
        Hole hole = OpenWindow.onFx(() -> model.plan().orElseThrow().holes().stream()
                .filter(h -> h.fills() && h.drilled())
                .findFirst()
                .orElseThrow());
        Point2D at = window.onScreen(hole.spot().xMm(), hole.spot().yMm());
        double before = OpenWindow.onFx(() -> model.before().orElseThrow().covered());
        window.hand.drag(at, 0, 260);
        window.waitFor("less reached", () -> model.now().orElseThrow().covered() < before);
        window.shown("#holes-warning", Label.class, l -> true);
        click(window, "#hole-back");
        assertThat(OpenWindow.<Double>onFx(() -> model.now().orElseThrow().covered()))
                .isEqualTo(before);
        assertThat(survey(window).judgements().holes()).isEmpty();

        window.hand.type(KeyCode.V);
        window.shown("#hole-back", Button.class, b -> b.getText().equals("No vent here"));
        window.hand.type(KeyCode.ESCAPE);
        window.hand.clickOn(at);
        window.shown("#hole-lock", Button.class, b -> true);
        window.hand.type(KeyCode.LEFT);
        click(window, "#hole-keep");
        window.waitFor("the hole", () -> survey(window).judgements().holes().size() == 1);
        assertThat(survey(window).judgements().holes().get(0).spot().xMm())
                .isEqualTo(hole.spot().xMm() - 5);
        window.waitUntilCalculated();
    }

    private static void aFootIsPressed(OpenWindow window) {
        OpenWindow.doFx(() -> window.desk.bench().sight().go(Step.STIFFNESS));
        window.waitFor("the pictures", () -> window.desk.half().stiffness().settled());
        Node pictures = window.shown("#stiffness-pictures", Node.class, n -> true);
        Point2D middle = OpenWindow.onFx(() -> pictures.localToScreen(
                pictures.getBoundsInLocal().getWidth() / 4,
                pictures.getBoundsInLocal().getHeight() / 3));
        window.hand.clickOn(middle);
        window.waitFor(
                "the foot", () -> window.desk.half().stiffness().model().foot().isPresent());
        window.shown("#foot-lift", Button.class, b -> true);
    }

    private static void threeLinesAreLogged(OpenWindow window, String region) {
        OpenWindow.doFx(() -> {
            window.desk.bench().sight().go(Step.REPAIR);
            window.desk.bench().select(region);
        });
        click(window, "#work");
        window.shown("#work-view", WorkView.class, v -> true);
        window.waitFor("the frozen plan", () -> !survey(window).repairPlan().isNone());
        click(window, "#work-mix");
        window.hand.type(KeyCode.DIGIT3, KeyCode.DIGIT1, KeyCode.ENTER);
        window.waitFor("the first line", () -> survey(window).log().size() == 1);
        window.shown(".work-cup-words", Label.class, l -> l.getText().contains("g in"));
        for (int line = 2; line <= 3; line++) {
            int lines = line;
            WorkView work = window.shown("#work-view", WorkView.class, v -> true);
            OpenWindow.doFx(() -> work.take(0)); // the small deck may have one hole only
            window.hand.type(KeyCode.DIGIT1, KeyCode.L, KeyCode.ENTER);
            window.waitFor("line " + line, () -> survey(window).log().size() == lines);
        }
        WorkEntry last = survey(window).log().get(2);
        assertThat(last.leak()).isEqualTo("below");
        assertThat(last.grams()).isEqualTo(1);
        assertThat(survey(window).log().get(0).grams()).isEqualTo(31);
        click(window, "#work-leave");
        window.waitFor("the plan", () -> !window.desk.view().inTask());
    }

    private static void theFillIsChecked(OpenWindow window, String region) {
        OpenWindow.doFx(() -> window.desk.bench().select(region));
        click(window, "#fill-check");
        Region of = window.desk.bench().region().orElseThrow();
        Point2D middle = window.onScreen(of.label().getX(), of.label().getY());
        TextField minutes = window.shown("#fill-minutes", TextField.class, f -> true);
        OpenWindow.doFx(() -> minutes.setText("20"));
        window.hand.clickOn(middle);
        window.waitFor("warmth", () -> survey(window).readings().temperatures().size() == 1);
        ComboBox<?> what = window.shown("#fill-what", ComboBox.class, b -> true);
        OpenWindow.doFx(() -> what.getSelectionModel().selectLast());
        window.hand.clickOn(middle);
        window.waitFor("a tap", () -> survey(window).readings().curedTaps().size() == 1);
        assertThat(survey(window).readings().temperatures().get(0).afterS()).isEqualTo(1200);
        assertThat(survey(window).readings().curedTaps().get(0).sound()).isEqualTo(Sound.HOLLOW);

        window.waitUntilCalculated();
        window.shown(".sentence", Label.class, l -> l.getText().startsWith("S1, "));
    }
}
