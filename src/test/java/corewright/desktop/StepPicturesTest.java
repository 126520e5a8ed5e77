package corewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.assessment.Assessor;
import corewright.desktop.state.Step;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every step of the window on the demo at three sizes, written to {@code target/steps} with {@code -Dpictures.steps=true}, to
 * be looked at; 200 % is a screen of 1920 x 1080 with half as many pixels of the window.
 */
@EnabledIfSystemProperty(named = "pictures.steps", matches = "true")
class StepPicturesTest {
    private static final Path TO = Path.of("target/steps");

    private record Size(String name, int width, int height) {}

    private static final List<Size> SIZES =
            List.of(new Size("1440", 1440, 900), new Size("1024", 1024, 768), new Size("200", 960, 540));

    @Test
    void everyStepAtEverySize(@TempDir Path folder) throws IOException {
        try (Stream<Path> files = Files.list(Path.of("demo-data/quillwort"))) {
            for (Path file : files.toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
        try (OpenWindow window = new OpenWindow(Assessor::assess, Optional.empty())) {
            OpenWindow.doFx(() -> window.desk.open(folder));
            window.waitUntilCalculated();
            for (Size size : SIZES) {
                window.resize(size.width, size.height);
                for (Step step : Step.values()) {
                    OpenWindow.doFx(() -> window.desk.bench().sight().go(step));
                    window.waitUntilCalculated();
                    window.write(TO.resolve(step.name().toLowerCase(Locale.ROOT) + "-" + size.name + ".png"));
                }
            }
            assertThat(TO.resolve("papers-200.png")).exists();
        }
    }
}
