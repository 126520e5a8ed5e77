package corewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.SurveyFolders;
import corewright.store.WriterLock;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Commands never write over what is not theirs. */
@Timeout(value = 60, threadMode = Timeout.ThreadMode.SEPARATE_THREAD) // a pipe would wait without end
class FilesOfOthersTest {
    private static final String PANEL = """
            outline: "POLYGON((0 0,900 0,900 600,0 600,0 0))"
            edges: [simple, simple, simple, simple]
            outer_skin: { thickness_mm: 3.0, E_MPa: 11000, nu: 0.30 }
            inner_skin: { thickness_mm: 3.0, E_MPa: 11000, nu: 0.30 }
            core: { thickness_mm: 12.5, Gxz_MPa: 157, Gyz_MPa: 157, Ez_MPa: 3900 }
            loads: [ { pressure_kPa: 5 } ]
            mesh_mm: 150
            """;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    @SuppressWarnings("NullAway.Init")
    Path dir;

    @Test
    void aPanelIsNotReplacedByItsResults() throws IOException {
        Path panel = Files.writeString(dir.resolve("panel.yaml"), PANEL);
        Path link = Files.createSymbolicLink(dir.resolve("link"), panel);

        for (Path place : List.of(panel, link)) {
            assertThat(run("panel", panel.toString(), "--out", place.toString()))
                    .isEqualTo(Corewright.WRONG_USE);
        }

        assertThat(err.toString()).contains("--out: would overwrite the panel " + panel);
        assertThat(panel).hasContent(PANEL);
    }

    @Test
    void aDeviceOrPipeIsNotReplaced() throws Exception {
        Path panel = Files.writeString(dir.resolve("panel.yaml"), PANEL);
        Path pipe = dir.resolve("pipe");
        assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor())
                .isZero();
        Path device = Files.createSymbolicLink(dir.resolve("null"), Path.of("/dev/null"));

        for (Path place : List.of(pipe, device)) {
            assertThat(run("panel", panel.toString(), "--out", place.toString()))
                    .isEqualTo(Corewright.REFUSED);
            assertThat(err.toString())
                    .contains(place + ": is a device, a pipe or a link to none, expected a file to write");
            assertThat(Files.isRegularFile(place)).isFalse();
        }
    }

    @Test
    void aLinkToAFileStaysALink() throws IOException {
        Path panel = Files.writeString(dir.resolve("panel.yaml"), PANEL);
        Path results = Files.writeString(dir.resolve("results.json"), "earlier");
        Path link = Files.createSymbolicLink(dir.resolve("link.json"), results);

        assertThat(run("panel", panel.toString(), "--out", link.toString()))
                .as(err.toString())
                .isZero();

        assertThat(link).isSymbolicLink();
        assertThat(results).content().contains("max_core_shear_MPa");
        assertThat(names()).containsExactly("link.json", "panel.yaml", "results.json");
    }

    @Test
    void ofTwoConversionsToOneNameOneIsRefused() throws Exception {
        Path folder = SurveyFolders.minimal(dir).path();
        Path file = dir.resolve("s.gpkg");

        try (WriterLock other = WriterLock.take(file, "")) {
            assertThat(other).isNotNull();
            assertThat(run("convert", folder.toString(), file.toString())).isEqualTo(Corewright.REFUSED);
        }

        assertThat(err.toString()).contains(file + ": is being written by another process; name another, or wait");
        assertThat(file).doesNotExist();
        assertThat(run("convert", folder.toString(), file.toString())).isZero();
        assertThat(names()).containsExactly("s.gpkg", "survey");
    }

    @Test
    void whatAKilledConversionLeftIsClearedByTheNext() throws IOException {
        Path folder = SurveyFolders.minimal(dir).path();
        Files.writeString(dir.resolve(".s.gpkg.part"), "SQLite format 3\0half");
        Files.write(dir.resolve(".s.gpkg.part-journal"), new byte[512]);
        Files.writeString(dir.resolve("s.gpkg.lock"), "");
        Path part = Files.createDirectory(dir.resolve(".back.part"));
        Files.writeString(part.resolve(".corewright-unfinished"), "");
        Files.writeString(part.resolve("plan.csv"), "half");

        assertThat(run("convert", folder.toString(), dir.resolve("s.gpkg").toString()))
                .as(err.toString())
                .isZero();
        assertThat(run(
                        "convert",
                        dir.resolve("s.gpkg").toString(),
                        dir.resolve("back").toString()))
                .as(err.toString())
                .isZero();

        assertThat(names()).containsExactly("back", "s.gpkg", "survey");
        assertThat(run("check", dir.resolve("back").toString())).isZero();
        assertThat(dir.resolve("back/.corewright-unfinished")).doesNotExist();
    }

    @Test
    void whatStandsUnderATemporaryNameAndIsNotOursStays() throws IOException {
        Path folder = SurveyFolders.minimal(dir).path();
        Path mine = Files.writeString(dir.resolve(".s.gpkg.part"), "my letters");

        assertThat(run("convert", folder.toString(), dir.resolve("s.gpkg").toString()))
                .isEqualTo(Corewright.REFUSED);

        assertThat(err.toString()).contains("is in the way and not of this program; move it away");
        assertThat(mine).hasContent("my letters");
    }

    /** A link that leads nowhere is somebody's: what it names may come back. */
    @Test
    void aConversionDoesNotTakeThePlaceOfALink() throws IOException {
        Path folder = SurveyFolders.minimal(dir).path();
        Path link = Files.createSymbolicLink(dir.resolve("s.gpkg"), dir.resolve("away"));

        assertThat(run("convert", folder.toString(), link.toString())).isEqualTo(Corewright.REFUSED);

        assertThat(link).isSymbolicLink();
    }

    private List<String> names() throws IOException {
        try (Stream<Path> entries = Files.list(dir)) {
            return entries.map(p -> p.getFileName().toString()).sorted().toList();
        }
    }

    private int run(String... args) {
        return Corewright.run(new PrintWriter(out), new PrintWriter(err), args);
    }
}
