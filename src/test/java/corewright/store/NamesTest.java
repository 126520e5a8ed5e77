package corewright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import corewright.GeneratedSurveys;
import corewright.survey.Edit;
import corewright.survey.Part;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Names of files as the database's driver sees them, and what a database keeps beside its file. */
@Timeout(value = 60, threadMode = Timeout.ThreadMode.SEPARATE_THREAD) // a pipe would wait without end
class NamesTest {
    private static final Survey SURVEY = new GeneratedSurveys(1).survey(3);

    @ParameterizedTest
    @ValueSource(
            strings = {
                "what? really.gpkg",
                "a?mode=memory.gpkg",
                "a?journal_mode=off&synchronous=0.gpkg",
                "no #1.gpkg",
                "100%25 wet.gpkg",
                "file:x.gpkg",
                "mode=memory.gpkg",
                ":memory:.gpkg",
                "it's; DROP TABLE.gpkg",
            })
    void anyNameOfAFileIsThatFile(String name, @TempDir Path dir) throws Exception {
        Path path = dir.resolve(name);
        SurveyFile.create(path, SURVEY);
        try (SurveyFile file = SurveyFile.open(path)) {
            file.append(Edit.remove(
                    file.survey(), Part.TAPS, file.survey().readings().taps().get(0)));
            file.saveCopy(dir.resolve("copy of " + name));
        }

        assertThat(names(dir)).containsExactlyInAnyOrder(name, "copy of " + name);
        assertThat(SurveyFile.read(path))
                .isEqualTo(SurveyFile.read(dir.resolve("copy of " + name)))
                .isNotEqualTo(SURVEY);
    }

    @ParameterizedTest
    @ValueSource(strings = {"-journal", "-wal", "-shm"})
    void aPipeOrLinkInPlaceOfAJournalIsRefused(String ending, @TempDir Path dir) throws Exception {
        Path path = dir.resolve("s.gpkg");
        SurveyFile.create(path, SURVEY);
        Path beside = dir.resolve("s.gpkg" + ending);
        Path precious = Files.writeString(dir.resolve("precious"), "mine");

        OneWriterTest.pipe(beside);
        String message =
                path.toRealPath() + ": has s.gpkg" + ending + " beside it, which is a link or no file; move that away";
        assertThatThrownBy(() -> SurveyFile.open(path)).hasMessage(message);
        Files.delete(beside);
        Files.createSymbolicLink(beside, precious);
        assertThatThrownBy(() -> SurveyFile.read(path)).hasMessage(message);

        assertThat(precious).hasContent("mine");
    }

    @Test
    void aPipeIsNoSurveyFile(@TempDir Path dir) throws Exception {
        Path pipe = dir.resolve("s.gpkg");
        OneWriterTest.pipe(pipe);

        assertThatThrownBy(() -> SurveyFile.open(pipe))
                .hasMessage(pipe + ": is a pipe or device, expected a survey file");
        assertThatThrownBy(() -> SurveyFile.read(pipe))
                .hasMessage(pipe + ": is a pipe or device, expected a survey file");
    }

    /** Another program's write-ahead log holds the last edits: a copy is read, and neither file changes. */
    @Test
    void aLogLeftOnReadOnlyMediaIsRead(@TempDir Path dir) throws Exception {
        Path path = withLog(dir);
        byte[] before = Files.readAllBytes(path);
        try (Connection connection = Beside.connectToCopy(path);
                Statement statement = connection.createStatement()) {
            connection.setAutoCommit(false); // as every reader does
            assertThat(new Contents(path, connection).survey().heading().vessel())
                    .isEqualTo("Wren");
            assertThatThrownBy(() -> statement.executeUpdate("DELETE FROM taps"))
                    .hasMessageContaining("readonly");
        }
        assertThat(Files.readAllBytes(path)).isEqualTo(before);
        assertThat(dir.resolve("s.gpkg-wal")).isNotEmptyFile();
    }

    /** A survey file with a change that stands in the log alone. */
    private static Path withLog(Path dir) throws Exception {
        Path made = dir.resolve("made.gpkg");
        SurveyFile.create(made, SURVEY);
        Path path = dir.resolve("s.gpkg");
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + made);
                Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA journal_mode = WAL");
            statement.executeUpdate("UPDATE heading SET vessel = 'Wren'");
            Files.copy(made, path);
            Files.copy(dir.resolve("made.gpkg-wal"), dir.resolve("s.gpkg-wal"));
        }
        return path;
    }

    private static List<String> names(Path dir) throws IOException {
        try (Stream<Path> entries = Files.list(dir)) {
            return entries.map(p -> p.getFileName().toString()).toList();
        }
    }

    /** As a process leaves it that is killed between making the journal and writing it. */
    @Test
    void anEmptyJournalThatAKilledProcessLeftGoesWhenTheFileIsOpenedForWork(@TempDir Path dir) throws Exception {
        Path path = dir.resolve("s.gpkg");
        SurveyFile.create(path, SURVEY);
        Files.write(dir.resolve("s.gpkg-journal"), new byte[512]);

        SurveyFile.open(path).close();

        assertThat(names(dir)).containsExactly("s.gpkg");
        assertThat(SurveyFile.read(path)).isEqualTo(SURVEY);
    }
}
