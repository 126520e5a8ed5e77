package corewright.store;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.store.FeatureFile.Column;
import corewright.store.FeatureFile.Layer;
import corewright.store.FeatureFile.Row;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/** Against OGC 12-128r18; a geographic tool reads the demo's file in the server's run. */
class FeatureFileTest {
    private static final LocalDate DAY = LocalDate.of(2026, 4, 2);

    private static List<Layer> layers() {
        var point = new GeometryFactory().createPoint(new Coordinate(12.5, -7));
        return List.of(
                new Layer(
                        "holes",
                        "Holes",
                        "POINT",
                        List.of(new Column("id", false), new Column("depth_mm", true)),
                        List.of(
                                new Row(point, Arrays.asList("R1-1", 9.5)),
                                new Row(point, Arrays.asList("R1-2", null)))),
                new Layer("empty", "Nothing", "MULTIPOLYGON", List.of(), List.of()));
    }

    @Test
    void whatIsWrittenStandsInTables(@TempDir Path dir) throws Exception {
        Path file = dir.resolve("f.gpkg");
        FeatureFile.write(file, DAY, layers());

        try (Connection connection = Database.connect(file, true);
                Statement select = connection.createStatement()) {
            try (ResultSet rows = select.executeQuery("SELECT geom, id, depth_mm FROM holes ORDER BY fid")) {
                assertThat(rows.next()).isTrue();
                assertThat(GeometryBlob.read(rows.getBytes(1)).getCoordinate()).isEqualTo(new Coordinate(12.5, -7));
                assertThat(rows.getString(2)).isEqualTo("R1-1");
                assertThat(rows.getDouble(3)).isEqualTo(9.5);
                assertThat(rows.next()).isTrue();
                assertThat(rows.getObject(3)).isNull();
            }
            try (ResultSet rows = select.executeQuery("SELECT count(*) FROM gpkg_geometry_columns WHERE srs_id = -1")) {
                assertThat(rows.getInt(1)).isEqualTo(2);
            }
            try (ResultSet rows = select.executeQuery("PRAGMA foreign_key_check")) {
                assertThat(rows.next()).isFalse();
            }
        }
    }

    @Test
    void theSameLayersGiveTheSameBytes(@TempDir Path dir) throws Exception {
        FeatureFile.write(dir.resolve("a.gpkg"), DAY, layers());
        FeatureFile.write(dir.resolve("b.gpkg"), DAY, layers());

        assertThat(dir.resolve("a.gpkg")).hasSameBinaryContentAs(dir.resolve("b.gpkg"));
        assertThat(Files.list(dir)).hasSize(2);
    }
}
