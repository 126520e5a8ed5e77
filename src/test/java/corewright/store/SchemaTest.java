package corewright.store;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.GeneratedSurveys;
import corewright.survey.Edit;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.FrozenPlan;
import corewright.survey.Judgements;
import corewright.survey.Laminate;
import corewright.survey.Part;
import corewright.survey.Survey;
import corewright.survey.WorkEntry;
import corewright.survey.settings.Resin;
import corewright.survey.settings.Settings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The tables against the standard (OGC 12-128r18, GeoPackage 1.3.1) and against the records; older versions. */
class SchemaTest {
    private static final List<String> SINCE_VERSION_0 =
            List.of("method_overrides", "reading_overrides", "moved_holes", "import_notes", "loads", "cured_taps");

    @Test
    void theScriptsHaveTheColumnsOfTheRecords(@TempDir Path dir) throws Exception {
        Path file = create(dir);
        for (Table<?> table : Table.all()) {
            List<String> columns = strings(
                    file,
                    "SELECT name FROM pragma_table_info('" + table.name() + "') WHERE name NOT IN ('fid', 'position')");
            assertThat(columns).as(table.name()).containsExactlyInAnyOrderElementsOf(table.columns());
        }
    }

    @Test
    void theFileIsMarkedAsTheStandardWants(@TempDir Path dir) throws Exception {
        Path file = create(dir);
        byte[] head = Files.readAllBytes(file);

        assertThat(new String(head, 0, 15, java.nio.charset.StandardCharsets.US_ASCII))
                .isEqualTo("SQLite format 3");
        assertThat(new String(head, 68, 4, java.nio.charset.StandardCharsets.US_ASCII))
                .isEqualTo("GPKG"); // req. 2
        assertThat(strings(file, "PRAGMA user_version")).containsExactly("10300");
        assertThat(strings(file, "PRAGMA integrity_check")).containsExactly("ok"); // req. 6
        assertThat(strings(file, "PRAGMA foreign_key_check")).isEmpty(); // req. 7
        assertThat(strings(file, "SELECT srs_id FROM gpkg_spatial_ref_sys ORDER BY 1")) // req. 11
                .containsExactly("-1", "0", "4326");
    }

    @Test
    void everyTableIsListedAndEveryFeatureTableHasItsGeometry(@TempDir Path dir) throws Exception {
        Path file = create(dir);

        List<String> tables =
                strings(file, "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'gpkg%'");
        assertThat(strings(file, "SELECT table_name FROM gpkg_contents")).containsExactlyInAnyOrderElementsOf(tables);
        assertThat(strings(file, "SELECT table_name FROM gpkg_geometry_columns WHERE srs_id = -1"))
                .containsExactlyInAnyOrderElementsOf(
                        strings(file, "SELECT table_name FROM gpkg_contents WHERE data_type = 'features'"));
    }

    @Test
    void aFileOfVersion0IsBroughtUpToDateWhenOpenedForWork(@TempDir Path dir) throws Exception {
        Path file = create(dir);
        Survey survey = SurveyFile.read(file);
        makeVersion0(file);

        try (SurveyFile open = SurveyFile.open(file)) {
            assertThat(open.survey()).isEqualTo(asOfVersion0(survey));
            open.append(Edit.add(
                    open.survey(), Part.HOLES, survey.judgements().holes().get(0)));
        }

        assertThat(strings(file, "SELECT value FROM survey_file WHERE name = 'schema_version'"))
                .containsExactly("10");
        assertThat(SurveyFile.read(file).judgements().holes()).hasSize(1);
    }

    @Test
    void aFileOfVersion0IsReadWithoutBeingChanged(@TempDir Path dir) throws Exception {
        Path file = create(dir);
        Survey survey = SurveyFile.read(file);
        assertThat(survey.faces())
                .flatExtracting(f -> f.all(Feature.Opening.class))
                .anyMatch(o -> o.coaming().isPresent());
        makeVersion0(file);
        byte[] before = Files.readAllBytes(file);

        assertThat(SurveyFile.read(file)).isEqualTo(asOfVersion0(survey));
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
    }

    /** Triggers as a geographic tool adds them with its spatial index; ST_IsEmpty is unknown outside of it. */
    @Test
    void spatialIndexesOfOtherToolsDoNotStandInTheWay(@TempDir Path dir) throws Exception {
        Path file = create(dir);
        Samples.sql(
                file,
                "CREATE VIRTUAL TABLE rtree_plugs_geom USING rtree(id, minx, maxx, miny, maxy)",
                "CREATE TRIGGER rtree_plugs_geom_insert AFTER INSERT ON plugs WHEN NOT ST_IsEmpty(NEW.geom) BEGIN"
                        + " INSERT INTO rtree_plugs_geom VALUES (NEW.fid, 0, 0, 0, 0); END",
                "CREATE TABLE gpkg_extensions (table_name TEXT, extension_name TEXT)",
                "INSERT INTO gpkg_extensions VALUES ('plugs', 'gpkg_rtree_index')");

        try (SurveyFile open = SurveyFile.open(file)) {
            open.append(Edit.add(
                    open.survey(), Part.PLUGS, open.survey().readings().plugs().get(0)));
        }

        assertThat(strings(file, "SELECT name FROM sqlite_schema WHERE name LIKE 'rtree%'"))
                .isEmpty();
        assertThat(strings(file, "SELECT table_name FROM gpkg_extensions")).isEmpty();
    }

    private static Path create(Path dir) throws IOException {
        Path file = dir.resolve("s.gpkg");
        SurveyFile.create(file, new GeneratedSurveys(2).survey(4));
        return file;
    }

    private static void makeVersion0(Path file) throws SQLException {
        Samples.makeVersion6(file);
        for (String table : SINCE_VERSION_0) {
            Samples.sql(
                    file,
                    "DROP TABLE " + table,
                    "DELETE FROM gpkg_geometry_columns WHERE table_name = '" + table + "'",
                    "DELETE FROM gpkg_contents WHERE table_name = '" + table + "'");
        }
        Samples.sql(
                file,
                "ALTER TABLE resins DROP COLUMN shear_strength_mpa",
                "ALTER TABLE resins DROP COLUMN crush_mpa",
                "ALTER TABLE resins DROP COLUMN bond_shear_mpa",
                "ALTER TABLE resins DROP COLUMN bond_peel_mpa",
                "ALTER TABLE plan_features DROP COLUMN coaming_height_mm",
                "ALTER TABLE plan_features DROP COLUMN coaming_thickness_mm",
                "ALTER TABLE plan_features DROP COLUMN coaming_skin",
                "ALTER TABLE laminates DROP COLUMN core_form",
                "ALTER TABLE laminates DROP COLUMN solid_edge_mm",
                "UPDATE survey_file SET value = 0 WHERE name = 'schema_version'");
    }

    private static Survey asOfVersion0(Survey all) {
        Survey s = Part.CURED_TAPS.with(all, List.of());
        return new Survey(
                s.heading(),
                s.faces().stream().map(SchemaTest::withoutCoamings).toList(),
                s.meters(),
                s.laminates().stream()
                        .map(l -> new Laminate(
                                l.name(),
                                l.outerSkinMm(),
                                l.coreMm(),
                                l.innerSkinMm(),
                                l.skin(),
                                l.core(),
                                l.measured()))
                        .toList(),
                s.materials(),
                s.readings(),
                withoutStrengths(s.settings()),
                s.log().stream()
                        .map(e -> new WorkEntry(e.origin(), e.hole(), e.afterS(), e.grams(), e.oozeAt()))
                        .toList(),
                s.photos(),
                Judgements.NONE,
                List.of(),
                FrozenPlan.NONE);
    }

    private static Face withoutCoamings(Face face) {
        return face.with(face.features().stream()
                .map(f -> f instanceof Feature.Opening o
                        ? new Feature.Opening(o.origin(), o.name(), o.geometry(), o.edge())
                        : f)
                .toList());
    }

    private static Settings withoutStrengths(Settings s) {
        return new Settings(
                s.thresholds(),
                s.drilling(),
                s.resins().stream()
                        .map(r -> new Resin(
                                r.name(),
                                r.hardenerPerResin(),
                                r.densityKgM3(),
                                r.expansion(),
                                r.pack(),
                                r.viscosityPaS(),
                                r.workS(),
                                r.firstRiseS(),
                                r.riseEndS(),
                                r.gelS(),
                                r.hardS(),
                                r.referenceC(),
                                r.structural(),
                                0,
                                0,
                                0,
                                0,
                                r.source()))
                        .toList(),
                s.costs(),
                s.crew(),
                s.climate(),
                s.numerics(),
                s.terms(),
                s.drying(),
                s.goal(),
                s.letterhead());
    }

    private static List<String> strings(Path file, String sql) throws SQLException {
        List<String> strings = new ArrayList<>();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(sql)) {
            while (rows.next()) {
                strings.add(rows.getString(1));
            }
        }
        return strings;
    }
}
