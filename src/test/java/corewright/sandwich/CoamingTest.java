package corewright.sandwich;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import corewright.sandwich.spec.Load;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Skin;
import corewright.sandwich.spec.Support;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

class CoamingTest {
    private static final Skin SKIN = Skin.isotropic(3, 11000, 0.3);

    /** A hatch of 500 x 500 mm in a deck of 1.2 x 1.2 m; its corner is the softest place without a coaming. */
    private static PanelSpec hatch(PanelSpec.Openings openings) {
        GeometryFactory factory = new GeometryFactory();
        LinearRing outer = Panels.rectangle(0, 0, 1200, 1200).getExteriorRing();
        LinearRing hole = Panels.rectangle(350, 350, 850, 850).getExteriorRing();
        Polygon outline = factory.createPolygon(outer, new LinearRing[] {hole});
        return new PanelSpec(
                outline,
                List.of(Support.SIMPLE),
                openings,
                SKIN,
                SKIN,
                new PanelSpec.Core(12.5, Panels.BALSA),
                List.of());
    }

    private static double atEdge(PanelSpec.Openings openings) {
        Response r = PanelModel.of(hatch(openings), MeshSize.uniform(50))
                .solve(List.of(Load.foot(new Coordinate(600, 290), 100, 1000)));
        assertThat(r.reactionSumN()).isCloseTo(1000, within(1e-3));
        return r.at(600, 290).orElseThrow().outerMm();
    }

    /** An upstand of next to nothing changes nothing, a higher one always helps, and a huge one holds the edge nearly still. */
    @Test
    void stiffensTheEdgeTheMoreTheHigherItStands() {
        double free = atEdge(new PanelSpec.Openings(Support.FREE, java.util.Optional.empty()));
        double nothing = atEdge(PanelSpec.Openings.with(new PanelSpec.Coaming(0.01, 0.01, 11000)));
        double low = atEdge(PanelSpec.Openings.with(new PanelSpec.Coaming(40, 6, 11000)));
        double high = atEdge(PanelSpec.Openings.with(new PanelSpec.Coaming(80, 6, 11000)));

        assertThat(nothing).isCloseTo(free, withinPercentage(0.01));
        assertThat(low).isLessThan(0.8 * free);
        assertThat(high).isLessThan(low);
    }

    /**
     * The element alone: bent to the curvature κ with ends free to slide, its energy is {@code E t h³/12 κ² L/2}; pulled at
     * the outer skin without turning, {@code E t h ε² L/2}; moved as a rigid body, none.
     */
    @Test
    void energyIsThatOfABeam() {
        PanelSpec.Coaming coaming = new PanelSpec.Coaming(60, 8, 10000);
        CoamingBeam beam = new CoamingBeam(hatch(PanelSpec.Openings.with(coaming)), coaming);
        double length = 50;
        double dx = 30;
        double dy = 40;
        double[] k = beam.of(dx, dy);
        double curvature = 1e-5;
        double arm = (3 + 60) / 2.0;
        double[] bent = new double[20];
        double[] pulled = new double[20];
        double[] turned = new double[20];
        for (int end = 0; end < 2; end++) {
            double s = end * length;
            bent[end * 10 + 2] = curvature * s * s / 2;
            double b = -curvature * s;
            bent[end * 10 + 3] = b * 0.6;
            bent[end * 10 + 4] = b * 0.8;
            bent[end * 10] = arm * b * 0.6;
            bent[end * 10 + 1] = arm * b * 0.8;
            pulled[end * 10] = 1e-4 * s * 0.6;
            pulled[end * 10 + 1] = 1e-4 * s * 0.8;
            turned[end * 10 + 2] = 1 + 0.01 * s;
            turned[end * 10 + 3] = -0.01 * 0.6;
            turned[end * 10 + 4] = -0.01 * 0.8;
        }

        assertThat(energy(k, bent))
                .isCloseTo(8e4 * 60 * 60 * 60 / 12 * curvature * curvature * length / 2, withinPercentage(1e-6));
        assertThat(energy(k, pulled)).isCloseTo(8e4 * 60 * 1e-8 * length / 2, withinPercentage(1e-6));
        assertThat(energy(k, turned)).isCloseTo(0, within(1e-9));
    }

    private static double energy(double[] k, double[] q) {
        double sum = 0;
        for (int i = 0; i < q.length; i++) {
            for (int j = 0; j < q.length; j++) {
                sum += q[i] * k[i * q.length + j] * q[j] / 2;
            }
        }
        return sum;
    }
}
