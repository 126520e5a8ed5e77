package corewright.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;

/** Does to survey files what other programs, other versions and bad luck do. */
final class Samples {
    private Samples() {}

    static void sql(Path file, String... statements) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            for (String each : statements) {
                statement.executeUpdate(each);
            }
        }
    }

    /** Takes away what versions 7 to 9 brought. */
    static void makeVersion6(Path file) throws SQLException {
        for (String table : List.of(
                "rule_overrides",
                "repair_plan",
                "planned_regions",
                "planned_holes",
                "planned_cuts",
                "planned_cups",
                "planned_purchases")) {
            sql(
                    file,
                    "DROP TABLE " + table,
                    "DELETE FROM gpkg_geometry_columns WHERE table_name = '" + table + "'",
                    "DELETE FROM gpkg_contents WHERE table_name = '" + table + "'");
        }
        for (String column : List.of(
                "cup",
                "vent_shown",
                "depth_felt_mm",
                "leak",
                "stopped",
                "note",
                "who",
                "resin_lot",
                "card_revision",
                "lift")) {
            sql(file, "ALTER TABLE work_log DROP COLUMN " + column);
        }
        sql(file, "ALTER TABLE moved_holes DROP COLUMN kind", "ALTER TABLE method_overrides DROP COLUMN who");
        sql(file, "UPDATE survey_file SET value = 6 WHERE name = 'schema_version'");
    }
}
