package corewright.store;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;

/** A GeoPackage of what was found or planned, for other programs; no survey file, and not read again. */
public final class FeatureFile {
    private FeatureFile() {}

    /**
     * A table of features.
     *
     * @param name in snake case, as are the columns
     * @param title what it holds, in words
     * @param geometryType as in the standard, such as MULTIPOLYGON
     */
    public record Layer(String name, String title, String geometryType, List<Column> columns, List<Row> rows) {
        public Layer {
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
        }
    }

    /** A column of texts or of numbers; the unit stands in the name. */
    public record Column(String name, boolean number) {}

    /**
     * @param geometry millimetres
     * @param values one for each column
     */
    public record Row(Geometry geometry, List<@Nullable Object> values) {
        public Row {
            values = Collections.unmodifiableList(new ArrayList<>(values));
        }
    }

    /**
     * Writes a new file.
     *
     * @param day dates the contents, so that the same survey gives the same bytes
     */
    public static void write(Path file, LocalDate day, List<Layer> layers) throws IOException {
        try (Connection connection = Database.connect(file, false)) {
            Database.mark(connection);
            connection.setAutoCommit(false);
            Schema.createStandardTables(connection);
            for (Layer layer : layers) {
                create(connection, layer, day);
                insert(connection, layer);
            }
            connection.commit();
        } catch (SQLException e) {
            throw new StoreException(file, String.valueOf(e.getMessage()), e);
        }
    }

    private static void create(Connection connection, Layer layer, LocalDate day) throws SQLException {
        String columns = layer.columns().stream()
                .map(c -> ", " + c.name() + (c.number() ? " DOUBLE" : " TEXT"))
                .collect(Collectors.joining());
        try (Statement statement = connection.createStatement()) {
            statement.executeUpdate("CREATE TABLE " + layer.name() + " (fid INTEGER PRIMARY KEY NOT NULL, geom "
                    + layer.geometryType() + columns + ")");
        }
        try (PreparedStatement contents = connection.prepareStatement(
                "INSERT INTO gpkg_contents (table_name, data_type, identifier, last_change, srs_id)"
                        + " VALUES (?, 'features', ?, ?, " + GeometryBlob.SRS + ")")) {
            contents.setString(1, layer.name());
            contents.setString(2, layer.title());
            contents.setString(3, day + "T00:00:00.000Z");
            contents.executeUpdate();
        }
        try (PreparedStatement geometry = connection.prepareStatement(
                "INSERT INTO gpkg_geometry_columns VALUES (?, 'geom', ?, " + GeometryBlob.SRS + ", 0, 0)")) {
            geometry.setString(1, layer.name());
            geometry.setString(2, layer.geometryType());
            geometry.executeUpdate();
        }
    }

    private static void insert(Connection connection, Layer layer) throws SQLException {
        String places = ", ?".repeat(layer.columns().size());
        try (PreparedStatement insert =
                connection.prepareStatement("INSERT INTO " + layer.name() + " VALUES (NULL, ?" + places + ")")) {
            for (Row row : layer.rows()) {
                insert.setBytes(1, GeometryBlob.write(row.geometry()));
                for (int i = 0; i < row.values().size(); i++) {
                    insert.setObject(i + 2, row.values().get(i));
                }
                insert.executeUpdate();
            }
        }
    }
}
