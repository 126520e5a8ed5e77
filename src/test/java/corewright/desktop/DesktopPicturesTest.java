package corewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.assessment.Assessor;
import corewright.desktop.state.Appearance;
import corewright.desktop.state.Step;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/**
 * Pictures of the window on the demo for the documents, written to {@code docs/pictures} with {@code
 * -Dpictures.update=true}; the whole chain on the demo takes about a minute.
 */
@EnabledIfSystemProperty(named = "pictures.update", matches = "true")
class DesktopPicturesTest {
    private static final Path TO = Path.of("docs/pictures");

    @Test
    void theDemoStandsInTheWindow(@TempDir Path folder) throws IOException {
        try (Stream<Path> files = Files.list(Path.of("demo-data/quillwort"))) {
            for (Path file : files.toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
        try (OpenWindow window = new OpenWindow(Assessor::assess, Optional.empty())) {
            window.write(TO.resolve("desktop-start.png"));
            OpenWindow.doFx(() -> window.desk.open(folder));
            window.waitUntilCalculated();
            OpenWindow.doFx(() -> window.desk.bench().select("R1"));
            window.waitUntilCalculated();
            window.write(TO.resolve("desktop-damage.png"));
            aReadingInHand(window);
            OpenWindow.doFx(window.desk::showInsight);
            window.waitFor(
                    "the pictures of the readings", () -> window.desk.view().inTask());
            window.write(TO.resolve("desktop-insight.png"));
            OpenWindow.doFx(() -> window.desk.view().task(null));
            OpenWindow.doFx(window.desk::setUp);
            window.shown("#setup-notes", javafx.scene.control.TextArea.class, a -> true);
            window.write(TO.resolve("desktop-setup.png"));
            OpenWindow.doFx(() -> window.desk.view().task(null));
            OpenWindow.doFx(() -> window.desk.bench().hold(false));
            secondHalf(window);
            OpenWindow.doFx(() -> {
                window.desk.bench().sight().go(Step.DAMAGE);
                window.desk.bench().sight().appear(Appearance.NIGHT);
                window.desk.bench().select("R3");
            });
            window.waitUntilCalculated();
            window.write(TO.resolve("desktop-damage-night.png"));
            OpenWindow.doFx(() -> {
                window.desk.bench().sight().appear(Appearance.DAY);
                window.desk.bench().select("");
                window.desk.walk();
            });
            window.click("#start-walk");
            for (String value : List.of("15", "16", "18", "15", "37", "49", "80", "15", "15", "12", "19")) {
                window.hand.write(value).type(KeyCode.ENTER);
            }
            window.hand.write("68").type(KeyCode.H);
            window.write(TO.resolve("desktop-walk.png"));
            assertThat(window.picture().getWidth()).isEqualTo(1440);
        }
    }

    /** One that is doubted, so that the slip says why. */
    private static void aReadingInHand(OpenWindow window) {
        OpenWindow.doFx(() -> {
            window.desk.bench().sight().go(Step.READINGS);
            window.desk.bench().findings().stream()
                    .filter(f -> f.doubted().isPresent() && f.about().face().equals("boat deck"))
                    .map(f -> f.about().spot())
                    .findFirst()
                    .ifPresent(window.desk::openReading);
        });
        window.waitUntilCalculated();
        window.write(TO.resolve("desktop-reading.png"));
        OpenWindow.doFx(() -> {
            window.desk.view().holding().letGo();
            window.desk.bench().sight().go(Step.DAMAGE);
            window.desk.bench().select("R1");
        });
        window.waitUntilCalculated();
    }

    private static void secondHalf(OpenWindow window) {
        OpenWindow.doFx(() -> {
            window.desk.bench().sight().go(Step.REPAIR);
            window.desk.bench().select("R1");
        });
        window.waitUntilCalculated();
        window.write(TO.resolve("desktop-decide.png"));
        OpenWindow.doFx(() -> window.desk.half().holes().open());
        window.waitFor(
                "the holes tried",
                () -> window.desk.half().holes().model().now().isPresent());
        window.waitUntilCalculated();
        window.write(TO.resolve("desktop-holes.png"));
        OpenWindow.doFx(() -> window.desk.bench().sight().go(Step.STIFFNESS));
        window.waitFor("the pictures", () -> window.desk.half().stiffness().settled());
        window.write(TO.resolve("desktop-stiffness.png"));
        OpenWindow.doFx(() -> window.desk.bench().sight().go(Step.PAPERS));
        window.waitFor(
                "the page", () -> window.desk.half().papers().model().page().isPresent());
        window.write(TO.resolve("desktop-papers.png"));
        OpenWindow.doFx(() -> window.desk.half().showOwner());
        window.waitFor("the owner's page", () -> window.desk.view().lookup("#owner-pane") != null);
        window.write(TO.resolve("desktop-owner.png"));
        OpenWindow.doFx(() -> {
            window.desk.view().task(null);
            window.desk.bench().sight().go(Step.REPAIR);
            window.desk.bench().select("R1");
            window.desk.half().work();
        });
        window.waitFor(
                "the frozen plan",
                () -> !window.desk.bench().survey().orElseThrow().repairPlan().isNone());
        window.waitUntilCalculated();
        window.write(TO.resolve("desktop-work.png"));
        OpenWindow.doFx(() -> {
            window.desk.view().task(null);
            window.desk.bench().undo();
        });
        window.waitFor(
                "the plan taken back",
                () -> window.desk.bench().survey().orElseThrow().repairPlan().isNone());
        window.waitUntilCalculated();
    }
}
