package corewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.assessment.Assessor;
import corewright.desktop.state.Appearance;
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

    /** Until the page or the pictures of a step are painted. */
    private static void settle(OpenWindow window, Step step) {
        if (step == Step.PAPERS) {
            window.waitFor(
                    "the page", () -> window.desk.half().papers().model().page().isPresent());
        } else if (step == Step.STIFFNESS) {
            window.waitFor("the pictures", () -> window.desk.half().stiffness().settled());
        }
    }

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
                    settle(window, step);
                    window.write(TO.resolve(step.name().toLowerCase(Locale.ROOT) + "-" + size.name + ".png"));
                }
                OpenWindow.doFx(() -> {
                    window.desk.bench().sight().go(Step.REPAIR);
                    window.desk.bench().select("R1");
                });
                window.waitUntilCalculated();
                window.write(TO.resolve("decide-" + size.name + ".png"));
                OpenWindow.doFx(() -> window.desk.half().holes().open());
                window.waitFor(
                        "the holes tried",
                        () -> window.desk.half().holes().model().now().isPresent());
                window.waitUntilCalculated();
                window.write(TO.resolve("holes-" + size.name + ".png"));
                OpenWindow.doFx(() -> window.desk.half().work());
                window.waitUntilCalculated();
                window.write(TO.resolve("work-" + size.name + ".png"));
                OpenWindow.doFx(() -> window.desk.view().task(null));
                OpenWindow.doFx(() -> window.desk.half().showOwner());
                window.waitFor("the owner's page", () -> window.desk.view().lookup("#owner-pane") != null);
                window.write(TO.resolve("owner-" + size.name + ".png"));
                OpenWindow.doFx(() -> {
                    window.desk.view().task(null);
                    window.desk.bench().select("");
                });
                for (Appearance appearance : List.of(Appearance.NIGHT, Appearance.SUNLIGHT)) {
                    OpenWindow.doFx(() -> window.desk.bench().sight().appear(appearance));
                    for (Step step : List.of(Step.DAMAGE, Step.REPAIR, Step.STIFFNESS)) {
                        OpenWindow.doFx(() -> window.desk.bench().sight().go(step));
                        OpenWindow.doFx(() -> window.desk.bench().select(step == Step.REPAIR ? "R1" : ""));
                        window.waitUntilCalculated();
                        settle(window, step);
                        window.write(TO.resolve(
                                (step + "-" + appearance + "-").toLowerCase(Locale.ROOT) + size.name + ".png"));
                    }
                }
                OpenWindow.doFx(() -> window.desk.bench().select(""));
                OpenWindow.doFx(() -> window.desk.bench().sight().appear(Appearance.DAY));
            }
            assertThat(TO.resolve("papers-200.png")).exists();
        }
    }
}
