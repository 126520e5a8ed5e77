package corewright.sandwich;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.sandwich.spec.CoreMaterial;
import corewright.sandwich.spec.Load;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Skin;
import corewright.sandwich.spec.Support;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Polygon;

/** The deflection's error falls with the square of the element size, upright and turned. */
class ConvergenceTest {
    /** Navier's series for thick faces and a core without give, 200 x 200 terms. */
    private static final double EXACT = 1.32616;

    @ParameterizedTest(name = "turned by {0} degrees")
    @ValueSource(doubles = {0, 30})
    void errorFallsWithTheSquareOfTheSize(double degrees) {
        double coarse = Math.abs(deflection(degrees, 60) - EXACT);
        double fine = Math.abs(deflection(degrees, 20) - EXACT);

        double order = Math.log(coarse / fine) / Math.log(3);

        assertThat(order).isGreaterThan(1.8);
    }

    private static double deflection(double degrees, double size) {
        Skin skin = Skin.isotropic(3, 11000, 0.3);
        PanelSpec panel = new PanelSpec(
                (Polygon) Panels.turned(Panels.rectangle(-450, -300, 450, 300), degrees),
                List.of(Support.SIMPLE_HARD),
                skin,
                skin,
                new PanelSpec.Core(12.5, new CoreMaterial(157, 157, 1e7)),
                List.of());
        Load foot = new Load.Force(Panels.turned(Panels.rectangle(-50, -50, 50, 50), degrees), 1000);
        return PanelModel.of(panel, MeshSize.uniform(size))
                .solve(List.of(foot))
                .at(0, 0)
                .orElseThrow()
                .innerMm();
    }
}
