package corewright.sandwich;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.sandwich.spec.CoreMaterial;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Patch;
import corewright.sandwich.spec.Skin;
import corewright.sandwich.spec.Support;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Ragged patches, as a map of readings makes them: many short sides, some along grid lines, corners on them. */
class MeshWithoutCracksTest {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    static java.util.stream.IntStream seeds() {
        return java.util.stream.IntStream.range(0, 40);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyBoundaryEdgeOfTheMeshLiesOnTheOutline(int seed) {
        PanelSpec panel = ragged(seed);
        for (double mm : new double[] {25, 12.5, 7.1}) {
            Mesh mesh = Mesher.mesh(panel, MeshSize.uniform(mm));
            for (int[] edge : mesh.boundary) {
                Coordinate middle = new Coordinate(
                        (mesh.x[edge[0]] + mesh.x[edge[1]]) / 2, (mesh.y[edge[0]] + mesh.y[edge[1]]) / 2);
                assertThat(panel.outline().getBoundary().distance(FACTORY.createPoint(middle)))
                        .as("%s at %s mm", middle, mm)
                        .isLessThan(1e-6);
            }
        }
    }

    /** Damage along the side of a bow: its rim runs beside the outline, at times nearer than a cell. */
    @ParameterizedTest
    @MethodSource("seeds")
    void aPatchBesideACurvedOutlineBitesNothingOut(int seed) {
        Random random = new Random(seed);
        PanelSpec panel = bow(random);
        for (double mm : new double[] {42, 25}) {
            Mesh mesh = Mesher.mesh(panel, MeshSize.uniform(mm));
            for (int[] edge : mesh.boundary) {
                for (int v : edge) {
                    assertThat(panel.outline()
                                    .getBoundary()
                                    .distance(FACTORY.createPoint(new Coordinate(mesh.x[v], mesh.y[v]))))
                            .as("node at %.1f %.1f, %s mm", mesh.x[v], mesh.y[v], mm)
                            .isLessThan(1e-6);
                }
            }
        }
    }

    /** Rims of a raster beside outlines of many shapes, of {@link MeshFuzz} some that had nodes of the edge 20 to 34 mm inside. */
    @ParameterizedTest
    @ValueSource(ints = {20, 22, 26, 32, 37})
    void stairsBesideAnOutlineLeaveItWhole(int seed) {
        assertThat(MeshFuzz.flaws(MeshFuzz.panel(seed))).isEmpty();
    }

    private static PanelSpec bow(Random random) {
        List<Coordinate> ring = new ArrayList<>();
        for (int k = -20; k <= 20; k++) {
            ring.add(new Coordinate(4.5 * k * k, 43 * k));
        }
        ring.add(ring.get(0));
        Polygon outline = FACTORY.createPolygon(ring.toArray(Coordinate[]::new));
        List<Patch> patches = new ArrayList<>();
        CoreMaterial balsa = new CoreMaterial(157, 157, 3900);
        for (int k = 0; k < 4; k++) {
            int at = random.nextInt(30) - 15;
            Coordinate c = new Coordinate(4.5 * at * at + 200 * random.nextDouble(), 43 * at);
            double size = 60 + 150 * random.nextDouble();
            var blob = FACTORY.createPoint(c).buffer(size, 4).intersection(outline);
            patches.add(new Patch.Core(blob, balsa));
        }
        Skin skin = Skin.isotropic(2.8, 10050, 0.3);
        return new PanelSpec(outline, List.of(Support.SIMPLE), skin, skin, new PanelSpec.Core(9.5, balsa), patches);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3, 7, 16, 26})
    void aPatchOfTheSameCoreChangesNothing(int seed) {
        PanelSpec panel = ragged(seed);
        Coordinate foot = new Coordinate(290, 410);
        double with = FootLoadMap.at(PanelModel.of(panel, MeshSize.uniform(20)), List.of(foot))
                .softest()
                .deflectionMm();
        double without = FootLoadMap.at(PanelModel.of(panel.with(List.of()), MeshSize.uniform(20)), List.of(foot))
                .softest()
                .deflectionMm();
        // other elements, the same panel: twice the discretisation error of 25 mm elements, 0.6 %
        assertThat(with).isCloseTo(without, within(0.012 * without));
    }

    private static PanelSpec ragged(int seed) {
        Random random = new Random(seed);
        List<Coordinate> ring = new ArrayList<>();
        for (int k = 0; k < 36; k++) {
            double r = 90 + 110 * random.nextDouble();
            double angle = 2 * Math.PI * k / 36;
            // half the corners lie on lines of a 12.5 mm raster, as where a contour crosses cells
            double x = 280 + r * Math.cos(angle);
            double y = 440 + 1.6 * r * Math.sin(angle);
            ring.add(
                    k % 2 == 0
                            ? new Coordinate(12.5 * Math.rint(x / 12.5), y)
                            : new Coordinate(x, 12.5 * Math.rint(y / 12.5)));
        }
        ring.add(ring.get(0));
        Polygon area = (Polygon) FACTORY.createPolygon(ring.toArray(Coordinate[]::new));
        CoreMaterial balsa = new CoreMaterial(157, 157, 3900);
        Skin skin = Skin.isotropic(2.8, 10050, 0.3);
        Polygon outline = (Polygon) FACTORY.createPolygon(new Coordinate[] {
            new Coordinate(0, 0),
            new Coordinate(560, 0),
            new Coordinate(560, 850),
            new Coordinate(0, 930),
            new Coordinate(0, 0)
        });
        return new PanelSpec(
                outline,
                List.of(Support.SIMPLE),
                skin,
                skin,
                new PanelSpec.Core(9.5, balsa),
                List.of(new Patch.Core(area.buffer(0), balsa)));
    }
}
