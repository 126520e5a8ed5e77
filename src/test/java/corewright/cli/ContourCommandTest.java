package corewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.geom.Coordinate;

class ContourCommandTest {
    private static final String RING = "src/test/resources/reference/contour/ring_h100.asc";

    @TempDir
    Path folder = Path.of("");

    private Path out = folder;
    private final StringWriter printed = new StringWriter();
    private final StringWriter complained = new StringWriter();

    @BeforeEach
    void nameTheOutput() {
        out = folder.resolve("bands.geojson");
    }

    private int contour(String grid, String levels, String... more) {
        List<String> args =
                new ArrayList<>(List.of("contour", "--grid", grid, "--levels", levels, "--out", out.toString()));
        args.addAll(List.of(more));
        return Corewright.run(new PrintWriter(printed), new PrintWriter(complained), args.toArray(new String[0]));
    }

    @Test
    void writesOneFeatureABandWithItsLevelsAndTheRightHandRule() throws IOException {
        assertThat(contour(RING, "0.5,0.8")).isEqualTo(Corewright.DONE);
        JsonNode features = new ObjectMapper().readTree(out.toFile()).get("features");
        assertThat(features).hasSize(3);
        assertThat(features.get(0).get("properties").get("lower").isNull()).isTrue();
        assertThat(features.get(0).get("properties").get("upper").asDouble()).isEqualTo(0.5);
        assertThat(features.get(2).get("properties").get("lower").asDouble()).isEqualTo(0.8);
        assertThat(features.get(2).get("properties").get("upper").isNull()).isTrue();
        double sum = 0;
        for (JsonNode feature : features) {
            sum += area(feature.get("geometry"));
        }
        assertThat(sum).as("5.5 x 3.2, the box of the reference").isCloseTo(17.6, within(17.6e-9));
    }

    /** Signed areas: positive only when outer rings run counter-clockwise and holes clockwise, RFC 7946 3.1.6. */
    private static double area(JsonNode geometry) {
        boolean single = geometry.get("type").asText().equals("Polygon");
        double sum = 0;
        for (JsonNode polygon : single ? List.of(geometry.get("coordinates")) : geometry.get("coordinates")) {
            for (int ring = 0; ring < polygon.size(); ring++) {
                double signed = -Area.ofRingSigned(coordinates(polygon.get(ring))); // JTS counts clockwise positive
                assertThat(signed > 0).isEqualTo(ring == 0);
                sum += signed;
            }
        }
        return sum;
    }

    private static Coordinate[] coordinates(JsonNode ring) {
        List<Coordinate> places = new ArrayList<>();
        ring.forEach(
                p -> places.add(new Coordinate(p.get(0).asDouble(), p.get(1).asDouble())));
        return places.toArray(new Coordinate[0]);
    }

    @Test
    void printsAreasAsJsonWhenAsked() throws IOException {
        assertThat(contour(RING, "0.5", "--json")).isEqualTo(Corewright.DONE);
        JsonNode bands = new ObjectMapper().readTree(printed.toString()).get("bands");
        assertThat(bands).hasSize(2);
        assertThat(bands.get(1).get("area").asDouble()).isCloseTo(2.10394712, within(0.0173)); // GDAL 3.6.2
    }

    @Test
    void sameInputGivesTheSameBytes() throws IOException {
        contour(RING, "0.5,0.8");
        byte[] first = Files.readAllBytes(out);
        contour(RING, "0.5,0.8");
        assertThat(Files.readAllBytes(out)).isEqualTo(first);
    }

    @Test
    void aBadGridIsRefusedWithItsPlaceAndLeavesTheOldFileAlone() throws IOException {
        Path bad = Files.writeString(
                folder.resolve("bad.asc"), "ncols 2\nnrows 1\nxllcorner 0\nyllcorner 0\ncellsize 1\n1 l.5\n");
        Files.writeString(out, "old");
        assertThat(contour(bad.toString(), "1")).isEqualTo(Corewright.REFUSED);
        assertThat(complained.toString()).contains("bad.asc:6: found \"l.5\", expected a number");
        assertThat(out).hasContent("old");
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).containsExactlyInAnyOrder(bad, out);
        }
    }

    @Test
    void aMissingGridIsRefusedByName() {
        assertThat(contour("nowhere.asc", "1")).isEqualTo(Corewright.REFUSED);
        assertThat(complained.toString()).contains("nowhere.asc");
        assertThat(out).doesNotExist();
    }

    @Test
    void levelsThatAreNoNumbersAreWrongUse() {
        assertThat(contour(RING, "0.5,half")).isEqualTo(Corewright.WRONG_USE);
        assertThat(contour(RING, "NaN")).isEqualTo(Corewright.WRONG_USE);
        assertThat(complained.toString()).contains("half", "not finite");
    }

    @Test
    void theGridIsNeverOverwritten() throws IOException {
        Path grid = Files.copy(Path.of(RING), out);
        assertThat(contour(grid.toString(), "0.5")).isEqualTo(Corewright.WRONG_USE);
        assertThat(grid).hasSameBinaryContentAs(Path.of(RING));
    }

    @Test
    void aGridWithoutDataGivesAnEmptyCollection() throws IOException {
        Path empty = Files.writeString(
                folder.resolve("e.asc"), "ncols 2\nnrows 1\nxllcorner 0\nyllcorner 0\ncellsize 1\n-9999 -9999\n");
        assertThat(contour(empty.toString(), "1")).isEqualTo(Corewright.DONE);
        assertThat(new ObjectMapper().readTree(out.toFile()).get("features")).isEmpty();
    }
}
