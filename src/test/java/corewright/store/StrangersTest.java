package corewright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import corewright.GeneratedSurveys;
import corewright.survey.Edit;
import corewright.survey.Finding;
import corewright.survey.Part;
import corewright.survey.Survey;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables that other programs have changed: refused, or put right before anything is read from them or written. */
@Timeout(60)
class StrangersTest {
    private static final Survey SURVEY = new GeneratedSurveys(1).survey(8);
    /** Takes minutes where it is computed for each row. */
    private static final String COSTLY = "length(replace(hex(zeroblob(9000000)), '00', '0'))";

    private Path file = Path.of("");

    @BeforeEach
    void create(@TempDir Path dir) throws Exception {
        file = dir.resolve("s.gpkg");
        SurveyFile.create(file, SURVEY);
    }

    /** A name in double quotes that is no column is a text to the database: sounds became none. */
    @Test
    void everyMissingColumnIsRefused() throws Exception {
        int columns = 0;
        byte[] whole = Files.readAllBytes(file);
        for (Table<?> table : Table.all()) {
            for (String column : table.columns()) {
                Files.write(file, whole);
                if (column.equals("face")) {
                    Samples.sql(file, "DROP INDEX plan_features_order");
                }
                Samples.sql(file, "ALTER TABLE " + table.name() + " DROP COLUMN `" + column + "`");
                String message =
                        file + ": table " + table.name() + ", column " + column + ": is missing; the file is damaged";
                assertThatThrownBy(() -> SurveyFile.read(file)).hasMessage(message);
                assertThatThrownBy(() -> SurveyFile.open(file)).hasMessage(message);
                columns++;
            }
        }
        assertThat(columns).isGreaterThan(150);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "sound TEXT | sound BLOB | table taps, column sound: is of type BLOB, expected TEXT; another program has"
                        + " changed it",
                "sound TEXT | sound TEXT AS ('hollow') | table taps, column sound: is calculated, so it is not safe to"
                        + " open",
                "side TEXT NOT NULL | side TEXT NOT NULL, z TEXT AS (COSTLY) | table taps, column z: is calculated, so"
                        + " it is not safe to open",
                "side TEXT NOT NULL | side TEXT NOT NULL CHECK (COSTLY > 0) | table taps has a rule of another program"
                        + " (CHECK), so it is not safe to open",
                "side TEXT NOT NULL | side TEXT NOT NULL COLLATE NOCASE | table taps has a rule of another program"
                        + " (COLLATE), so it is not safe to open",
                "side TEXT NOT NULL | side TEXT NOT NULL, z TEXT DEFAULT (COSTLY) | table taps has a rule of another"
                        + " program (DEFAULT), so it is not safe to open",
                "side TEXT NOT NULL | side TEXT NOT NULL, z TEXT NOT NULL | table taps, column z: is of another program"
                        + " and must be filled, so it is not safe",
                "fid INTEGER PRIMARY KEY NOT NULL | fid INTEGER | table taps, column fid: is of type INTEGER, expected"
                        + " INTEGER and a key; another program has changed it",
                "id TEXT NOT NULL | id TEXT NOT NULL UNIQUE ON CONFLICT REPLACE | table taps has a rule of another"
                        + " program (CONFLICT), so it is not safe to open",
            })
    void aTableOfAnotherMakeIsRefused(String ours, String theirs, String problem) throws Exception {
        rewrite("taps", ours, theirs.replace("COSTLY", COSTLY));

        assertThatThrownBy(() -> SurveyFile.read(file)).hasMessage(file + ": " + problem);
        assertThatThrownBy(() -> SurveyFile.open(file)).hasMessage(file + ": " + problem);
    }

    @Test
    void theTableThatTellsTheVersionIsCheckedFirst() throws Exception {
        Samples.sql(
                file,
                "DROP TABLE survey_file",
                "CREATE TABLE survey_file (fid INTEGER PRIMARY KEY NOT NULL, name TEXT NOT NULL UNIQUE, value INTEGER"
                        + " AS (" + COSTLY + "))");

        assertThatThrownBy(() -> SurveyFile.read(file))
                .hasMessageEndingWith("table survey_file, column value: is calculated, so it is not safe to open");
    }

    @Test
    void aColumnMoreIsAFinding() throws Exception {
        Samples.sql(file, "ALTER TABLE taps ADD COLUMN weather TEXT");

        try (SurveyFile open = SurveyFile.open(file)) {
            assertThat(open.survey()).isEqualTo(SURVEY);
            assertThat(open.importNotes())
                    .extracting(Finding::message)
                    .containsExactly("Column weather of table taps is not known to this program.");
            open.append(Edit.remove(SURVEY, Part.TAPS, SURVEY.readings().taps().get(0)));
        }
    }

    /** Quotes, case and comments are the business of whoever wrote the file. */
    @Test
    void otherWordsForTheSameTableAreRead() throws Exception {
        Samples.sql(file, "ALTER TABLE taps RENAME TO t", "ALTER TABLE t RENAME TO taps");

        assertThat(SurveyFile.read(file)).isEqualTo(SURVEY);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "CREATE TRIGGER t AFTER UPDATE ON gpkg_contents BEGIN DELETE FROM taps; END",
                "CREATE TRIGGER t BEFORE DELETE ON taps BEGIN SELECT raise(IGNORE); END",
                "CREATE TRIGGER t AFTER DELETE ON taps BEGIN UPDATE moisture SET value = 1; END",
                "CREATE TRIGGER t AFTER DELETE ON taps BEGIN UPDATE moisture SET note = COSTLY; END",
                "CREATE UNIQUE INDEX i ON edits (length(edit) * 0)",
                "CREATE INDEX i ON edits (COSTLY)",
                "CREATE INDEX i ON taps (position, fid) WHERE id <> 'T1'",
            })
    void triggersAndIndexesOfOthersAreGoneBeforeTheFirstEdit(String sql) throws Exception {
        Samples.sql(file, sql.replace("COSTLY", COSTLY));
        Survey before = SurveyFile.read(file);
        try (SurveyFile open = SurveyFile.open(file)) {
            Survey survey = open.survey();
            assertThat(survey).isEqualTo(before);
            if (!survey.readings().taps().isEmpty()) {
                open.append(
                        Edit.remove(survey, Part.TAPS, survey.readings().taps().get(0)));
                open.append(Edit.add(
                        open.survey(), Part.TAPS, survey.readings().taps().get(0)));
                open.undo();
                open.redo();
            }
            assertThat(SurveyFile.read(file)).isEqualTo(open.survey());
            assertThat(open.survey().readings().moisture())
                    .isEqualTo(survey.readings().moisture());
        }
        assertThat(names("type = 'trigger' OR name = 'i'")).isEmpty();
        assertThat(names("name = 'taps_order'")).hasSize(1);
    }

    /** As a geographic tool adds them to count rows. */
    @Test
    void countsOfRowsThatToolsKeepAreRemoved() throws Exception {
        Samples.sql(
                file,
                "CREATE TABLE gpkg_ogr_contents (table_name TEXT NOT NULL PRIMARY KEY, feature_count INTEGER)",
                "INSERT INTO gpkg_ogr_contents VALUES ('taps', 8)",
                "CREATE TRIGGER trigger_delete_feature_count_taps AFTER DELETE ON taps BEGIN UPDATE gpkg_ogr_contents"
                        + " SET feature_count = feature_count - 1 WHERE lower(table_name) = lower('taps'); END");

        SurveyFile.open(file).close();

        assertThat(names("name LIKE '%ogr%' OR type = 'trigger'")).isEmpty();
    }

    private void rewrite(String table, String ours, String theirs) throws Exception {
        String sql = names("name = '" + table + "'", "sql").get(0);
        assertThat(sql).contains(ours);
        Samples.sql(
                file,
                "DROP TABLE " + table,
                sql.replace(ours, theirs),
                "CREATE INDEX " + table + "_order ON " + table + " (position)");
    }

    private List<String> names(String where) throws SQLException {
        return names(where, "name");
    }

    private List<String> names(String where, String column) throws SQLException {
        List<String> names = new ArrayList<>();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("SELECT " + column + " FROM sqlite_schema WHERE " + where)) {
            while (rows.next()) {
                names.add(rows.getString(1));
            }
        }
        return names;
    }
}
