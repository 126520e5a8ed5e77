package corewright.sandwich;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Patch;
import corewright.sandwich.spec.Skin;
import corewright.sandwich.spec.Support;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

class GridLinesTest {
    /**
     * A rounded region against the deck edge it was cut from, as a survey of a curved foredeck gave them, less the corners that
     * do not matter: two lines 4e-10 mm apart, at which {@code Geometry.intersection} throws a TopologyException.
     */
    @Test
    void panelWhoseDamageNearlyFollowsItsEdgeIsMeshed() throws ParseException {
        Geometry edge = read("POLYGON((2224 1097.4,2316.4 1120,1207.6 -808.7,2224 1097.4))");
        Geometry region = read("POLYGON((2041.73439982495 613.2951369188158,2228.9142890930193 1098.6019797998079,"
                + "2224 1097.4000000003725,2251.7018280373068 1104.1755553424582,"
                + "2280.7539240590195 1111.2813710360806,2041.73439982495 613.2951369188158))");
        Skin skin = Skin.isotropic(3, 11000, 0.3);
        PanelSpec panel = new PanelSpec(
                (Polygon) edge,
                List.of(Support.SIMPLE),
                skin,
                skin,
                new PanelSpec.Core(9.5, Panels.BALSA),
                List.of(new Patch.Loose(region, 3)));

        Mesh mesh = Mesher.mesh(panel, MeshSize.uniform(20));

        double[] areas = Partition.areas(panel);
        assertThat(areas[0] + areas[1]).isCloseTo(edge.getArea(), within(1e-6));
        double loose = IntStream.range(0, mesh.cells.length)
                .filter(c -> mesh.zone[c] == 1)
                .mapToDouble(c -> mesh.shape(c).area())
                .sum();
        // chords and cells of 20 mm across a region of some 100 mm; nearer to the outline than a cell its rim yields to
        // the outline's nodes,
        // without which a panel was held inside its outline
        assertThat(loose).isCloseTo(areas[1], withinPercentage(20));
    }

    private static Geometry read(String text) throws ParseException {
        return new WKTReader().read(text);
    }
}
