package corewright.decision.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against other people's figures; files, sources and tolerances in {@code reference/drying/README.md}. */
class DryingReferenceTest {
    /** Of a series, against six printed digits. */
    private static final double SERIES = 1e-6;

    /** Of a numerical inversion of the Laplace transform. */
    private static final double INVERTED = 1e-5;

    private static List<String[]> rows(String file) throws IOException {
        try (var lines = Files.lines(Path.of("src/test/resources/reference/drying", file))) {
            return lines.skip(1).map(l -> l.split(",")).toList();
        }
    }

    @Test
    void equilibriumMoistureIsTheHandbooks() throws IOException {
        List<String[]> rows = rows("emc.csv");
        assertThat(rows).hasSize(126);
        for (String[] row : rows) {
            double ours = EquilibriumMoisture.percent(Double.parseDouble(row[0]), Double.parseDouble(row[1]));
            assertThat(ours).as(String.join(" ", row)).isCloseTo(Double.parseDouble(row[2]), within(0.01));
        }
    }

    /** Points of the printed table (Wood Handbook, table 4-2), 0.1 by its rounding and its degrees Fahrenheit. */
    @ParameterizedTest
    @CsvSource({
        "21.1, 5, 1.3",
        "21.1, 30, 6.2",
        "21.1, 50, 9.2",
        "21.1, 75, 14.4",
        "21.1, 85, 17.9",
        "21.1, 95, 23.9",
        "-1.1, 75, 14.9",
        "-1.1, 95, 24.3",
        "37.8, 50, 8.7",
        "37.8, 90, 19.5"
    })
    void equilibriumMoistureIsThatOfThePrintedTable(double degrees, double humidity, double percent) {
        assertThat(EquilibriumMoisture.percent(degrees, humidity)).isCloseTo(percent, within(0.1));
    }

    @Test
    void aSheetDriesAsCranks() throws IOException {
        List<String[]> rows = rows("crank_slab.csv");
        assertThat(rows).hasSizeGreaterThan(20);
        Sheet sheet = new Sheet(Double.POSITIVE_INFINITY);
        double[] places = {0, 0.25, 0.5, 0.75, 0.9};
        for (String[] row : rows) {
            double time = Double.parseDouble(row[0]);
            assertThat(1 - sheet.mean(time)).as("lost at %s", time).isCloseTo(value(row, 1), within(SERIES));
            assertThat(sheet.last(time)).isCloseTo(value(row, 2), within(SERIES));
            for (int i = 0; i < places.length; i++) {
                assertThat(Sheet.left(places[i], time))
                        .as("left at %s, %s", places[i], time)
                        .isCloseTo(value(row, 2 + i), within(SERIES));
            }
        }
    }

    @Test
    void theTimesAreThoseOfCrank() throws IOException {
        Sheet sheet = new Sheet(Double.POSITIVE_INFINITY);
        for (String[] row : rows("crank_times.csv")) {
            double time = Body.timeTo(sheet::mean, 1 - value(row, 0), Math.PI * Math.PI / 4);
            assertThat(time).as("lost %s", row[0]).isCloseTo(value(row, 1), within(SERIES));
        }
    }

    @Test
    void bodiesWithSurfaceResistanceDryAsTheirLaplaceTransforms() throws IOException {
        List<String[]> rows = rows("laplace.csv");
        assertThat(rows).hasSize(98);
        for (String[] row : rows) {
            double l = row[2].equals("inf") ? Double.POSITIVE_INFINITY : value(row, 2);
            Body body =
                    switch (row[0]) {
                        case "sheet" -> new Sheet(l);
                        case "cylinder" -> new Cylinder(l);
                        default -> new RoundHole(value(row, 1), l);
                    };
            assertThat(body.mean(value(row, 3))).as(String.join(" ", row)).isCloseTo(value(row, 4), within(INVERTED));
            assertThat(body.last(value(row, 3))).as(String.join(" ", row)).isCloseTo(value(row, 5), within(INVERTED));
        }
    }

    /** Explicit steps of the heat equation on a quarter of a block, 60 x 60 cells, error falling with the square of the cell. */
    @Test
    void aBlockIsTheProductOfItsSheets() {
        double ratio = 1.5;
        double l = 2;
        Block block = new Block(new Sheet(l), new Sheet(l * ratio), ratio);
        double time = 0.4;
        double coarse = stepped(30, ratio, l, time);
        double fine = stepped(60, ratio, l, time);
        assertThat((4 * fine - coarse) / 3).isCloseTo(block.mean(time), within(INVERTED));
    }

    private static double stepped(int n, double ratio, double l, double time) {
        double dx = 1.0 / n;
        double dy = ratio / n;
        int steps = 16 * (int) Math.ceil(time / (0.2 * dx * dx) / 16);
        double dt = time / steps;
        double[][] u = new double[n][n];
        for (double[] row : u) {
            java.util.Arrays.fill(row, 1);
        }
        for (int s = 0; s < steps; s++) {
            double[][] v = new double[n][n];
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    double west = i == 0 ? 0 : (u[i - 1][j] - u[i][j]) / dx;
                    double east = i == n - 1 ? -u[i][j] / (1 / l + dx / 2) : (u[i + 1][j] - u[i][j]) / dx;
                    double south = j == 0 ? 0 : (u[i][j - 1] - u[i][j]) / dy;
                    double north = j == n - 1 ? -u[i][j] / (1 / l + dy / 2) : (u[i][j + 1] - u[i][j]) / dy;
                    v[i][j] = u[i][j] + dt * ((west + east) / dx + (south + north) / dy);
                }
            }
            u = v;
        }
        double sum = 0;
        for (double[] row : u) {
            for (double value : row) {
                sum += value;
            }
        }
        return sum / (n * n);
    }

    @Test
    void timesAndSharesAreInverse() {
        for (Body body : List.of(new Sheet(0.7), new Cylinder(3), new RoundHole(8, 0.5))) {
            DoubleUnaryOperator left = body::last;
            for (double share : List.of(0.9, 0.5, 0.1, 0.01)) {
                assertThat(left.applyAsDouble(body.timeTo(share))).isCloseTo(share, within(SERIES));
            }
            assertThat(body.timeTo(1)).isZero();
            assertThat(body.timeTo(0)).isInfinite();
        }
    }

    private static double value(String[] row, int column) {
        return Double.parseDouble(row[column]);
    }
}
