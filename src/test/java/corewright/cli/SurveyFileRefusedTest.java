package corewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.SurveyFolders;
import corewright.intake.SurveyCheck;
import corewright.intake.SurveyFolder;
import corewright.store.Pictures;
import corewright.store.SurveyFile;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a folder would be refused for, a survey file is refused for too: exit status 3 and a sentence, never a defect. */
class SurveyFileRefusedTest {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private Path file = Path.of("");
    private Path dir = Path.of("");

    @BeforeEach
    void create(@TempDir Path temporary) throws Exception {
        dir = temporary;
        file = dir.resolve("s.gpkg");
        Path folder = SurveyFolders.minimal(dir)
                .with(
                        "survey.yaml",
                        SurveyFolders.YAML + "loads:\n  - { name: crew, area: \"POLYGON((300 200,500 200,500 300,300"
                                + " 200))\", force_N: 900 }\n"
                                + "moved_holes: [ { face: foredeck, planned_x_mm: 480, planned_y_mm: 540, x_mm: 500,"
                                + " y_mm: 540 } ]\n"
                                + "method_overrides: [ { face: foredeck, x_mm: 480, y_mm: 540, method: recore } ]\n"
                                + "reading_overrides: [ { kind: tap, id: T1, face: foredeck, x_mm: 1, y_mm: 1, trust:"
                                + " trusted } ]\n")
                .path();
        var intake = SurveyFolder.read(folder);
        SurveyFile.create(file, intake.survey(), SurveyCheck.importNotes(intake), Pictures.NONE);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "UPDATE plan_features SET face = 'fordeck' | table plan_features: face: found \"fordeck\" in 1 rows, which"
                        + " no row of table faces is called",
                "UPDATE method_overrides SET face = 'x' | method_overrides: face: found \"x\", expected foredeck",
                "UPDATE reading_overrides SET face = 'x' | reading_overrides: face: found \"x\", expected foredeck",
                "UPDATE moved_holes SET face = 'x' | moved_holes: face: found \"x\", expected foredeck",
                "UPDATE loads SET face = 'x' | load crew: face: found \"x\", expected foredeck",
                "UPDATE loads SET force_n = 9e999 | load crew: force_N: found \"Infinity\", expected a number from"
                        + " -10000000 to 10000000",
                "UPDATE loads SET force_n = 1e300 | load crew: force_N: found \"1.0E300\", expected a number",
                "UPDATE loads SET moment_xnmm = 1e300 | load crew: moment_x_Nmm: found \"1.0E300\", expected a number",
                "UPDATE cores SET shear_mpa = 9e999 WHERE name = 'balsa-150' | core balsa-150: shear_mpa: shear_mpa must be"
                        + " more than 0 and at most 10000000",
                "UPDATE cores SET shear_mpa = -1 WHERE name = 'balsa-150' | core balsa-150: shear_mpa: shear_mpa must be"
                        + " more than 0",
                "UPDATE skins SET poisson = 7 WHERE name = 'e-glass-epoxy' | skin e-glass-epoxy: poisson: poisson must be"
                        + " more than 0 and at most 0.49",
                "UPDATE laminates SET core_mm = 1e300 | laminate deck: core_mm: found \"1.0E300\", expected a number from"
                        + " 0.01 to 1000",
                "UPDATE meters SET full_scale = 1e300 | meter A: full_scale: found \"1.0E300\", expected a number",
                "UPDATE meters SET dry = 90 | meter A: wet: found \"25\", expected more than dry, which is 90",
                "UPDATE moisture SET value = 1e300 WHERE fid = 1 | value: found \"1.0E300\", expected a number",
                "UPDATE moisture SET temperature_c = 1e300 WHERE fid = 1 | temperature: found \"1.0E300\", expected a number",
                "UPDATE probes SET void_depth_mm = 1e300 WHERE fid = 1 | void_depth: found \"1.0E300\", expected a number",
                "UPDATE taps SET contact_us = 1e300 WHERE fid = 1 | contact_us: found \"1.0E300\", expected a number",
                "UPDATE resins SET density_kg_m3 = 1e300 WHERE fid = 1 | density_kg_m3: found \"1.0E300\", expected a number",
                "UPDATE resins SET name = 'x' | resins: name: two resins are called \"x\"",
                "UPDATE settings SET value = '-1' WHERE name = 'rate_per_hour' | settings: rate_per_hour: found \"-1.0\","
                        + " expected a number from 0 to 1000000000",
                "UPDATE settings SET value = 'NaN' WHERE name = 'rate_per_hour' | settings: rate_per_hour: found \"NaN\"",
                "INSERT INTO laminates SELECT 99, name, outer_skin_mm, 1, inner_skin_mm, skin, core, measured, 99,"
                        + " core_form, solid_edge_mm FROM laminates | laminates: name: two laminates are called \"deck\"",
                "INSERT INTO meters SELECT 99, name, kind, 50, dry, wet, 99 FROM meters | meters: name: two meters are"
                        + " called \"A\"",
                "INSERT INTO cores SELECT 99, name, 1, 1, 1, 1, 1, source, 99 FROM cores WHERE fid = 1 | table cores: two"
                        + " rows are called \"balsa-100\"",
                "INSERT INTO settings SELECT 9999, section, name, '1' FROM settings WHERE name = 'likely' | table settings:"
                        + " thresholds.likely: is there twice",
                "UPDATE faces SET uphill_deg = 1e300 | face foredeck: uphill_deg: found \"1.0E300\", expected a number",
                "UPDATE taps SET id = printf('%.90000c', 'a') WHERE fid = 1 | id: has 90000 characters, expected at most"
                        + " 200",
                "UPDATE heading SET vessel = printf('%.90000c', 'a') | survey: vessel: has 90000 characters, expected at"
                        + " most 5000",
            })
    void isRefusedWithASentence(String sql, String sentence) throws Exception {
        sql(sql);

        assertThat(run("run", file.toString(), "--out", dir.resolve("out").toString()))
                .as(err.toString())
                .isEqualTo(Corewright.REFUSED);
        assertThat(err.toString()).contains(sentence);
        assertThat(dir.resolve("out")).doesNotExist();
    }

    /** As in a folder: read as a mark that is seen, with a finding; a name has one line. */
    @Test
    void controlCharactersAreSeenAndForgeNoLine() throws Exception {
        sql("UPDATE taps SET id = 'T' || char(27) || '[2J' || char(10) || 'all is well' WHERE fid = 1");
        sql("UPDATE heading SET vessel = 'Wren' || char(8238) || 'x'");
        sql("UPDATE probes SET id = (SELECT id FROM taps WHERE fid = 1) WHERE fid < 3");

        assertThat(run("check", file.toString())).as(err.toString()).isZero();

        assertThat(out.toString())
                .contains("Texts hold control characters")
                .contains("T\uFFFD[2J\uFFFDall is well")
                .doesNotContain("\u001B")
                .doesNotContain("\nall is well");
    }

    @Test
    void aWordOfTheFileForgesNoLineOfARefusal() throws Exception {
        sql("UPDATE moisture SET side = 'x' || char(27) || '[2J' || char(10) || 'all is well' WHERE fid = 1");

        assertThat(run("check", file.toString())).isEqualTo(Corewright.REFUSED);

        assertThat(err.toString())
                .contains("all is well")
                .doesNotContain("\u001B")
                .doesNotContain("\nall is well");
    }

    @Test
    void aNoteOfTheImportForgesNoLine() throws Exception {
        String note = "char(27) || '[2J' || char(10) || 'all is well'";
        sql(
                "INSERT INTO import_notes (severity, origin_file, origin_line, about, id, subject, message, effect, position)"
                        + " VALUES ('doubt', " + note + ", 1, 'face', " + note + ", 'plan', " + note + ", " + note
                        + ", 1)");

        assertThat(run("check", file.toString())).as(err.toString()).isZero();

        assertThat(out.toString())
                .contains("? \uFFFD[2J\uFFFDall is well:1: \uFFFD[2J\uFFFDall is well")
                .doesNotContain("\u001B")
                .doesNotContain("\nall is well");
    }

    /** A word that is refused by what it stands for, not by its column. */
    @Test
    void aMethodOfTheFileForgesNoLineOfARefusal() throws Exception {
        sql("UPDATE method_overrides SET method = char(27) || '[2J' || char(10) || 'all is well'");

        assertThat(run("check", file.toString())).isEqualTo(Corewright.REFUSED);

        assertThat(err.toString())
                .contains("was \uFFFD[2J\uFFFDall is well")
                .doesNotContain("\u001B")
                .doesNotContain("\nall is well");
    }

    private void sql(String sql) throws Exception {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.executeUpdate(sql);
        }
    }

    private int run(String... args) {
        return Corewright.run(new PrintWriter(out), new PrintWriter(err), args);
    }
}
