package corewright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
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

        assertThat(all())
                .containsExactly(
                        "not",
                        "not/there",
                        "not/there/out",
                        "not/there/out/outputs.sha256",
                        "not/there/out/summary.json");
    }

    @Test
    void anEarlierRunGivesWayAndWhatIsNotOursStays() throws IOException {
        Path folder = place.resolve("out");
        run(folder, "old", "holes.csv", "maps/a.svg");
        Files.writeString(folder.resolve("my notes.txt"), "mine");
        Files.writeString(folder.resolve("work-done.csv"), "mine, under a name of yours");
        Files.createDirectories(folder.resolve("maps/mine"));
        Files.writeString(folder.resolve("maps/mine/photo.jpg"), "mine");
        Files.createSymbolicLink(folder.resolve("maps/link.svg"), folder.resolve("my notes.txt"));

        run(folder, "new");

        assertThat(all())
                .containsExactly(
                        "out",
                        "out/maps",
                        "out/maps/link.svg",
                        "out/maps/mine",
                        "out/maps/mine/photo.jpg",
                        "out/my notes.txt",
                        "out/outputs.sha256",
                        "out/summary.json",
                        "out/work-done.csv");
        assertThat(folder.resolve("summary.json")).hasContent("new");
        assertThat(folder.resolve("work-done.csv")).hasContent("mine, under a name of yours");
    }

    /** What somebody has changed is somebody's, though a run wrote it first. */
    @Test
    void aChangedOutputIsKeptBesideTheNewOne() throws IOException {
        Path folder = place.resolve("out");
        run(folder, "old", "holes.csv");
        Files.writeString(folder.resolve("holes.csv"), "with my remarks");

        run(folder, "new", "holes.csv");
        run(folder, "newer", "holes.csv");

        assertThat(folder.resolve("holes.csv.kept")).hasContent("with my remarks");
        assertThat(folder.resolve("holes.csv")).hasContent("newer holes.csv");
        assertThat(all())
                .containsExactly(
                        "out", "out/holes.csv", "out/holes.csv.kept", "out/outputs.sha256", "out/summary.json");
    }

    /** A folder of somebody's own that happens to hold a summary.json, maps and tables. */
    @Test
    void aFileOfOursByNameAloneDoesNotGiveAFolderAway() throws IOException {
        Path folder = Files.createDirectory(place.resolve("thesis"));
        for (String name : List.of("summary.json", "holes.csv", "owner-report.pdf")) {
            Files.writeString(folder.resolve(name), "mine");
        }

        assertThatThrownBy(() -> run(folder, "new")).hasMessageContaining("holds other things than outputs");
        assertThat(folder.resolve("holes.csv")).hasContent("mine");
    }

    @Test
    void theListIsReadByTheUsualTool() throws Exception {
        Path folder = place.resolve("out");
        run(folder, "new", "a name with spaces.csv", "maps/a.svg");

        Process check = new ProcessBuilder("sha256sum", "--check", "--strict", OutputList.NAME)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        String said = new String(check.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(check.waitFor()).as(said).isZero();
        assertThat(said.lines()).hasSize(3);
    }

    @Test
    void ofTwoRunsAtOnceToOnePlaceTheSecondIsRefused() throws IOException {
        Path folder = place.resolve("out");
        try (Destination first = new Destination(folder)) {
            assertThatThrownBy(() -> new Destination(folder))
                    .hasMessage(folder + ": is being written by another run; name another folder, or wait");
            Files.writeString(first.work().resolve("summary.json"), "first");
            first.finish();
        }
        assertThat(folder.resolve("summary.json")).hasContent("first");
    }

    @Test
    void whatStandsInTheWayAndIsNotOursStays() throws IOException {
        Path other = Files.createDirectory(place.resolve(".out-unfinished"));
        Files.writeString(other.resolve("letter.txt"), "mine");

        assertThatThrownBy(() -> run(place.resolve("out"), "new"))
                .hasMessage(other + ": is in the way and not of a run; move it away");
        assertThat(all()).containsExactly(".out-unfinished", ".out-unfinished/letter.txt");
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

        assertThat(all()).containsExactly("out", "out/outputs.sha256", "out/summary.json");
        assertThat(folder.resolve("summary.json")).hasContent("old");
    }

    @Test
    void aKillInTheMiddleLeavesTheEarlierRunWhole() throws Exception {
        Path folder = place.resolve("out");
        run(folder, "old");
        Process writer = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        classPath(HalfWritten.class, Destination.class, Nullable.class),
                        HalfWritten.class.getName(),
                        folder.toString())
                .redirectErrorStream(true)
                .start();
        assertThat(writer.inputReader().readLine()).isEqualTo("half written");

        writer.destroyForcibly().waitFor();

        assertThat(folder.resolve("summary.json")).hasContent("old");
        run(folder, "new");
        assertThat(folder.resolve("summary.json")).hasContent("new");
        assertThat(all()).containsExactly("out", "out/outputs.sha256", "out/summary.json");
    }

    /** What a kill leaves behind between the last moves, with somebody's notes half way along. */
    @Test
    void aKillWhileTheFoldersAreExchangedIsMendedByTheNextRun() throws IOException {
        run(place.resolve(".out-earlier"), "old", "holes.csv");
        Path unfinished = place.resolve(".out-unfinished");
        run(unfinished, "half", "holes.csv");
        Files.writeString(unfinished.resolve("my notes.txt"), "mine");

        try (Destination destination = new Destination(place.resolve("out"))) {
            assertThat(place.resolve("out/summary.json")).hasContent("old");
            Files.writeString(destination.work().resolve("summary.json"), "new");
            destination.finish();
        }

        assertThat(all()).containsExactly("out", "out/my notes.txt", "out/outputs.sha256", "out/summary.json");
        assertThat(place.resolve("out/summary.json")).hasContent("new");
    }

    /** A kill after the exchange, while the earlier outputs are being deleted. */
    @Test
    void aKillAfterTheExchangeIsClearedByTheNextRun() throws IOException {
        Path earlier = place.resolve(".out-earlier");
        run(earlier, "old", "holes.csv", "maps/a.svg");
        Files.delete(earlier.resolve("holes.csv"));
        run(place.resolve("out"), "new");

        run(place.resolve("out"), "newer");

        assertThat(all()).containsExactly("out", "out/outputs.sha256", "out/summary.json");
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

        assertThat(all()).containsExactly("out", "out/outputs.sha256", "out/summary.json");
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
    void tooLittleRoomIsSaidBeforeTheWorkAndAnUnknownRoomIsBelieved() throws IOException {
        Path out = Path.of("out");

        assertThatThrownBy(() -> Destination.checkRoom(out, 900_000_000, 4_900_000))
                .isInstanceOf(FileSystemException.class)
                .hasMessage("out: has room for 4.9 MB only, and the outputs take 5 MB or more; make room, or name"
                        + " another folder");
        Destination.checkRoom(out, 900_000_000, 5_000_000);
        Destination.checkRoom(out, 0, 0);
    }

    @Test
    void aFileIsRefused() throws IOException {
        Path file = Files.writeString(place.resolve("out"), "mine");

        assertThatThrownBy(() -> new Destination(file))
                .hasMessage(file + ": is a file, expected a folder for the outputs");
    }

    private static void run(Path folder, String summary, String... others) throws IOException {
        try (Destination destination = new Destination(folder)) {
            Files.writeString(destination.work().resolve(Destination.MARKER), summary);
            for (String other : others) {
                Path file = destination.work().resolve(other);
                Files.createDirectories(file.getParent());
                Files.writeString(file, summary + " " + other);
            }
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
