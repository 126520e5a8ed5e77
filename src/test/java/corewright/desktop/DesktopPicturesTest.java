package corewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * Pictures of the window on the demo for the documents, written to {@code docs/pictures} with {@code
 * -Dpictures.update=true}; the whole chain on the demo takes about a minute.
 */
@EnabledIfSystemProperty(named = "pictures.update", matches = "true")
class DesktopPicturesTest {
    private static final Path TO = Path.of("docs/pictures");

    @Test
    void theDemoStandsInTheWindow() {
        try (OpenWindow window = new OpenWindow(Optional.empty())) {
            window.write(TO.resolve("desktop-start.png"));
            OpenWindow.doFx(() -> window.desk.open(Path.of("demo-data/quillwort")));
            window.waitUntilCalculated();
            OpenWindow.doFx(() -> window.desk.bench().select("R1"));
            window.waitUntilCalculated();
            window.write(TO.resolve("desktop-damage.png"));
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
            window.hand.clickOn("#start-walk");
            window.hand.clickOn("#key-6").clickOn("#key-8").clickOn("#tap-hollow");
            window.write(TO.resolve("desktop-walk.png"));
            assertThat(window.picture().getWidth()).isEqualTo(1440);
        }
    }
}
