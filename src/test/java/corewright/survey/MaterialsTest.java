package corewright.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import corewright.survey.Materials.Core;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The built-in figures follow the relations that they name; 3 per cent is what rounding to two digits may take. */
class MaterialsTest {
    private static final double ROUNDING = 3;

    /**
     * Wood Handbook, FPL-GTR-190 (2010), ch. 5, balsa of 160 kg/m3 at 12 %: bending modulus 3400 MPa, a tenth more along the
     * grain, crushing 14.9, shear 2.1 MPa, GLR and GLT 0.054 and 0.037 of E (from memory); linear in density: M. Borrega and L.
     * J. Gibson, Mechanics of Materials 84 (2015) 75.
     */
    @ParameterizedTest
    @ValueSource(strings = {"balsa-100", "balsa-150", "balsa-220"})
    void balsaIsLinearInDensity(String name) {
        Core core = Materials.builtIn().core(name);
        double part = core.densityKgM3() / 160;
        assertThat(core.modulusMPa()).isCloseTo(1.1 * 3400 * part, withinPercentage(ROUNDING));
        assertThat(core.shearMPa()).isCloseTo((0.054 + 0.037) / 2 * 1.1 * 3400 * part, withinPercentage(ROUNDING));
        assertThat(core.crushMPa()).isCloseTo(0.7 * 14.9 * part, withinPercentage(ROUNDING));
        assertThat(core.shearStrengthMPa()).isCloseTo(2.1 * part, withinPercentage(ROUNDING));
    }

    /** L. J. Gibson and M. F. Ashby, Cellular Solids (2nd ed. 1997), ch. 5: powers of density; constants of common practice. */
    @ParameterizedTest
    @ValueSource(strings = {"pvc-60", "pvc-80", "pvc-100", "pvc-130", "pvc-200"})
    void foamFollowsPowersOfDensity(String name) {
        Core core = Materials.builtIn().core(name);
        double part = core.densityKgM3() / 80;
        assertThat(core.modulusMPa()).isCloseTo(95 * Math.pow(part, 1.3), withinPercentage(ROUNDING));
        assertThat(core.shearMPa()).isCloseTo(28 * Math.pow(part, 1.2), withinPercentage(ROUNDING));
        assertThat(core.crushMPa()).isCloseTo(1.2 * Math.pow(part, 1.5), withinPercentage(ROUNDING));
        assertThat(core.shearStrengthMPa()).isCloseTo(Math.pow(part, 1.4), withinPercentage(ROUNDING));
    }

    @ParameterizedTest
    @ValueSource(strings = {"honeycomb-aramid-48", "honeycomb-pp-80", "plywood"})
    void whatHasNoSourceSaysSo(String name) {
        assertThat(Materials.builtIn().core(name).source()).containsAnyOf("no source", "from memory");
    }
}
