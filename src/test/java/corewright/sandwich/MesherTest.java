package corewright.sandwich;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Patch;
import corewright.sandwich.spec.Skin;
import corewright.sandwich.spec.Support;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

class MesherTest {
    private static final Skin SKIN = Skin.isotropic(3, 11000, 0.3);

    /** Random outlines with an opening and three patches: every zone keeps its area but for chords of arcs. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void everyZoneKeepsItsArea(long seed) {
        Random random = new Random(seed);
        Polygon outline = (Polygon)
                blob(random, 500, 300, 400, 250).difference(blob(random, 600 + 40 * random.nextDouble(), 300, 60, 60));
        List<Patch> patches = List.of(
                new Patch.Loose(blob(random, 400, 320, 120, 80), 12.5),
                new Patch.Core(Panels.turned(Panels.rectangle(500, -150, 620, -40), 20 + seed), Panels.FOAM),
                new Patch.Loose(blob(random, 300, 200, 60, 40), 4));
        PanelSpec panel = panel(outline, patches);

        Mesh mesh = Mesher.mesh(panel, MeshSize.uniform(15));

        double[] exact = Partition.areas(panel);
        double[] meshed = new double[exact.length];
        for (int c = 0; c < mesh.cells.length; c++) {
            double area = mesh.shape(c).area();
            assertThat(area).isPositive();
            meshed[mesh.zone[c]] += area;
        }
        double whole = outline.getArea();
        for (int z = 0; z < exact.length; z++) {
            assertThat(meshed[z]).as("zone %d", z).isCloseTo(exact[z], within(0.004 * whole));
        }
    }

    @Test
    void polygonsWithFewCornersAreMetExactly() {
        Polygon outline = (Polygon) Panels.turned(Panels.rectangle(0, 0, 900, 600), 30);
        Geometry patch = Panels.turned(Panels.rectangle(203, 151, 478, 391), 30);
        PanelSpec panel = panel(outline, List.of(new Patch.Loose(patch, 12.5)));

        Mesh mesh = Mesher.mesh(panel, MeshSize.uniform(25));

        double loose = 0;
        double all = 0;
        for (int c = 0; c < mesh.cells.length; c++) {
            all += mesh.shape(c).area();
            loose += mesh.zone[c] == 1 ? mesh.shape(c).area() : 0;
        }
        assertThat(all).isCloseTo(900 * 600, within(1e-3));
        assertThat(loose).isCloseTo(275 * 240, within(1e-3));
    }

    @Test
    void saysWhichPatchIsTooSmall() {
        PanelSpec panel = panel(
                Panels.rectangle(0, 0, 900, 600),
                List.of(new Patch.Core(Panels.ellipse(407, 311, 4, 300), Panels.FOAM)));

        // the panel cuts off one tip of π 4 · 300 = 3770 mm²
        PanelModel model = PanelModel.of(panel, MeshSize.uniform(50));

        assertThat(model.notes()).anyMatch(n -> n.startsWith("patch 1 covers 3754 mm²"));
    }

    private static PanelSpec panel(Polygon outline, List<Patch> patches) {
        return new PanelSpec(
                outline, List.of(Support.SIMPLE), SKIN, SKIN, new PanelSpec.Core(12.5, Panels.BALSA), patches);
    }

    /** A smooth closed curve about a centre. */
    private static Polygon blob(Random random, double cx, double cy, double a, double b) {
        double phase = 2 * Math.PI * random.nextDouble();
        double wave = 0.15 * random.nextDouble();
        Coordinate[] ring = new Coordinate[129];
        for (int k = 0; k < 129; k++) {
            double t = 2 * Math.PI * (k % 128) / 128;
            double r = 1 + wave * Math.cos(3 * t + phase);
            ring[k] = new Coordinate(cx + a * r * Math.cos(t), cy + b * r * Math.sin(t));
        }
        return new GeometryFactory().createPolygon(ring);
    }
}
