package corewright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
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

    /** A second run over a folder with a work log must not find its own table in the way. */
    @Test
    void whatOnlySomeRunsWriteIsOursToo() throws IOException {
        Path folder = place.resolve("out");
        run(folder, "old");
        for (String name : List.of("work-done.csv", "work-left.csv", "fill-check.csv", "second-shots.csv")) {
            Files.writeString(folder.resolve(name), "stale");
        }

        try (Destination destination = new Destination(folder)) {
            Files.writeString(destination.work().resolve("summary.json"), "new");
            Files.writeString(destination.work().resolve("work-done.csv"), "new");
            destination.finish();
        }

        assertThat(all()).containsExactly("out", "out/summary.json", "out/work-done.csv");
        assertThat(folder.resolve("work-done.csv")).hasContent("new");
    }

    @Test
    void aFailureInTheMiddleLeavesTheEarlierRunWhole() throws IOException {
        Path folder = place.resolve("out");
        run(folder, "old");

        assertThatThrownBy(() -> {
                    try (Destination destination = new Destination(folder)) {
                        Files.writeString(destination.work().resolve("summary.json"), "half");
                        throw new IOException("the disk is full");
                    }
                })
                .hasMessage("the disk is full");

        assertThat(all()).containsExactly("out", "out/summary.json");
        assertThat(folder.resolve("summary.json")).hasContent("old");
    }

    @Test
    void aKillInTheMiddleLeavesTheEarlierRunWhole() throws Exception {
        Path folder = place.resolve("out");
        run(folder, "old");
        Process writer = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        classPath(HalfWritten.class, Destination.class),
                        HalfWritten.class.getName(),
                        folder.toString())
                .redirectErrorStream(true)
                .start();
        assertThat(writer.inputReader().readLine()).isEqualTo("half written");

        writer.destroyForcibly().waitFor();

        assertThat(folder.resolve("summary.json")).hasContent("old");
        run(folder, "new");
        assertThat(folder.resolve("summary.json")).hasContent("new");
    }

    /** What a kill leaves behind between the last two moves, with somebody's notes half way along. */
    @Test
    void aKillWhileTheFoldersAreExchangedIsMendedByTheNextRun() throws IOException {
        long dead = 999_999_999_999L;
        Path earlier = Files.createDirectory(place.resolve(".out-earlier-" + dead));
        Files.writeString(earlier.resolve("summary.json"), "old");
        Path unfinished = Files.createDirectory(place.resolve(".out-unfinished-" + dead));
        Files.writeString(unfinished.resolve("summary.json"), "half");
        Files.writeString(unfinished.resolve("my notes.txt"), "mine");

        try (Destination destination = new Destination(place.resolve("out"))) {
            assertThat(place.resolve("out/summary.json")).hasContent("old");
            Files.writeString(destination.work().resolve("summary.json"), "new");
            destination.finish();
        }

        assertThat(all()).containsExactly("out", "out/my notes.txt", "out/summary.json");
        assertThat(place.resolve("out/summary.json")).hasContent("new");
    }

    private static String classPath(Class<?>... classes) {
        return Stream.of(classes)
                .map(c -> Path.of(URI.create(c.getProtectionDomain()
                                .getCodeSource()
                                .getLocation()
                                .toString()))
                        .toString())
                .distinct()
                .collect(Collectors.joining(File.pathSeparator));
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
