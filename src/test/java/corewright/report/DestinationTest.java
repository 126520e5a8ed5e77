package corewright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Outputs appear whole or not at all, and never at somebody else's cost. */
class DestinationTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    Path place;

    @Test
    void whatWasNotFinishedLeavesNothingBehind() throws IOException {
        Path folder = place.resolve("not/there/yet/out");

        try (Destination destination = new Destination(folder)) {
            Files.writeString(destination.work().resolve("holes.csv"), "half");
        }

        assertThat(all()).isEmpty();
    }

    @Test
    void aFinishedFolderStandsAlone() throws IOException {
        Path folder = place.resolve("not/there/out");

        run(folder, "new");

        assertThat(all()).containsExactly("not", "not/there", "not/there/out", "not/there/out/summary.json");
    }

    @Test
    void anEarlierRunGivesWayAndWhatIsNotOursStays() throws IOException {
        Path folder = place.resolve("out");
        run(folder, "old");
        Files.writeString(folder.resolve("holes.csv"), "stale");
        Files.writeString(folder.resolve("my notes.txt"), "mine");

        run(folder, "new");

        assertThat(all()).containsExactly("out", "out/my notes.txt", "out/summary.json");
        assertThat(folder.resolve("summary.json")).hasContent("new");
    }

    @Test
    void anEmptyFolderIsTaken() throws IOException {
        Path folder = Files.createDirectory(place.resolve("out"));

        run(folder, "new");

        assertThat(all()).containsExactly("out", "out/summary.json");
    }

    @Test
    void aFolderThatIsNotOursIsRefused() throws IOException {
        Path folder = Files.createDirectory(place.resolve("out"));
        Files.writeString(folder.resolve("letter.txt"), "mine");

        assertThatThrownBy(() -> new Destination(folder))
                .isInstanceOf(IOException.class)
                .hasMessage(
                        folder + ": holds other things than outputs of an earlier run; name an empty or a new folder");
        assertThat(all()).containsExactly("out", "out/letter.txt");
    }

    @Test
    void aFileIsRefused() throws IOException {
        Path file = Files.writeString(place.resolve("out"), "mine");

        assertThatThrownBy(() -> new Destination(file))
                .hasMessage(file + ": is a file, expected a folder for the outputs");
    }

    private static void run(Path folder, String summary) throws IOException {
        try (Destination destination = new Destination(folder)) {
            Files.writeString(destination.work().resolve(Destination.MARKER), summary);
            destination.finish();
        }
    }

    private List<String> all() throws IOException {
        try (Stream<Path> paths = Files.walk(place)) {
            return paths.filter(p -> !p.equals(place))
                    .map(p -> place.relativize(p).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }
}
