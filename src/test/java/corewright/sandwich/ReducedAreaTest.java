package corewright.sandwich;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;

/** An area on its deflections alone against the same area with all its unknowns. */
class ReducedAreaTest {
    /** Both leave a millionth of the forces out of balance; deflections follow to about as much of some 10 mm. */
    private static final double ROUNDING_MM = 1e-4;

    private static final double BALANCE = 1e-6;

    /** Random panels, held softly, hard and clamped, with areas at their edges too; feet on the area and about it. */
    @ParameterizedTest(name = "panel {0}")
    @ValueSource(longs = {1, 3, 106})
    void settlesWhereTheWholeAreaDoes(long seed) {
        FootLoadsTest.RandomPanel random = FootLoadsTest.RandomPanel.of(seed);
        PanelModel model = PanelModel.of(random.panel(), new MeshSize(60, 60));
        LargeDeflection large = model.large(model.loose.areas().get(0));
        ReducedArea area = new ReducedArea(large);

        for (Coordinate centre : random.feet(4)) {
            Foot foot = Foot.at(model, centre).orElseThrow();
            double[] linear = model.factor.solve(model.full(foot.force()));
            double[] local = large.on.local(linear);
            LargeDeflection.Settled whole =
                    large.settle(local, List.of(), BALANCE, null).orElseThrow();
            double[][] carried = area.carried(List.of(foot.force(), foot.ask()));
            ReducedFoot.Settled reduced = new ReducedFoot(area, carried[0])
                    .settle(List.of(), Optional.empty(), BALANCE)
                    .orElseThrow();

            double more = foot.ask().dot(model.factor.solve(large.forces(whole)));
            assertThat(reduced.at(carried[1])).isCloseTo(more, within(ROUNDING_MM));
            double[] shape = LargeDeflection.sum(local, whole.added(), 1);
            assertThat(reduced.shape()).containsExactly(deflections(area, shape), within(ROUNDING_MM));
        }
    }

    private static double[] deflections(ReducedArea area, double[] local) {
        return Arrays.stream(area.w).mapToDouble(i -> local[i]).toArray();
    }

    /** The linear solution at the area, from what forces leave there and from the panel. */
    @Test
    void solvesForcesOnItAndElsewhere() {
        PanelModel model = PanelModel.of(Panels.loose(3), MeshSize.uniform(50));
        ReducedArea area = new ReducedArea(model.large(model.loose.cells));

        for (Coordinate centre : List.of(new Coordinate(450, 300), new Coordinate(100, 100))) {
            Foot foot = Foot.at(model, centre).orElseThrow();
            double[] wanted = area.large.on.local(model.factor.solve(model.full(foot.force())));

            double[] found = area.deflections(area.carried(List.of(foot.force()))[0]);

            assertThat(found).containsExactly(deflections(area, wanted), within(1e-9));
        }
    }
}
