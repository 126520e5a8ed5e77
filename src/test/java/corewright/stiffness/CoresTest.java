package corewright.stiffness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.sandwich.spec.CoreMaterial;
import corewright.survey.Materials;
import org.junit.jupiter.api.Test;

class CoresTest {
    /** The Wood Handbook's ratios of balsa; a foam is the same in all directions; a honeycomb folds. */
    @Test
    void aCoreCarriesInItsPlaneWhatItsKindDoes() {
        Materials materials = Materials.builtIn();
        Materials.Core balsa = materials.core("balsa-150");
        Materials.Core foam = materials.core("pvc-80");

        CoreMaterial.InPlane wood = Cores.material(balsa).inPlane().orElseThrow();
        CoreMaterial.InPlane pvc = Cores.material(foam).inPlane().orElseThrow();

        assertThat(wood.exMPa()).isCloseTo(0.015 * balsa.modulusMPa(), within(1e-9));
        assertThat(wood.gxyMPa()).isCloseTo(0.005 * balsa.modulusMPa(), within(1e-9));
        assertThat(pvc.exMPa()).isEqualTo(foam.modulusMPa());
        assertThat(pvc.gxyMPa()).isEqualTo(foam.shearMPa());
        assertThat(Cores.material(materials.core("honeycomb-pp-80")).inPlane()).isEmpty();
        assertThat(Cores.material(materials.core("plywood")).inPlane()).isPresent();
    }
}
