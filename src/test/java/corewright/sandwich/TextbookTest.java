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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/** The limits: plates and beams of the handbooks. One per cent unless a printed digit decides. */
class TextbookTest {
    private static final double ONE = 1;

    /**
     * Simply supported thin plates, nu 0.3, centre. Source: S. Timoshenko and S. Woinowsky-Krieger, Theory of Plates and Shells
     * (2nd ed. 1959), table 8, art. 30 (w = alpha q a⁴/D under pressure), and table 23, art. 34 (w = alpha P a²/D under a point
     * load); numbers of tables from memory.
     */
    @ParameterizedTest(name = "b/a {0}")
    @CsvSource({"1.0, .00406, .01160", "1.5, .00772, .01531", "2.0, .01013, .01651"})
    void simplySupportedPlatesAgreeWithTheTables(double ratio, double pressure, double point) {
        Response.Deflection[] w = centre(ratio, Support.SIMPLE_HARD);

        assertThat(w[0].outerMm()).isCloseTo(pressure, withinPercentage(ONE));
        assertThat(w[1].outerMm()).isCloseTo(point, withinPercentage(ONE));
    }

    /**
     * Clamped thin plates, nu 0.3, centre. Source: the same book, art. 44, table 35 (pressure) and table 37 (point load); numbers of
     * tables from memory.
     */
    @ParameterizedTest(name = "b/a {0}")
    @CsvSource({"1.0, .00126, .00560", "1.4, .00207, .00691", "2.0, .00254, .00722"})
    void clampedPlatesAgreeWithTheTables(double ratio, double pressure, double point) {
        Response.Deflection[] w = centre(ratio, Support.CLAMPED);

        assertThat(w[0].outerMm()).isCloseTo(pressure, withinPercentage(ONE));
        assertThat(w[1].outerMm()).isCloseTo(point, withinPercentage(ONE));
    }

    /** Centre deflections by q a⁴/D and P a²/D; the point load is a square of a/100. */
    private static Response.Deflection[] centre(double ratio, Support support) {
        double a = 1000;
        double d = Panels.bending(1, 3, 70000, 0.3);
        Polygon outline = Panels.rectangle(0, 0, a, ratio * a);
        PanelModel model = PanelModel.of(Panels.plate(outline, support, 1, 3, 70000, 0.3), MeshSize.uniform(a / 28));
        Load pressure = new Load.Pressure(1e3 * d / Math.pow(a, 4));
        Load point = Load.foot(new Coordinate(a / 2, ratio * a / 2), a / 100, d / (a * a));
        return new Response.Deflection[] {
            model.solve(List.of(pressure)).at(a / 2, ratio * a / 2).orElseThrow(),
            model.solve(List.of(point)).at(a / 2, ratio * a / 2).orElseThrow()
        };
    }

    /**
     * Sandwich plate 10 x 10 in, simply supported, 100 psi: w 0.123 in, mid-skin stresses 34 449 and 13 350 psi at the centre and
     * shear 5067.5 psi at E, the quarter point. Source: NAFEMS report R0031, Composites Benchmarks (G. A. O. Davies, E. Hinton et
     * al., issue 2, 2001), test 3, target values as reprinted in verification manuals of general finite element programs (year
     * and names from memory). Lengths in inches and stresses in psi here; the equations do not mind.
     */
    @Test
    void agreesWithNafemsR0031Case3() {
        Response response = nafems(25);

        assertThat(response.at(5, 5).orElseThrow().outerMm()).isCloseTo(0.123, withinPercentage(ONE));
        CellStress centre = nearest(response, 5, 5);
        assertThat(Math.abs(centre.inner().middle().x())).isCloseTo(34449, withinPercentage(ONE));
        assertThat(Math.abs(centre.inner().middle().y())).isCloseTo(13350, withinPercentage(ONE));
    }

    /** Shear at E lies where four elements meet: their mean. */
    @Test
    void shearAtTheQuarterPointAgreesWithNafemsR0031Case3() {
        double shear = nafems(24).stresses().stream()
                .filter(s -> Math.hypot(s.place().x() - 2.5, s.place().y() - 2.5) < 0.3)
                .mapToDouble(s -> Math.abs(s.inner().middle().xy()))
                .average()
                .orElseThrow();

        assertThat(shear).isCloseTo(5067.5, withinPercentage(ONE));
    }

    private static Response nafems(int cells) {
        Skin skin = new Skin(0.028, 10e6, 4e6, 0.3, 1.875e6);
        CoreMaterial core = new CoreMaterial(3e4, 1.2e4, 1e9);
        PanelSpec panel = new PanelSpec(
                Panels.rectangle(0, 0, 10, 10),
                List.of(Support.SIMPLE_HARD),
                skin,
                skin,
                new PanelSpec.Core(0.75, core),
                List.of());
        return PanelModel.of(panel, MeshSize.uniform(10.0 / cells)).solve(List.of(new Load.Pressure(1e5)));
    }

    private static CellStress nearest(Response response, double x, double y) {
        return response.stresses().stream()
                .min(java.util.Comparator.comparingDouble(
                        s -> Math.hypot(s.place().x() - x, s.place().y() - y)))
                .orElseThrow();
    }

    /**
     * Three-point bending with thick faces: P L³/48D + (P L/4S)(D0/D)²(1 - tanh a/a), a = (L/2)√(S D/(Df D0)). Source: H. G.
     * Allen, Analysis and Design of Structural Sandwich Panels (Pergamon 1969), ch. 2 and 9; computed from it for L 600, b 50, t 3, c 12.5 mm, E 11 000, G
     * 157 MPa, nu 0, 1 kN: 23.3804 mm.
     */
    @Test
    void beamWithThickFacesAgreesWithAllen() {
        Response.Deflection middle = threePoint(600, 50, Skin.isotropic(3, 11000, 0), 12.5, 157, 1000);

        assertThat(middle.innerMm()).isCloseTo(23.3804, withinPercentage(ONE));
    }

    /**
     * Three-point bending by ASTM D7250/D7250M-20, P L³/48D + P L/4U with U = G d² b/c (from memory); computed from it for L 1000, b 100, c 20, t 2 mm, E 10 GPa, G 40
     * MPa, 400 N: 17.170 + 1.033 mm.
     */
    @Test
    void beamAgreesWithAstmC393() {
        Response.Deflection middle = threePoint(1000, 100, Skin.isotropic(2, 10000, 0), 20, 40, 400);

        assertThat(middle.innerMm()).isCloseTo(17.170 + 1.033, withinPercentage(ONE));
    }

    private static Response.Deflection threePoint(
            double length, double width, Skin skin, double coreMm, double g, double force) {
        PanelSpec panel = new PanelSpec(
                Panels.rectangle(0, 0, length, width),
                List.of(Support.SIMPLE, Support.FREE, Support.SIMPLE, Support.FREE),
                skin,
                skin,
                new PanelSpec.Core(coreMm, new CoreMaterial(g, g, 1e5)),
                List.of());
        PanelModel model = PanelModel.of(panel, MeshSize.uniform(width / 4));
        Polygon strip = Panels.rectangle(length / 2 - 0.01, 0, length / 2 + 0.01, width);
        return model.solve(List.of(new Load.Force(strip, force)))
                .at(length / 2, width / 2)
                .orElseThrow();
    }

    /**
     * Navier's series for thick faces, hard supports, core without give, computed beforehand with 200 x 200 terms: 1.32616 mm.
     * Theory: Allen (1969), ch. 6; N. J. Hoff, Bending and buckling of rectangular sandwich plates, NACA TN 2225 (1950).
     */
    @Test
    void panelAgreesWithNaviersSeriesForThickFaces() {
        Skin skin = Skin.isotropic(3, 11000, 0.3);
        PanelSpec panel = new PanelSpec(
                Panels.rectangle(0, 0, 900, 600),
                List.of(Support.SIMPLE_HARD),
                skin,
                skin,
                new PanelSpec.Core(12.5, new CoreMaterial(157, 157, 1e7)),
                List.of());
        Response response = PanelModel.of(panel, MeshSize.uniform(25))
                .solve(List.of(Load.foot(new Coordinate(450, 300), 100, 1000)));

        assertThat(response.at(450, 300).orElseThrow().innerMm()).isCloseTo(1.32616, withinPercentage(0.4));
    }

    /**
     * A loose skin alone, clamped along an ellipse: w = q/(D(24/a⁴ + 24/b⁴ + 16/(a² b²))). Source: Timoshenko and
     * Woinowsky-Krieger (2nd ed. 1959), art. 71, the clamped elliptical plate. Curved edge, no staircase: 0.5 % at 20 mm.
     */
    @Test
    void clampedEllipticalPlateAgreesWithTheExactSolution() {
        double a = 200;
        double b = 130;
        Skin skin = Skin.isotropic(3, 11000, 0.3);
        Polygon outline = Panels.ellipse(0, 0, a, b);
        PanelSpec panel = new PanelSpec(
                outline,
                List.of(Support.CLAMPED),
                skin,
                skin,
                new PanelSpec.Core(12.5, Panels.BALSA),
                List.of(new Patch.Loose(outline.buffer(50), 12.5)));
        double q = 2e-3;
        double d = 11000 * 27 / (12 * (1 - 0.09));
        double exact = q / (d * (24 / Math.pow(a, 4) + 24 / Math.pow(b, 4) + 16 / (a * a * b * b)));

        Response response = PanelModel.of(panel, MeshSize.uniform(20)).solve(List.of(new Load.Pressure(2)));

        Response.Deflection centre = response.at(0, 0).orElseThrow();
        assertThat(centre.outerMm()).isCloseTo(exact, withinPercentage(ONE));
        assertThat(centre.innerMm()).isCloseTo(0, within(1e-9));
    }
}
