package corewright.drawing.marks;

import static corewright.DamageFixtures.rectangle;
import static org.assertj.core.api.Assertions.assertThat;

import corewright.damage.Bay;
import corewright.survey.EdgeSupport;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Origin;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

class StructureTest {
    private static final Polygon DECK = rectangle(0, 0, 2000, 1000);

    @Test
    void theCoresEdgeIsDrawnWhereNothingElseIs() {
        Polygon core = rectangle(50, 50, 1950, 950);
        assertThat(Structure.withinSolid(face(List.of()), List.of(bay(core)))).containsExactly(core);
    }

    @Test
    void aCoreThatReachesTheOutlineAndSolidsNeedsNoLine() {
        Feature solid = new Feature.Solid(new Origin("plan.csv", 2), "pad", rectangle(900, -10, 1000, 1010));
        assertThat(Structure.withinSolid(face(List.of()), List.of(bay(DECK)))).isEmpty();
        assertThat(Structure.withinSolid(
                        face(List.of(solid)),
                        List.of(bay(rectangle(0, 0, 900, 1000)), bay(rectangle(1000, 0, 2000, 1000)))))
                .isEmpty();
    }

    private static Bay bay(Polygon area) {
        return new Bay("deck-B1", "deck", area);
    }

    private static Face face(List<Feature> features) {
        return new Face("deck", 0, 0, DECK, EdgeSupport.SIMPLE, "lay-up", features);
    }
}
