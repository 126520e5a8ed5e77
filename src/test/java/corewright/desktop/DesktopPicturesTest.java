package corewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Pictures of the window on the demo for the documents. They go to {@code target/pictures}; with {@code
 * -Dpictures.update=true} to {@code docs/pictures}.
 */
class DesktopPicturesTest {
    private static final Path TO = Path.of(Boolean.getBoolean("pictures.update") ? "docs/pictures" : "target/pictures");

    @Test
    void theDemoStandsInTheWindow() {
        try (OpenWindow window = new OpenWindow(Workbench.LiveMaps.NONE, Optional.empty())) {
            window.write(TO.resolve("desktop-start.png"));
            OpenWindow.doFx(() -> window.desk.open(Path.of("demo-data/quillwort")));
            window.waitUntilCalculated();
            OpenWindow.doFx(() -> window.desk.bench().select("R1"));
            window.waitUntilCalculated();
            window.write(TO.resolve("desktop-damage.png"));
            System.err.println("painted ms " + window.desk.view().plan().paintedMs());
            OpenWindow.doFx(() -> {
                window.desk.bench().sight().appear(Appearance.NIGHT);
                window.desk.bench().select("R3");
            });
            window.waitUntilCalculated();
            window.write(TO.resolve("desktop-damage-night.png"));
            System.err.println("painted ms " + window.desk.view().plan().paintedMs());
            assertThat(window.picture().getWidth()).isEqualTo(1440);
        }
    }
}
