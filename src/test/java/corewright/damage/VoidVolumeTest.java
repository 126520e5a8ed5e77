package corewright.damage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.contour.Raster;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Solids of exactly known volume (src/test/resources/reference/volume: formulae and sources in its README). */
class VoidVolumeTest {
    private static final Path FOLDER = Path.of("src/test/resources/reference/volume");

    /** Tolerances: the reference's, about twice what the midpoint rule leaves at 25 mm. */
    @ParameterizedTest
    @CsvSource({"V1_paraboloid, 2.226603793, 0.003", "V2_frustum_L, 6.08094528, 0.003", "V3_hipped, 5.732, 0.005"})
    void sumsAGridToTheExactVolume(String solid, double exactLitres, double tolerance) throws IOException {
        Raster depth = raster(points(solid + "_grid25mm.csv"), 25);
        Surfaces surfaces = new Surfaces(depth, depth, depth, depth, depth, depth, depth);

        double litres = surfaces.expectedVoidMm3() / 1e6;

        assertThat(litres / exactLitres).isCloseTo(1, within(tolerance));
    }

    /**
     * Four hundred scattered pilot holes into a core thick enough for the deepest place. The surface is held to the
     * reference's tolerance for any good interpolation, 3 %; the draws, widened on purpose, only to holding the truth.
     */
    @ParameterizedTest
    @CsvSource({
        "V1_paraboloid, 2.226603793, 'POLYGON((800 500,1800 500,1800 1300,800 1300,800 500))'",
        "V2_frustum_L, 6.08094528, 'POLYGON((1000 500,3000 500,3000 1500,2000 1500,2000 2500,1000 2500,1000 500))'",
        "V3_hipped, 5.732, 'POLYGON((3000 500,4300 500,4300 1400,3000 1400,3000 500))'"
    })
    void findsTheVolumeFromScatteredPilotHoles(String solid, double exactLitres, String outline) throws IOException {
        Deck deck = new Deck(outline);
        deck.coreMm = 25;
        for (double[] p : points(solid + "_scatter400.csv")) {
            deck.probes(p[0], p[1], p[2], null, null);
        }

        FaceDamage map = deck.map();

        assertThat(map.surfaces().expectedVoidMm3() / 1e6 / exactLitres).isCloseTo(1, within(0.03));
        assertThat(exactLitres * 1e6)
                .isBetween(map.voidMm3().p10(), map.voidMm3().p90());
    }

    /** Millimetres. */
    private static List<double[]> points(String file) throws IOException {
        List<double[]> points = new ArrayList<>();
        List<String> lines = Files.readAllLines(FOLDER.resolve(file));
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",", -1);
            points.add(new double[] {
                1000 * Double.parseDouble(cells[0]),
                1000 * Double.parseDouble(cells[1]),
                1000 * Double.parseDouble(cells[2])
            });
        }
        return points;
    }

    private static Raster raster(List<double[]> points, double cell) {
        double x0 = points.stream().mapToDouble(p -> p[0]).min().orElseThrow() - cell / 2;
        double y0 = points.stream().mapToDouble(p -> p[1]).min().orElseThrow() - cell / 2;
        int columns =
                (int) Math.round((points.stream().mapToDouble(p -> p[0]).max().orElseThrow() - x0) / cell + 0.5);
        double[] values = new double[points.size()];
        for (double[] p : points) {
            values[(int) ((p[1] - y0) / cell) * columns + (int) ((p[0] - x0) / cell)] = p[2];
        }
        return new Raster(x0, y0, cell, points.size() / columns, columns, values);
    }
}
