package corewright.sandwich;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Patch;
import corewright.sandwich.spec.Skin;
import corewright.sandwich.spec.Support;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

class SmallOpeningTest {
    /**
     * A panel with free edges that its opening alone holds. Lines through the sides of the patch leave one node of a grid of 118 mm
     * inside the opening of 100 mm, to which all four of its corners are nearest.
     */
    @Test
    void isSeenByAGridOfWhichOneNodeLiesInIt() {
        LinearRing hole = (LinearRing) Panels.rectangle(201, 201, 301, 301).getExteriorRing();
        Polygon outline = new GeometryFactory()
                .createPolygon(
                        (LinearRing) Panels.rectangle(0, 0, 900, 900).getExteriorRing(), new LinearRing[] {hole});
        PanelSpec panel = new PanelSpec(
                outline,
                List.of(Support.FREE),
                new PanelSpec.Openings(Support.SIMPLE, Optional.empty(), List.of()),
                Skin.isotropic(3, 11000, 0.3),
                Skin.isotropic(3, 11000, 0.3),
                new PanelSpec.Core(12.5, Panels.BALSA),
                List.of(new Patch.Core(Panels.rectangle(133, 133, 369, 369), Panels.BALSA.times(0.7))));

        PanelModel model = PanelModel.of(panel, MeshSize.uniform(118));

        double area = IntStream.range(0, model.mesh.cells.length)
                .mapToDouble(c -> model.mesh.shape(c).area())
                .sum();
        assertThat(area).isCloseTo(outline.getArea(), withinPercentage(1e-6));
    }
}
