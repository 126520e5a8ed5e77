package corewright.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The tables as SQL, one script a version: a new file runs them all, an older file those it has not seen. A script is
 * never changed once files of its version exist.
 */
final class Schema {
    /** The version this program writes; there is a script for each version from 0. */
    static final int VERSION = 10;

    private Schema() {}

    /** Makes all tables; {@code day} dates the contents, so that the same survey gives the same bytes. */
    static void create(Connection connection, LocalDate day) throws SQLException {
        createTables(connection, VERSION);
        try (PreparedStatement date = connection.prepareStatement("UPDATE gpkg_contents SET last_change = ?")) {
            date.setString(1, day + "T00:00:00.000Z");
            date.executeUpdate();
        }
    }

    /** Makes the tables as they were at a version. */
    static void createTables(Connection connection, int version) throws SQLException {
        for (int each = 0; each <= version; each++) {
            run(connection, each);
        }
    }

    /** Brings an older file's tables up to this version; nothing happens to one that is. */
    static void migrate(Connection connection, int from) throws SQLException {
        for (int version = from + 1; version <= VERSION; version++) {
            run(connection, version);
        }
    }

    /**
     * The version of a file that can be read.
     *
     * @throws StoreException where the file is none of ours, or of a version still to come
     */
    static int version(Connection connection, Path file) throws SQLException, StoreException {
        try (Statement select = connection.createStatement();
                ResultSet found = select.executeQuery(
                        "SELECT count(*) FROM sqlite_schema WHERE name = 'survey_file' AND type = 'table'")) {
            if (found.getInt(1) == 0) {
                throw new StoreException(file, "this is a GeoPackage, but not one that holds a survey of this program");
            }
        }
        Strangers.checkState(connection, file);
        long version = State.read(connection, State.SCHEMA_VERSION);
        if (version > VERSION) {
            throw new StoreException(
                    file,
                    "was written by a newer version of this program (tables of version " + version
                            + ", this one knows up to " + VERSION + "); open it with that one");
        }
        if (version < 0) {
            throw new StoreException(file, "does not say which version its tables are of; the file is damaged");
        }
        return (int) version;
    }

    /**
     * Removes the spatial indexes and the counts of rows that geographic tools add: their triggers call functions which
     * only those tools have, so that no row could be added. The tools make them again when asked. The triggers are gone.
     */
    static void dropIndexesOfTools(Connection connection) throws SQLException {
        List<String> drops = new ArrayList<>();
        try (Statement select = connection.createStatement();
                ResultSet found = select.executeQuery(
                        "SELECT name FROM sqlite_schema WHERE type = 'table' AND (name LIKE 'rtree_%_geom'"
                                + " OR (name = 'gpkg_ogr_contents' AND sql NOT LIKE 'CREATE VIRTUAL%'))")) {
            while (found.next()) {
                drops.add("DROP TABLE `" + found.getString(1).replace("`", "``") + '`');
            }
        }
        if (drops.isEmpty()) {
            return;
        }
        try (Statement statement = connection.createStatement();
                ResultSet extensions = statement.executeQuery(
                        "SELECT 1 FROM sqlite_schema WHERE type = 'table' AND name = 'gpkg_extensions'")) {
            if (extensions.next()) {
                drops.add("DELETE FROM gpkg_extensions WHERE extension_name = 'gpkg_rtree_index'");
            }
        }
        try (Statement statement = connection.createStatement()) {
            for (String drop : drops) {
                statement.executeUpdate(drop);
            }
        }
    }

    /** The tables that the standard wants of every GeoPackage, with the undefined Cartesian reference system. */
    static void createStandardTables(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            for (String sql : script(0).split(";\\s*\\n")) {
                if (sql.contains("CREATE TABLE gpkg_") || sql.contains("INSERT INTO gpkg_spatial_ref_sys")) {
                    statement.executeUpdate(sql);
                }
            }
        }
    }

    private static void run(Connection connection, int version) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            for (String sql : script(version).split(";\\s*\\n")) {
                if (!sql.isBlank()) {
                    statement.executeUpdate(sql);
                }
            }
        }
    }

    private static String script(int version) {
        String name = "schema-" + version + ".sql";
        try (InputStream in = Objects.requireNonNull(Schema.class.getResourceAsStream(name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
