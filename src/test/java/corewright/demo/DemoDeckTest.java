package corewright.demo;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.cli.Corewright;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;

/** The demo under {@code demo-data} is what its generator makes; {@code -Ddemo.update=true} rewrites it. */
class DemoDeckTest {
    private static final Path FOLDER = Path.of("demo-data");

    @Test
    void checkedInFilesAreWhatTheGeneratorMakes() throws IOException {
        Map<String, String> files = DemoFiles.all();
        if (Boolean.getBoolean("demo.update")) {
            for (Map.Entry<String, String> file : files.entrySet()) {
                Path path = FOLDER.resolve(file.getKey());
                Files.createDirectories(path.getParent());
                Files.writeString(path, file.getValue());
            }
        }
        for (Map.Entry<String, String> file : files.entrySet()) {
            assertThat(Files.readString(FOLDER.resolve(file.getKey())))
                    .as(file.getKey())
                    .isEqualTo(file.getValue());
        }
    }

    @Test
    void theSurveyIsReadWithoutComplaint() {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = Corewright.run(
                new PrintWriter(out),
                new PrintWriter(err),
                "check",
                FOLDER.resolve(DemoFiles.BOAT).toString());
        assertThat(status).as(out + "\n" + err).isZero();
    }

    /** What the readings must show so that every method and every doubt has something to work on. */
    @Test
    void theReadingsHoldWhatTheReadmeSays() {
        Map<String, String> files = DemoFiles.all();
        assertThat(rows(files, "moisture.csv"))
                .hasSizeBetween(240, 270)
                .filteredOn(r -> r.contains("needle at its stop"))
                .hasSize(2);
        assertThat(rows(files, "taps.csv"))
                .hasSizeBetween(290, 330)
                .filteredOn(r -> r.contains("boat deck,1360,480,"))
                .singleElement()
                .asString()
                .endsWith("hollow");
        assertThat(rows(files, "probes.csv")).hasSize(21);
        assertThat(Truth.isLoose(Plan.DECK, 1360, 480)).isFalse();
        assertThat(Truth.isWet(Plan.DECK, 2610, -540)).isFalse();
        assertThat(rows(files, "moisture.csv"))
                .filteredOn(r -> r.contains("boat deck,2610,-540,"))
                .singleElement()
                .satisfies(r -> assertThat(Integer.parseInt(r.split(",")[4]))
                        .as("falsely high beside the port davit foot")
                        .isGreaterThan(25));
    }

    /** Rods, plugs and reference readings were written down by hand: they must agree with the truth. */
    @Test
    void whatWasWrittenByHandAgreesWithTheTruth() {
        Map<String, String> files = DemoFiles.all();
        for (String row : rows(files, "feelers.csv")) {
            String[] r = row.split(",");
            double x1 = Double.parseDouble(r[2]);
            double y1 = Double.parseDouble(r[3]);
            double dx = Double.parseDouble(r[4]) - x1;
            double dy = Double.parseDouble(r[5]) - y1;
            for (int tenth = 0; tenth < 10; tenth++) {
                assertThat(Truth.depthMm(r[1], x1 + 0.1 * tenth * dx, y1 + 0.1 * tenth * dy))
                        .as("%s, tenth %d of its way", r[0], tenth)
                        .isPositive();
            }
            assertThat(Truth.isLoose(r[1], x1 + 1.1 * dx, y1 + 1.1 * dy)) // F2 is 67 mm long: within 7 mm of the edge
                    .as(r[0])
                    .isEqualTo(r[6].equals("beyond"));
        }
        for (String row : rows(files, "plugs.csv")) {
            String[] r = row.split(",");
            assertThat(Truth.isWet(r[1], Double.parseDouble(r[2]), Double.parseDouble(r[3])))
                    .as(r[0])
                    .isEqualTo(Double.parseDouble(r[4]) > 25); // fibre saturation of balsa lies near 30 %
        }
        assertThat(rows(files, "moisture.csv"))
                .filteredOn(row -> row.split(",", -1)[6].equals("yes"))
                .hasSize(5)
                .allSatisfy(row -> {
                    String[] r = row.split(",", -1);
                    assertThat(Truth.wetness(r[1], Double.parseDouble(r[2]), Double.parseDouble(r[3])))
                            .isLessThan(0.01);
                });
    }

    /** Openings and fittings lie on their face, and no water crosses the rib. */
    @Test
    void thePlanHoldsTogether() {
        for (Plan.Fitting f : Plan.FITTINGS) {
            assertThat(Plan.core(f.face()).contains(point(f.x(), f.y())))
                    .as(f.name())
                    .isTrue();
        }
        for (double y = -800; y <= 800; y += 10) {
            assertThat(Truth.isWet(Plan.DECK, Plan.DIVIDER_X - 1, y) && Truth.isWet(Plan.DECK, Plan.DIVIDER_X + 1, y))
                    .isFalse();
        }
        assertThat(Truth.DAMAGES).anyMatch(d -> d.rho(Plan.DIVIDER_X, d.shape().y()) < 1);
    }

    private static Point point(double x, double y) {
        return new GeometryFactory().createPoint(new Coordinate(x, y));
    }

    private static List<String> rows(Map<String, String> files, String name) {
        return files.getOrDefault(DemoFiles.BOAT + "/" + name, "")
                .lines()
                .skip(1)
                .toList();
    }
}
