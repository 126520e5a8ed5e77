package corewright.stiffness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.survey.settings.Resin;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FoamTest {
    /** Solid 1160 kg/m³ and 2900 MPa, density to the 1.8 (Stefani et al. 2003): values worked out apart, printed to 1 MPa. */
    @ParameterizedTest
    @CsvSource({"150, 73, 28", "240, 170, 65", "300, 254, 98", "400, 427, 164", "600, 885, 340"})
    void modulusFollowsTheDensityLaw(double density, double eMPa, double gMPa) {
        assertThat(Foam.modulusMPa(density)).isCloseTo(eMPa, within(1.0));
        Resin resin = new Resin("r", 0.35, density, 1, 1, 3, 360, 360, 1320, 1500, 2940, 25, true, 0, 0, 0, 0, "test");
        assertThat(Foam.material(resin, 1, 1).gxzMPa()).isCloseTo(gMPa, within(1.0));
        assertThat(Foam.material(resin, 0.6, 1).ezMPa()).isCloseTo(0.6 * eMPa, within(1.0));
    }
}
