package corewright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import corewright.GeneratedSurveys;
import corewright.survey.Edit;
import corewright.survey.Moisture;
import corewright.survey.Origin;
import corewright.survey.Part;
import corewright.survey.Plug;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StoreRefusesTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "PRAGMA application_id = 1 | is a database, but not marked as a GeoPackage, so it is no survey file",
                "DROP TABLE survey_file | this is a GeoPackage, but not one that holds a survey of this program",
                "UPDATE survey_file SET value = 11 WHERE name = 'schema_version' | was written by a newer version of"
                        + " this program (tables of version 11, this one knows up to 10); open it with that one",
                "DELETE FROM survey_file | does not say which version its tables are of; the file is damaged",
                "DROP TABLE taps | table taps is missing; the file is damaged",
                "DELETE FROM heading | table heading has 0 rows, expected one",
                "DELETE FROM faces | a survey needs a face",
                "UPDATE heading SET surveyed = 'soon' | table heading, row 1: surveyed: found \"soon\", expected a date",
                "UPDATE moisture SET value = 'wet' WHERE fid = 1 | table moisture, row 1: value: found \"wet\","
                        + " expected a number",
                "UPDATE moisture SET value = -1 WHERE fid = 1 | table moisture, row 1: value must not be negative,"
                        + " was -1.0",
                "UPDATE taps SET side = 'left' WHERE fid = 1 | table taps, row 1: side: found \"left\", expected"
                        + " another word",
                "UPDATE plugs SET geom = x'4750' WHERE fid = 1 | table plugs, row 1: geom: found no GeoPackage geometry",
                "UPDATE probes SET geom = (SELECT geom FROM faces) WHERE fid = 1 | table probes, row 1: geom: found 5"
                        + " points, expected 1",
                "UPDATE plan_features SET geom = (SELECT geom FROM plugs) WHERE kind = 'solid' | table plan_features,"
                        + " row 5: found a geometry of another kind than expected",
                "UPDATE plan_features SET kind = 'mast' WHERE fid = 2 | table plan_features, row 2: kind: found"
                        + " \"mast\", expected one of [access, disturbance, divider, fitting, laminate-area, opening,"
                        + " solid, support]",
                "UPDATE settings SET value = 'x' WHERE name = 'likely' | table settings: thresholds.likely: found"
                        + " \"x\", expected a number",
            })
    void saysWhatIsWrongWithAFile(String sql, String problem, @TempDir Path dir) throws Exception {
        Path file = dir.resolve("s.gpkg");
        SurveyFile.create(file, new GeneratedSurveys(1).survey(3));
        Samples.sql(file, sql);

        assertThatThrownBy(() -> SurveyFile.open(file))
                .isInstanceOf(StoreException.class)
                .hasMessage(file + ": " + problem);
        assertThat(dir).isDirectoryNotContaining("glob:**.lock");
    }

    @Test
    void aViewInPlaceOfATableIsNotRead(@TempDir Path dir) throws Exception {
        Path file = dir.resolve("s.gpkg");
        SurveyFile.create(file, new GeneratedSurveys(1).survey(3));
        Samples.sql(file, "ALTER TABLE taps RENAME TO t", "CREATE VIEW taps AS SELECT * FROM t");

        assertThatThrownBy(() -> SurveyFile.read(file))
                .hasMessageEndingWith("table taps is missing; the file is damaged");
    }

    @Test
    void saysThatThereIsNothingOrAFolder(@TempDir Path dir) {
        assertThatThrownBy(() -> SurveyFile.open(dir)).hasMessage(dir + ": is a folder, expected a survey file");
        assertThatThrownBy(() -> SurveyFile.read(dir.resolve("x")))
                .hasMessage(dir.resolve("x") + ": there is no such file");
        Survey survey = new GeneratedSurveys(1).survey(3);
        assertThatThrownBy(() -> SurveyFile.create(dir.resolve("no/x.gpkg"), survey))
                .hasMessage(dir.resolve("no/x.gpkg") + ": there is no such folder to put it in");
    }

    /** Bytes overwritten, cut off or added: a sentence or the same survey, never another exception. */
    @Test
    void damagedBytesAreRefusedOrHarmless(@TempDir Path dir) throws IOException {
        Path file = dir.resolve("s.gpkg");
        SurveyFile.create(file, new GeneratedSurveys(1).survey(3));
        byte[] good = Files.readAllBytes(file);
        int refused = 0;
        for (int seed = 0; seed < 150; seed++) {
            Random random = new Random(seed);
            Files.write(file, good);
            try (RandomAccessFile bytes = new RandomAccessFile(file.toFile(), "rw")) {
                if (seed % 5 == 0) {
                    bytes.setLength(random.nextInt(good.length));
                } else {
                    for (int i = 0; i < 1 + random.nextInt(40); i++) {
                        bytes.seek(seed % 5 == 1 ? random.nextInt(8192) : random.nextInt(good.length));
                        bytes.write(random.nextInt(256));
                    }
                }
            }
            try {
                SurveyFile.read(file);
            } catch (StoreException e) {
                refused++;
                assertThat(e).as("seed %d", seed).hasMessageStartingWith(file + ": ");
            }
        }
        assertThat(refused).isGreaterThan(30); // the cut-off ones at least
    }

    @Test
    void aFullDiskLeavesTheFileAsItWas(@TempDir Path dir) throws Exception {
        Path path = dir.resolve("s.gpkg");
        GeneratedSurveys generated = new GeneratedSurveys(1);
        SurveyFile.create(path, generated.survey(3));
        try (SurveyFile file = SurveyFile.open(path)) {
            Survey before = file.survey();
            file.limitPages();
            List<Moisture> readings = Stream.generate(
                            () -> generated.survey(400).readings().moisture())
                    .filter(l -> l.size() > 300) // more than fit into the free space of the pages there are
                    .findFirst()
                    .orElseThrow();
            Edit many = new Edit.Together(readings.stream()
                    .map(m -> (Edit) new Edit.Insert<>(Part.MOISTURE, 0, m))
                    .toList());

            assertThatThrownBy(() -> file.append(many))
                    .isInstanceOf(StoreException.class)
                    .hasMessage(
                            path.toRealPath() + ": the disk is full; nothing of it was written, save a copy elsewhere");

            assertThat(file.survey()).isEqualTo(before);
            assertThat(file.canUndo()).isFalse();
            assertThat(SurveyFile.read(path)).isEqualTo(before);
        }
    }

    /** A program that reads keeps a commit waiting, and longer than it waits, it is refused. */
    @Test
    void anEditRefusedForAReaderIsNotInTheFileAndTheNextOneIs(@TempDir Path dir) throws Exception {
        Path path = dir.resolve("s.gpkg");
        SurveyFile.create(path, new GeneratedSurveys(1).survey(3));
        Plug refused = new Plug(new Origin("by hand", 0), "refused", new Spot("foredeck", 1, 2), 11);
        Plug taken = new Plug(new Origin("by hand", 0), "taken", new Spot("foredeck", 1, 2), 11);
        Survey before;
        try (SurveyFile file = SurveyFile.open(path)) {
            before = file.survey();
            try (Connection reader = DriverManager.getConnection("jdbc:sqlite:" + path);
                    Statement select = reader.createStatement();
                    ResultSet row = select.executeQuery("SELECT fid FROM heading UNION ALL SELECT fid FROM settings")) {
                assertThat(row.next()).isTrue(); // and is not read to its end
                assertThatThrownBy(() -> file.append(Edit.add(file.survey(), Part.PLUGS, refused)))
                        .isInstanceOf(StoreException.class)
                        .hasMessageEndingWith(": another program is writing to it; close that or try again");
                assertThat(file.survey()).isEqualTo(before);
                assertThat(file.canUndo()).isFalse();
            }

            file.append(Edit.add(file.survey(), Part.PLUGS, taken));
        }

        assertThat(SurveyFile.read(path))
                .isEqualTo(Edit.add(before, Part.PLUGS, taken).apply(before));
        try (SurveyFile file = SurveyFile.open(path)) {
            file.undo();
            assertThat(file.survey()).isEqualTo(before);
            assertThat(file.canUndo()).isFalse();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {9, 20_000})
    void aGeometryNestedDeeplyIsRefused(int deep) {
        ByteBuffer blob = ByteBuffer.allocate(8 + 9 * deep + 21).order(ByteOrder.LITTLE_ENDIAN);
        blob.put("GP\0\1".getBytes(StandardCharsets.US_ASCII)).putInt(-1);
        for (int i = 0; i < deep; i++) {
            blob.put((byte) 1).putInt(7).putInt(1);
        }
        blob.put((byte) 1).putInt(1).putDouble(1).putDouble(2);

        assertThatThrownBy(() -> GeometryBlob.read(blob.array()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("geom: found a geometry nested deeper than 8 collections");
    }

    /** Its words come from the database, several lines of them. */
    @Test
    void aDamagedTreeIsSaidInOneLine(@TempDir Path dir) throws Exception {
        Path path = dir.resolve("s.gpkg");
        SurveyFile.create(path, new GeneratedSurveys(1).survey(40));
        byte[] bytes = Files.readAllBytes(path);
        int page;
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + path);
                Statement select = connection.createStatement();
                ResultSet row = select.executeQuery("SELECT rootpage FROM sqlite_schema WHERE name = 'settings'")) {
            page = row.getInt(1);
        }
        bytes[(page - 1) * 4096 + 7] += 7; // bytes that are in no use (www.sqlite.org/fileformat.html, 1.6)
        Files.write(path, bytes);

        assertThatThrownBy(() -> SurveyFile.read(path))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining(path.toRealPath() + ": is damaged (")
                .hasMessageNotContainingAny("\n", "***");
    }
}
