package corewright.sandwich;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import corewright.sandwich.spec.Load;
import corewright.sandwich.spec.Support;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;

class FootLoadMapTest {
    private final PanelModel model = PanelModel.of(Panels.solids('b', Support.SIMPLE), MeshSize.uniform(30));
    private final FootLoadMap map = FootLoadMap.of(model, 75);

    @Test
    void agreesWithASolutionAtEveryPlace() {
        assertThat(map.places()).hasSize(12 * 8);
        for (int k = 0; k < map.places().size(); k += 7) {
            FootLoadMap.Place place = map.places().get(k);
            Load foot = Load.foot(new Coordinate(place.x(), place.y()), 100, 1000);
            double full = model.solve(List.of(foot))
                    .at(place.x(), place.y())
                    .orElseThrow()
                    .outerMm();
            assertThat(place.deflectionMm()).as("place %d", k).isCloseTo(full, within(1e-8 * full));
        }
    }

    @Test
    void isSoftestOverTheVoidAndMirrorsWithThePanel() {
        FootLoadMap.Place softest = map.softest();

        assertThat(Math.hypot(softest.x() - 450, softest.y() - 300)).isLessThan(75);
        assertThat(map.stiffnessNPerMm(softest)).isCloseTo(1000 / softest.deflectionMm(), within(1e-12));
        double left = at(112.5, 112.5);
        assertThat(at(787.5, 487.5)).isCloseTo(left, withinPercentage(1e-6));
    }

    private double at(double x, double y) {
        return map.places().stream()
                .filter(p -> Math.abs(p.x() - x) < 1 && Math.abs(p.y() - y) < 1)
                .findFirst()
                .orElseThrow()
                .deflectionMm();
    }
}
