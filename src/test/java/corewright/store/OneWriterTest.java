package corewright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import corewright.GeneratedSurveys;
import corewright.bench.TwoWriters;
import corewright.survey.Edit;
import corewright.survey.Part;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** One process writes; what stands in the lock's place is never harmed. */
@Timeout(value = 120, threadMode = Timeout.ThreadMode.SEPARATE_THREAD) // a pipe would wait without end
class OneWriterTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path dir;

    @SuppressWarnings("NullAway.Init")
    private Path path;

    @SuppressWarnings("NullAway.Init")
    private Path lock;

    @BeforeEach
    void create() throws IOException {
        path = dir.resolve("s.gpkg");
        lock = dir.resolve("s.gpkg.lock");
        SurveyFile.create(path, new GeneratedSurveys(1).survey(3));
    }

    /** The short form of {@link TwoWriters}. */
    @Test
    void twoProcessesLoseNoEdit() throws Exception {
        assertThat(TwoWriters.run(1, 400, dir)).startsWith("1 runs of 400 edits by two processes: none lost");
    }

    @Test
    void theLockHoldsAgainstAnotherProcessAfterTheFileWasOpenedTwiceHere() throws Exception {
        try (SurveyFile first = SurveyFile.open(path)) {
            SurveyFile.open(path).close();
            SurveyFile.openToRead(path).close();

            String other = EditingProcess.open(path);

            assertThat(other)
                    .contains(path.toRealPath() + ": is open in another window; here it is opened to be read only.");
            first.append(Edit.add(
                    first.survey(),
                    Part.PLUGS,
                    first.survey().readings().plugs().get(0)));
        }
        assertThat(lock).doesNotExist();
        assertThat(EditingProcess.open(path)).contains("may write");
    }

    @Test
    void theSameFileOpenedAgainIsTheSameSurvey() throws IOException {
        SurveyFile first = SurveyFile.open(path);
        SurveyFile second = SurveyFile.open(dir.resolve("./s.gpkg"));

        assertThat(second).isSameAs(first);
        assertThat(second.readOnly()).isFalse();
        second.close();
        first.append(Edit.add(
                first.survey(), Part.PLUGS, first.survey().readings().plugs().get(0)));
        first.close();
        assertThat(lock).doesNotExist();
        assertThatThrownBy(() -> first.append(Edit.remove(
                        first.survey(),
                        Part.PLUGS,
                        first.survey().readings().plugs().get(0))))
                .isInstanceOf(StoreException.class);
    }

    @Test
    void aFileOfOthersInTheLocksPlaceStaysAndIsNamed() throws IOException {
        Files.writeString(lock, "my shopping list");

        try (SurveyFile file = SurveyFile.open(path)) {
            assertThat(file.whyReadOnly())
                    .isEqualTo(path.toRealPath() + ": cannot be locked, as s.gpkg.lock beside it is not of this"
                            + " program; move that away to work on it; here it is opened to be read only.");
        }

        assertThat(lock).hasContent("my shopping list");
    }

    @Test
    void aLinkInTheLocksPlaceIsNotFollowed() throws IOException {
        Path precious = Files.writeString(dir.resolve("precious.txt"), "");
        Files.createSymbolicLink(lock, precious);

        try (SurveyFile file = SurveyFile.open(path)) {
            assertThat(file.readOnly()).isTrue();
        }

        assertThat(precious).isEmptyFile();
        assertThat(lock).isSymbolicLink();
    }

    @Test
    void aPipeInTheLocksPlaceIsNotWaitedFor() throws Exception {
        pipe(lock);

        try (SurveyFile file = SurveyFile.open(path)) {
            assertThat(file.whyReadOnly()).contains("s.gpkg.lock beside it is not of this program");
        }

        assertThat(lock).exists();
    }

    @Test
    void theLockOfAKilledProcessIsTakenOver() throws Exception {
        EditingProcess.killed(List.of(), path, 1, 0, true, 20);
        assertThat(lock).exists();

        SurveyFile.open(path).close();

        assertThat(lock).doesNotExist();
    }

    @Test
    void whatTakesTheLocksNameWhileItIsHeldStays() throws IOException {
        SurveyFile file = SurveyFile.open(path);
        Files.move(lock, dir.resolve("moved"));
        Files.writeString(lock, "somebody else's");

        file.close();

        assertThat(lock).hasContent("somebody else's");
    }

    static void pipe(Path path) throws IOException, InterruptedException {
        Process made = new ProcessBuilder(List.of("mkfifo", path.toString()))
                .inheritIO()
                .start();
        assertThat(made.waitFor(10, TimeUnit.SECONDS)).isTrue();
        assertThat(made.exitValue()).as("mkfifo").isZero();
    }
}
