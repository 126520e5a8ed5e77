package corewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.survey.Meter;
import corewright.survey.Moisture;
import corewright.survey.Survey;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import javafx.scene.control.Label;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Nothing typed is lost while what was typed before is still being written: a slow disk is played by holding the line of edits, so
 * that the echo of one comes in the middle of the next.
 */
class TypingWindowTest {
    private static Survey survey(OpenWindow window) {
        return window.desk.bench().survey().orElseThrow();
    }

    private static Meter meter(OpenWindow window) {
        return survey(window).meters().get(0);
    }

    /** Holds what is edited from now on, until the latch is let go. */
    private static CountDownLatch slowDisk(OpenWindow window) {
        CountDownLatch latch = new CountDownLatch(1);
        OpenWindow.doFx(() -> window.desk
                .bench()
                .jobs()
                .inOrder(
                        () -> {
                            latch.await();
                            return true;
                        },
                        done -> {},
                        e -> {}));
        return latch;
    }

    /** A deed of the hand right behind the echo, before the window is laid out anew. */
    private static void atTheEcho(OpenWindow window, Runnable deed) {
        boolean[] done = {false};
        Survey before = survey(window);
        OpenWindow.doFx(() -> window.desk.bench().listen(() -> {
            if (!done[0] && survey(window) != before) {
                done[0] = true;
                deed.run();
            }
        }));
    }

    private static String text(OpenWindow window, String field) {
        return window.shown(field, TextInputControl.class, f -> true).getText();
    }

    @Test
    void theSetUpLosesNothing(@TempDir Path folder) {
        try (OpenWindow window = OpenWindow.bare(folder)) {
            OpenWindow.doFx(window.desk::setUp);
            theNextValueIsTypedWhileTheOneBeforeIsWritten(window);
            notesAndWhatWillNotDoStayAsTyped(window);
        }
    }

    private static void theNextValueIsTypedWhileTheOneBeforeIsWritten(OpenWindow window) {
        CountDownLatch disk = slowDisk(window);
        window.overwrite("#meter-0-dry", "9");
        window.fill("#meter-0-wet", "3").type(KeyCode.HOME);
        atTheEcho(window, () -> window.hand.key("4"));
        disk.countDown();
        window.waitFor("dry", () -> Double.valueOf(9).equals(meter(window).dry()));
        window.hand.type(KeyCode.ENTER);
        window.waitFor("wet", () -> Double.valueOf(43).equals(meter(window).wet()));
    }

    private static void notesAndWhatWillNotDoStayAsTyped(OpenWindow window) {
        CountDownLatch disk = slowDisk(window);
        window.overwrite("#meter-0-dry", "99");
        window.overwrite("#survey-0-vessel", "Tern");
        window.click("#setup-notes").write("rain ");
        disk.countDown();
        window.waitFor("the vessel", () -> survey(window).heading().vessel().equals("Tern"));
        window.hand.write("at noon");
        assertThat(text(window, "#setup-notes")).isEqualTo("rain at noon");
        assertThat(text(window, "#meter-0-dry")).isEqualTo("99");
        window.click("#setup-leave");
        window.waitFor("notes", () -> survey(window).heading().notes().equals("rain at noon"));
    }

    @Test
    void theSlipLosesNothing(@TempDir Path folder) {
        try (OpenWindow window = OpenWindow.bare(folder)) {
            window.click("#step-readings");
            aReadingIsTypedOnWhileItIsWritten(window);
            window.click("#let-go");
            oneTapIsNotedAfterAnotherByTypedPlaces(window);
        }
    }

    private static void aReadingIsTypedOnWhileItIsWritten(OpenWindow window) {
        Moisture first = survey(window).readings().moisture().get(7);
        Moisture next = survey(window).readings().moisture().get(8);
        window.touch(first.spot().xMm(), first.spot().yMm());
        CountDownLatch disk = slowDisk(window);
        window.overwrite("#form-value", "41,5");
        window.hand.write("2");
        disk.countDown();
        window.waitFor("the value", () -> value(window, first) == 41.5);
        assertThat(text(window, "#form-value")).isEqualTo("41,52");
        window.hand.type(KeyCode.ENTER);
        window.waitFor("what was added", () -> value(window, first) == 41.52);

        window.overwrite("#form-value", "many");
        window.shown("#form-problem", Label.class, l -> l.getText().startsWith("The reading reads \"many\""));
        window.touch(next.spot().xMm(), next.spot().yMm());
        window.shown(".slip-title", Label.class, l -> l.getText().equals("Reading " + next.id()));
        assertThat(Double.parseDouble(text(window, "#form-value"))).isEqualTo(next.value());
    }

    private static double value(OpenWindow window, Moisture reading) {
        return survey(window).readings().moisture().stream()
                .filter(m -> m.id().equals(reading.id()))
                .findFirst()
                .orElseThrow()
                .value();
    }

    private static void oneTapIsNotedAfterAnotherByTypedPlaces(OpenWindow window) {
        int before = survey(window).readings().taps().size();
        window.click("#note");
        window.choose("#hand-kind", "tap");
        window.choose("#form-sound", "hollow");
        window.overwrite("#hand-place", "700, 210");
        window.hand.write("720, 215").type(KeyCode.ENTER);
        window.waitFor("two taps", () -> survey(window).readings().taps().size() == before + 2);
    }
}
