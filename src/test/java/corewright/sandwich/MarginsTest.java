package corewright.sandwich;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import corewright.sandwich.spec.CoreMaterial;
import corewright.sandwich.spec.Load;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Patch;
import corewright.sandwich.spec.Skin;
import corewright.sandwich.spec.Strengths;
import corewright.sandwich.spec.Support;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** Each margin against a published formula, computed by hand on a case whose stresses are known. */
class MarginsTest {
    private static final Strengths ALL = new Strengths(
            OptionalDouble.of(100),
            OptionalDouble.of(80),
            OptionalDouble.of(1.5),
            OptionalDouble.of(6),
            new Strengths.Bond(OptionalDouble.of(3), OptionalDouble.of(2)));

    /** Long strip between simple edges under pressure q: core shear q L/2d, skin stress q L²/8(t d) at mid-span. */
    private static PanelSpec strip(List<Patch> patches) {
        Skin skin = Skin.isotropic(2, 10000, 0);
        return new PanelSpec(
                Panels.rectangle(0, 0, 1000, 100),
                List.of(Support.SIMPLE, Support.FREE, Support.SIMPLE, Support.FREE),
                skin,
                skin,
                new PanelSpec.Core(20, new CoreMaterial(40, 40, 80)),
                patches);
    }

    private static List<Margin> margins(PanelSpec panel, Load load) {
        return Margins.of(panel, PanelModel.of(panel, MeshSize.uniform(25)).solve(List.of(load)), ALL);
    }

    private static Margin find(List<Margin> margins, String what) {
        return margins.stream().filter(m -> m.what().equals(what)).findFirst().orElseThrow();
    }

    /**
     * ASTM C393/C393M-20, core shear V/(d b), and ASTM D7249/D7249M-20, facing stress M/(t d b), thin faces (both from memory);
     * computed for three-point bending, 400 N, b 100, L 1000, d 22, t 2 mm: 0.0909 and 22.73 MPa.
     */
    @Test
    void shearAndSkinStressAreThoseOfAstmC393() {
        List<Margin> margins = margins(strip(List.of()), new Load.Force(Panels.rectangle(499, 0, 501, 100), 400));

        assertThat(find(margins, "core shear").ratio()).isCloseTo(0.0909 / 1.5, withinPercentage(2));
        // 22.73 MPa is mid-skin; at the face it is M E (h/2)/D = 1e5 · 1e4 · 12 / 485.33e6 = 24.73 MPa. Element
        // centres lie 12.5 mm beside the peak (2.5 % less) and the skin bends a little under the load: 3 %.
        assertThat(find(margins, "inner skin").ratio()).isCloseTo(24.73 / 80, withinPercentage(3));
        assertThat(find(margins, "outer skin").ratio()).isCloseTo(24.73 / 100, withinPercentage(3));
    }

    /**
     * N. J. Hoff and S. E. Mautner, The buckling of sandwich-type panels, Journal of the Aeronautical Sciences 12 (1945), 285: the
     * advised 0.5 (Ef Ez G)^(1/3), computed here as (10 000 · 80 · 40)^(1/3)/2 = 158.74 MPa.
     */
    @Test
    void wrinklingHasHoffAndMautnersCapacity() {
        Margin wrinkling = find(
                margins(strip(List.of()), new Load.Force(Panels.rectangle(499, 0, 501, 100), 400)),
                "outer skin wrinkling");

        assertThat(wrinkling.capacityMPa()).isCloseTo(158.74, within(0.005)); // half the last digit
        assertThat(wrinkling.demandMPa()).isCloseTo(22.73, withinPercentage(8));
    }

    /** Equilibrium of the outer skin, far from edges: an even pressure on it presses as much on the core under it. */
    @Test
    void crushingIsAllOfAnEvenPressure() {
        Margin crushing = find(margins(strip(List.of()), new Load.Pressure(10)), "core crushing");

        assertThat(crushing.demandMPa()).isCloseTo(0.010, withinPercentage(3));
    }

    /**
     * S. P. Timoshenko and J. M. Gere, Theory of Elastic Stability (2nd ed. 1961), art. 9.12, clamped disc under even thrust:
     * N = 14.68 D/a², computed for a 100, t 3 mm, E 11 000 MPa, nu 0.3: 13.31 MPa.
     */
    @Test
    void looseSkinBucklesAsAClampedDisc() {
        Geometry disc = Panels.ellipse(450, 300, 100, 100);
        PanelSpec panel = Panels.solids('a', Support.SIMPLE).with(List.of(new Patch.Loose(disc, 12.5)));
        Load foot = Load.foot(new Coordinate(250, 300), 100, 1000);

        Margin buckling = find(
                Margins.of(panel, PanelModel.of(panel, MeshSize.uniform(25)).solve(List.of(foot)), ALL),
                "loose skin buckling");

        assertThat(buckling.capacityMPa()).isCloseTo(13.31, withinPercentage(1.5)); // the disc is a polygon of 96 sides
        assertThat(buckling.demandMPa()).as("under a foot beside it").isBetween(0.0, buckling.capacityMPa());
    }

    /** A patch with the core as built leaves stresses as they are, so its bond bears the core's own shear V/(d b). */
    @Test
    void bondOfARepairBearsTheCoresShear() {
        PanelSpec panel =
                strip(List.of(new Patch.Core(Panels.rectangle(200, 0, 400, 100), new CoreMaterial(40, 40, 80))));

        List<Margin> margins = margins(panel, new Load.Force(Panels.rectangle(499, 0, 501, 100), 400));

        assertThat(find(margins, "repair bond, shear").ratio()).isCloseTo(0.0909 / 3, withinPercentage(1));
        assertThat(find(margins, "repair bond, peel").ratio()).isCloseTo(0, within(1e-3));
        assertThat(margins(strip(List.of()), new Load.Pressure(1)))
                .noneMatch(m -> m.what().startsWith("repair bond"));
    }

    /** The same V/(d b) everywhere: each core is held against its own strength, and its place lies in it. */
    @Test
    void aCoreOfItsOwnStrengthHasItsOwnMargins() {
        Strengths.OfCore wet = new Strengths.OfCore(
                "wet", OptionalDouble.of(1.05), OptionalDouble.of(3), Strengths.Bond.UNKNOWN, "a handbook");
        Strengths.OfCore foam = new Strengths.OfCore(
                "foam",
                OptionalDouble.of(2.6),
                OptionalDouble.of(4.5),
                new Strengths.Bond(OptionalDouble.of(1.3), OptionalDouble.of(1.3)),
                "a law");
        CoreMaterial core = new CoreMaterial(40, 40, 80);
        PanelSpec panel = strip(List.of(
                new Patch.Core(Panels.rectangle(150, 0, 350, 100), core.with(wet)),
                new Patch.Core(Panels.rectangle(650, 0, 850, 100), core.with(foam))));
        Strengths noBond = new Strengths(
                OptionalDouble.of(100), OptionalDouble.of(80), OptionalDouble.of(1.5), OptionalDouble.of(6));
        Response response = PanelModel.of(panel, MeshSize.uniform(25))
                .solve(List.of(new Load.Force(Panels.rectangle(499, 0, 501, 100), 400)));

        List<Margin> margins = Margins.of(panel, response, noBond);

        assertThat(find(margins, "core shear").ratio()).isCloseTo(0.0909 / 1.5, withinPercentage(2));
        assertThat(find(margins, "core shear, wet").ratio()).isCloseTo(0.0909 / 1.05, withinPercentage(1));
        assertThat(find(margins, "core shear, wet").x()).isBetween(150.0, 350.0);
        assertThat(find(margins, "core shear, wet").source()).isEqualTo("a handbook");
        assertThat(find(margins, "repair bond, shear, foam").ratio()).isCloseTo(0.0909 / 1.3, withinPercentage(1));
        assertThat(find(margins, "repair bond, shear, foam").x()).isBetween(650.0, 850.0);
        assertThat(margins)
                .extracting(Margin::what)
                .contains("core crushing, wet", "core shear, foam", "repair bond, peel, foam")
                .doesNotContain("repair bond, shear", "repair bond, shear, wet");
    }

    /** A line that lifts the outer skin by 5 N/mm² pulls the bond under it; the force through it is the load's outer half. */
    @Test
    void bondOfARepairIsPeeledByALiftedSkin() {
        PanelSpec panel =
                strip(List.of(new Patch.Core(Panels.rectangle(100, 0, 900, 100), new CoreMaterial(40, 40, 80))));

        Margin peel = find(margins(panel, new Load.Pressure(-10)), "repair bond, peel");

        assertThat(peel.demandMPa()).isCloseTo(0.005, withinPercentage(5));
        assertThat(peel.ratio()).isCloseTo(0.005 / 2, withinPercentage(5));
    }
}
