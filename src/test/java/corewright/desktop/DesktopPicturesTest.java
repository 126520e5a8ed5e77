package corewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.assessment.Assessor;
import corewright.desktop.state.Appearance;
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
            OpenWindow.doFx(() -> {
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
}
