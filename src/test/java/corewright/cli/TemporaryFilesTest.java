package corewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import corewright.Main;
import corewright.store.WriterLock;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the machine lacks is said in a sentence; what a program leaves in the temporary folder goes with it. */
class TemporaryFilesTest {
    private static final String LEFT = ".corewright-temporary-0123456789abcdef";
    private static final String HELD = ".corewright-temporary-00000000deadbeef";

    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path dir;

    @Test
    void whatAKilledProgramLeftIsClearedAndNothingElse() throws Exception {
        Files.createDirectories(dir.resolve(LEFT).resolve("deep"));
        Files.writeString(dir.resolve(LEFT).resolve("deep/library"), "unpacked");
        Files.createSymbolicLink(dir.resolve(LEFT).resolve("link"), dir.resolve("mine"));
        Files.createFile(dir.resolve(".corewright-temporary-1111111111111111.lock"));
        Files.createDirectory(dir.resolve(HELD));
        Files.createDirectory(dir.resolve("mine"));
        Files.writeString(dir.resolve("mine/letters.txt"), "my letters");
        Files.createDirectory(dir.resolve(".corewright-temporary-mine"));
        Files.createSymbolicLink(dir.resolve(".corewright-temporary-2222222222222222"), dir.resolve("mine"));

        try (WriterLock other = WriterLock.take(dir.resolve(HELD), "")) {
            assertThat(other).isNotNull();
            TemporaryFiles.clear(dir);
            assertThat(names())
                    .containsExactly(
                            HELD,
                            HELD + ".lock",
                            ".corewright-temporary-2222222222222222",
                            ".corewright-temporary-mine",
                            "mine");
        }
        assertThat(dir.resolve("mine/letters.txt")).hasContent("my letters");
    }

    @Test
    void aFolderThatIsNotThereOrNoneIsSaid() throws IOException {
        Path file = Files.createFile(dir.resolve("file"));
        for (Path folder : List.of(file, dir.resolve("none"))) {
            assertThatThrownBy(() -> TemporaryFiles.check(folder))
                    .isInstanceOf(FileSystemException.class)
                    .hasMessage(folder + ": the folder for temporary files is not there; name another (java"
                            + " -Djava.io.tmpdir=FOLDER ...)");
        }
    }

    /**
     * A limit for the length of a file stands for a full disk: the system refuses what is written beyond. With 40 KiB
     * there is room for the lock as a rule, and none for a library; with none at all the lock itself fails.
     */
    @ParameterizedTest
    @ValueSource(ints = {0, 40})
    void aFullFolderIsSaidAtTheStartAndNothingIsLeftInIt(int limitKiB) throws Exception {
        Path survey = Path.of("demo-data", "quillwort").toAbsolutePath();
        List<String> command =
                new ArrayList<>(List.of("bash", "-c", "ulimit -f " + limitKiB + "; exec \"$@\"", "bash"));
        command.addAll(java("check", survey.toString()));

        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .start(); // its words come through a pipe, which has no length

        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).isEqualTo(Corewright.REFUSED);
        assertThat(said).contains(": the folder for temporary files cannot be written, or is full; name another");
        assertThat(names()).isEmpty();
    }

    @Test
    void tooLittleMemoryIsASentence() {
        StringWriter err = new StringWriter();

        int status = Corewright.withinMemory(
                () -> {
                    throw new OutOfMemoryError();
                },
                new PrintWriter(err, true));

        assertThat(status).isEqualTo(Corewright.REFUSED);
        assertThat(err.toString().strip())
                .matches("This needs more memory than the [0-9]+ MB that Java may take here\\. Allow it more .*")
                .doesNotContain("\n");
    }

    private List<String> java(String... arguments) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:-UsePerfData",
                "-Djava.io.tmpdir=" + dir,
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
        command.addAll(List.of(arguments));
        return command;
    }

    private List<String> names() throws IOException {
        try (Stream<Path> entries = Files.list(dir)) {
            return entries.map(p -> p.getFileName().toString()).sorted().toList();
        }
    }
}
