package corewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.GeneratedSurveys;
import corewright.Origins;
import corewright.SurveyFolders;
import corewright.intake.Intake;
import corewright.intake.SurveyFolder;
import corewright.store.FolderWriter;
import corewright.store.Pictures;
import corewright.store.SurveyFile;
import corewright.survey.Part;
import corewright.survey.Survey;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ConvertCommandTest {
    private static final Path DEMO = Path.of("demo-data/quillwort");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void theDemoGoesThroughAFileAndBackToTheLastDigit(@TempDir Path dir) throws IOException {
        Path file = dir.resolve("quillwort.gpkg");
        Path folder = dir.resolve("back");

        assertThat(run("convert", DEMO.toString(), file.toString())).isZero();
        assertThat(run("convert", file.toString(), folder.toString())).isZero();

        Survey demo = SurveyFolder.read(DEMO).survey();
        assertThat(SurveyFile.read(file)).isEqualTo(demo);
        Intake back = SurveyFolder.read(folder);
        assertThat(Origins.forget(back.survey())).isEqualTo(Origins.forget(demo));
        assertThat(dir).isDirectoryNotContaining("glob:**.part*");
        assertThat(out.toString()).isEqualTo(file + " was written.\n" + folder + " was written.\n");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void everyKindOfReadingAndOptionGoesThroughFolderAndFile(long seed, @TempDir Path dir) throws IOException {
        Survey survey = new GeneratedSurveys(seed).survey(12);
        FolderWriter.write(survey, Pictures.NONE, dir.resolve("a"));
        Survey read = SurveyFolder.read(dir.resolve("a")).survey();
        for (Part<?> part : Part.all()) {
            assertThat(part.of(Origins.forget(read))).as("%s", part).isEqualTo(part.of(Origins.forget(survey)));
        }
        assertThat(Origins.forget(read)).isEqualTo(Origins.forget(survey));

        run("convert", dir.resolve("a").toString(), dir.resolve("a.gpkg").toString());
        run("convert", dir.resolve("a.gpkg").toString(), dir.resolve("b").toString());

        assertThat(SurveyFile.read(dir.resolve("a.gpkg"))).isEqualTo(read);
        assertThat(SurveyFolder.read(dir.resolve("b")).survey()).isEqualTo(read);
    }

    @Test
    void checkSaysTheSameOfAFileAsOfItsFolder(@TempDir Path dir) throws IOException {
        SurveyFolders.minimal(dir)
                .with("probes.csv", "id,x,y,void_depth,colour\nP1,100,100,0,red\nP2,9480,540,99,\nP3,700,200,0,\n");
        String folder = dir.resolve("survey").toString();
        String file = dir.resolve("s.gpkg").toString();
        run("convert", folder, file);

        assertThat(run("check", folder)).isZero();
        String ofFolder = printed();
        assertThat(run("check", file)).isZero();
        String ofFile = printed();

        assertThat(ofFolder.lines().sorted()).isEqualTo(ofFile.lines().sorted().toList());
        assertThat(ofFile)
                .contains("? probes.csv:3 P2: Probe P2 found 99 mm of void in a core of 12.5 mm.")
                .contains("? probes.csv:3 P2: Probe P2 at (9480, 540) mm lies outside the outline of foredeck.")
                .contains("+ probes.csv:1: probes.csv has columns that are not used: colour.");
    }

    @Test
    void picturesTravelAlong(@TempDir Path dir) throws IOException {
        SurveyFolders.minimal(dir)
                .with("photos.csv", "file,x,y,caption\nwet.jpg,480,540,\"soft, here\"\nlost.jpg,1,1,\n")
                .with("survey.yaml", SurveyFolders.YAML.replace("files: {", "files: { photos: photos.csv,"));
        Files.write(dir.resolve("survey/wet.jpg"), new byte[] {1, 2, 3});

        run("convert", dir.resolve("survey").toString(), dir.resolve("s.gpkg").toString());
        run("convert", dir.resolve("s.gpkg").toString(), dir.resolve("back").toString());

        assertThat(dir.resolve("back/wet.jpg")).hasBinaryContent(new byte[] {1, 2, 3});
        assertThat(dir.resolve("back/lost.jpg")).doesNotExist();
    }

    @Test
    void refusesInASentence(@TempDir Path dir) throws IOException {
        SurveyFolders.minimal(dir);
        String folder = dir.resolve("survey").toString();
        Files.writeString(dir.resolve("text.gpkg"), "no database");

        assertThat(run("convert", folder, dir.resolve("other").toString())).isEqualTo(2);
        assertThat(err.toString())
                .startsWith("cannot convert " + folder + " into " + dir.resolve("other")
                        + ", expected a .gpkg into a survey folder");
        assertThat(run(
                        "convert",
                        dir.resolve("text.gpkg").toString(),
                        dir.resolve("other").toString()))
                .isEqualTo(3);
        assertThat(err.toString())
                .endsWith(dir.resolve("text.gpkg") + ": is no survey file (a GeoPackage), or its beginning is lost\n");
        assertThat(run("convert", folder, dir.resolve("text.gpkg").toString())).isEqualTo(3);
        assertThat(err.toString()).endsWith(dir.resolve("text.gpkg") + ": is there already; name a new one\n");
        assertThat(dir.resolve("other")).doesNotExist();
    }

    private int run(String... args) {
        return Corewright.run(new PrintWriter(out), new PrintWriter(err), args);
    }

    private String printed() {
        String text = out.toString();
        out.getBuffer().setLength(0);
        return text.replaceAll("(?m)^\\S+ was written.\\n", "");
    }
}
