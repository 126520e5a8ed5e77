package corewright.sandwich;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import corewright.sandwich.spec.CoreMaterial;
import corewright.sandwich.spec.Load;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Patch;
import corewright.sandwich.spec.Skin;
import corewright.sandwich.spec.Support;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/** Von Karman's plates: closed forms, tables, and another calculation of a voided panel. */
class LargeDeflectionTest {
    /**
     * A skin over a void, and over half a core (case d, gap 6.25 mm), under a foot: 5.53 / 1.05, 8.54 / 2.04
     * and for d 8.46 / 2.21 and, closed, 11.85 / 5.60 mm, from an independent calculation of the same theory on a grid of
     * 12.5 mm. Here the mesh is coarser: 3 %.
     */
    @ParameterizedTest(name = "case {0}, {1} N")
    @CsvSource({
        "b, 500, 5.53, 1.05, 0.03",
        "b, 1000, 8.54, 2.04, 0.06",
        "d, 1000, 8.46, 2.21, 0.06",
        "d, 2000, 11.85, 5.60, 0.17"
    })
    void agreesWithAnotherCalculationOfAVoidedPanel(
            char which, double force, double outer, double inner, double innerTolerance) {
        PanelModel model = PanelModel.of(Panels.solids(which, Support.SIMPLE), new MeshSize(30, 15));
        Load foot = Load.foot(new Coordinate(450, 300), 100, force);

        Response large = model.solve(List.of(foot)).largeDeflection().orElseThrow();

        Response.Deflection d = large.at(450, 300).orElseThrow();
        assertThat(d.outerMm()).isCloseTo(outer, withinPercentage(3));
        assertThat(d.innerMm()).isCloseTo(inner, within(innerTolerance));
        assertThat(large.reactionSumN()).isCloseTo(force, within(1e-3));
    }

    /**
     * A clamped square plate with edges that cannot draw in, nu 0.316: w/t at the centre for q a⁴/(E t⁴). Source: S. Levy,
     * NACA TN 847 (1942), the values from memory.
     */
    @ParameterizedTest(name = "q a⁴/(E t⁴) = {0}")
    @CsvSource({"17.79, 0.237", "95.0, 0.912", "402.0, 1.902"})
    void clampedSquareAgreesWithLevy(double pressure, double deflection) {
        Polygon square = Panels.rectangle(0, 0, 400, 400);

        assertThat(looseAlone(square, 0.316, pressure * 11000 * 81 / Math.pow(400, 4) * 1e3, 200, 200))
                .isCloseTo(3 * deflection, withinPercentage(2));
    }

    /**
     * A clamped disc with an edge that cannot draw in, nu 0.3: w/t at the centre for q a⁴/(E t⁴), from von Karman's energy of
     * the axisymmetric plate (Timoshenko and Woinowsky-Krieger, 1959, ch. 13) by a Ritz series reckoned apart: (1 - r²)² times
     * four even powers for w, r (1 - r) times eight powers for u. S. Way's printed values (Trans. ASME 56, 1934, from memory:
     * 0.169, 0.761, 1.279) lie within 2 %.
     */
    @ParameterizedTest(name = "q a⁴/(E t⁴) = {0}")
    @CsvSource({"1, 0.16803", "6, 0.77023", "15, 1.30201"})
    void clampedDiscAgreesWithASeries(double pressure, double deflection) {
        Polygon disc = Panels.ellipse(0, 0, 200, 200);

        assertThat(looseAlone(disc, 0.3, pressure * 11000 * 81 / Math.pow(200, 4) * 1e3, 0, 0))
                .isCloseTo(3 * deflection, withinPercentage(1));
    }

    /**
     * The same plate as two bonded skins on a core stiff in shear: a sandwich stretches by A = 2 E t/(1 - nu²) and bends by A (d²/4 + t²/12), so it is
     * Levy's plate of the thickness h with h²/12 = d²/4 + t²/12.
     */
    @ParameterizedTest(name = "q a⁴/(E h⁴) = {0}")
    @CsvSource({"17.79, 0.237", "95.0, 0.912", "402.0, 1.902"})
    void clampedBondedSandwichAgreesWithLevy(double pressure, double deflection) {
        Plate plate = new Plate(0.316);
        PanelModel model =
                PanelModel.of(plate.bonded(Panels.rectangle(0, 0, 800, 800), Support.CLAMPED), MeshSize.uniform(50));

        assertThat(plate.middle(model, pressure / Math.pow(800, 4), 400, 400))
                .isCloseTo(plate.thickness * deflection, withinPercentage(2));
    }

    /**
     * A simply supported disc whose edge may draw in, as a bonded sandwich with a stiff core, nu 0.3: w/h at the centre for q a⁴/(E h⁴) from a
     * Ritz series reckoned apart, (1 - r²) times six even powers for w, ten odd powers of r for u (the one term of Timoshenko and
     * Woinowsky-Krieger, 1959, ch. 13, from memory: w/h + 0.262 (w/h)³ = 0.696 q a⁴/(E h⁴), lies within 2 %).
     */
    @ParameterizedTest(name = "q a⁴/(E h⁴) = {0}")
    @CsvSource({"0.5, 0.33684", "1.5, 0.86083", "4, 1.6050"})
    void simplySupportedBondedDiscDrawsIn(double pressure, double deflection) {
        Plate plate = new Plate(0.3);
        PanelModel model =
                PanelModel.of(plate.bonded(Panels.ellipse(0, 0, 400, 400), Support.SIMPLE), MeshSize.uniform(40));

        assertThat(plate.middle(model, pressure / Math.pow(400, 4), 0, 0))
                .isCloseTo(plate.thickness * deflection, withinPercentage(2));
    }

    /** Skins of 2 mm, 12 mm apart, as one plate: its thickness and modulus. */
    private static final class Plate {
        private static final double SKIN = 2;
        private static final double APART = 12;
        private final double nu;
        private final double thickness = Math.sqrt(3 * APART * APART + SKIN * SKIN);
        private final double modulus = 2 * 11000 * SKIN / thickness;

        Plate(double nu) {
            this.nu = nu;
        }

        PanelSpec bonded(Polygon outline, Support support) {
            Skin skin = Skin.isotropic(SKIN, 11000, nu);
            CoreMaterial stiff = new CoreMaterial(1e5, 1e5, 1e5, Optional.empty());
            return new PanelSpec(
                    outline, List.of(support), skin, skin, new PanelSpec.Core(APART - SKIN, stiff), List.of());
        }

        /** Deflection of a place under q/(E h⁴). */
        double middle(PanelModel model, double pressure, double x, double y) {
            return model.solve(List.of(new Load.Pressure(1e3 * pressure * modulus * Math.pow(thickness, 4))))
                    .largeDeflection()
                    .orElseThrow()
                    .at(x, y)
                    .orElseThrow()
                    .outerMm();
        }
    }

    /** Where nothing moves far the linear answer stands. */
    @Test
    void tendsToTheLinearAnswerForSmallLoads() {
        PanelModel model = PanelModel.of(Panels.solids('a', Support.CLAMPED), MeshSize.uniform(50));
        Response linear = model.solve(List.of(Load.foot(new Coordinate(450, 300), 100, 10)));

        double w = linear.at(450, 300).orElseThrow().innerMm();

        assertThat(linear.largeDeflection()
                        .orElseThrow()
                        .at(450, 300)
                        .orElseThrow()
                        .innerMm())
                .isCloseTo(w, withinPercentage(0.1));
    }

    /** Deflection at a place of an outer skin, 3 mm, E 11 GPa, clamped along an outline and loose all over. */
    private static double looseAlone(Polygon outline, double nu, double pressureKPa, double x, double y) {
        Skin skin = Skin.isotropic(3, 11000, nu);
        PanelSpec panel = new PanelSpec(
                outline,
                List.of(Support.CLAMPED),
                skin,
                skin,
                new PanelSpec.Core(50, Panels.BALSA),
                List.of(new Patch.Loose(outline.buffer(50), 50)));
        return PanelModel.of(panel, MeshSize.uniform(20))
                .solve(List.of(new Load.Pressure(pressureKPa)))
                .largeDeflection()
                .orElseThrow()
                .at(x, y)
                .orElseThrow()
                .outerMm();
    }
}
