package corewright.store;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.GeneratedSurveys;
import corewright.survey.Edit;
import corewright.survey.Origin;
import corewright.survey.Part;
import corewright.survey.Photo;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A new survey file or folder whose writer is told to end leaves nothing: no half of it, no lock. */
class InterruptedTest {
    /** A writer that stops in the middle, at a picture: {@code main PLACE}. */
    public static void main(String[] args) throws IOException {
        Path place = Path.of(args[0]);
        Survey empty = new GeneratedSurveys(1).survey(3);
        Photo photo = new Photo(new Origin("by hand", 0), "P.png", new Spot("foredeck", 1, 2), "");
        Survey survey = Edit.add(empty, Part.PHOTOS, photo).apply(empty);
        if (place.toString().endsWith(".gpkg")) {
            SurveyFile.create(place, survey, List.of(), InterruptedTest::wait);
        } else {
            FolderWriter.write(survey, InterruptedTest::wait, place);
        }
    }

    private static byte[] wait(String picture) {
        System.out.println("in the middle");
        try {
            TimeUnit.MINUTES.sleep(1);
        } catch (InterruptedException e) {
            throw new UncheckedIOException(new IOException(e));
        }
        return new byte[0];
    }

    @ParameterizedTest
    @ValueSource(strings = {"new.gpkg", "folder"})
    void nothingIsLeft(String name, @TempDir Path dir, @TempDir Path other) throws Exception {
        Path said = other.resolve("said.txt");
        Process process = new ProcessBuilder(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-Djava.io.tmpdir=" + other,
                        "-cp",
                        System.getProperty("java.class.path"),
                        InterruptedTest.class.getName(),
                        dir.resolve(name).toString()))
                .redirectOutput(said.toFile())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        for (int i = 0; i < 60_000 && process.isAlive() && Files.size(said) == 0; i++) {
            process.waitFor(1, TimeUnit.MILLISECONDS);
        }
        assertThat(said).hasContent("in the middle");
        assertThat(dir).isNotEmptyDirectory();

        process.destroy(); // SIGTERM

        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).isEqualTo(143); // 128 and the signal's number, as shells have it
        try (Stream<Path> left = Files.list(dir)) {
            assertThat(left).isEmpty();
        }
    }
}
