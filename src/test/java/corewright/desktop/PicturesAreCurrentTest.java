package corewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.SurveyFolders;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import javafx.scene.Node;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The pictures in {@code docs/pictures} are taken by {@link DesktopPicturesTest} on wish; this says when they have become old: when
 * the window has gained or lost a control since. {@code docs/pictures/desktop-controls.txt} lists those that were there; it is
 * written anew with {@code -Dpictures.update=true}.
 */
class PicturesAreCurrentTest {
    private static final Path LIST = Path.of("docs/pictures/desktop-controls.txt");

    @Test
    void theWindowStillHasTheControlsOfItsPictures(@TempDir Path folder) throws IOException {
        try (OpenWindow window = new OpenWindow(MapChain::assess, Optional.empty())) {
            OpenWindow.doFx(() -> window.desk.open(SurveyFolders.minimal(folder).path()));
            window.waitUntilCalculated();
            String controls = OpenWindow.onFx(() -> controls(window.desk.view()));
            if (Boolean.getBoolean("pictures.update")) {
                Files.writeString(LIST, controls);
            }

            assertThat(controls).isEqualTo(Files.readString(LIST));
            for (String name : List.of(
                    "start",
                    "damage",
                    "damage-night",
                    "decide",
                    "holes",
                    "insight",
                    "owner",
                    "papers",
                    "reading",
                    "setup",
                    "stiffness",
                    "walk",
                    "work")) {
                assertThat(Path.of("docs/pictures/desktop-" + name + ".png")).isNotEmptyFile();
            }
        }
    }

    private static String controls(Node root) {
        return root.lookupAll("*").stream()
                .map(Node::getId)
                .filter(id -> id != null && !id.isEmpty())
                .collect(Collectors.toCollection(TreeSet::new))
                .stream()
                .collect(Collectors.joining("\n", "", "\n"));
    }
}
