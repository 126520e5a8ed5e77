package corewright.stiffness;

import static corewright.DamageFixtures.deck;
import static corewright.DamageFixtures.rectangle;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.damage.FaceDamage;
import corewright.sandwich.spec.CoreMaterial;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Skin;
import corewright.sandwich.spec.Support;
import corewright.survey.settings.Resin;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.locationtech.jts.geom.Coordinate;

/** One thing at a time, against Navier's series. */
class SwayTest {
    private static final double A = 900;
    private static final double B = 600;
    private static final double SKIN = 3;
    private static final double CORE = 12.5;
    private static final double E = 11_000;
    private static final double NU = 0.3;

    private final Resin resin = Resin.builtIn().get(0);
    private final FaceDamage face = deck(rectangle(0, 0, A, B)).damage().faces().get(0);

    /**
     * A panel whose whole core is cured foam, simply supported, a foot in the middle: Navier's double sine series of a sandwich plate, its
     * bending and its core's shear added (H. G. Allen, Analysis and Design of Structural Sandwich Panels, 1969, ch. 3; thin faces).
     * A hundredth: what thin faces leave out, and the coarse mesh.
     */
    @ParameterizedTest
    @EnumSource(
            value = Doubt.class,
            names = {"FOAM", "EXPANSION"})
    void aPanelOfFoamFollowsNavier(Doubt doubt) {
        Sway sway = new Sway(o -> of(foam(o)), face, new Coordinate(A / 2, B / 2));

        Ends ends = sway.of(doubt).orElseThrow();

        double middle = navierMm(foam(Outlook.MIDDLE).gxzMPa());
        assertThat(ends.low())
                .isCloseTo(
                        middle / navierMm(foam(Outlook.only(doubt, false, face)).gxzMPa()), within(0.01));
        assertThat(ends.high())
                .isCloseTo(
                        middle / navierMm(foam(Outlook.only(doubt, true, face)).gxzMPa()), within(0.01));
        assertThat(Math.abs(ends.high() - ends.low())).isGreaterThan(0.05);
    }

    @Test
    void whatAPanelDoesNotHangOnHasNoEnds() {
        Sway sway = new Sway(o -> of(foam(o)), face, new Coordinate(A / 2, B / 2));

        assertThat(sway.of(Doubt.WATER)).isEmpty();
        assertThat(sway.of(Doubt.DEPTH)).isEmpty();
    }

    private CoreMaterial foam(Outlook outlook) {
        return Foam.material(resin, outlook.foamDerating(), outlook.expansionFactor());
    }

    private static PanelSpec of(CoreMaterial core) {
        Skin skin = Skin.isotropic(SKIN, E, NU);
        return new PanelSpec(
                rectangle(0, 0, A, B),
                List.of(Support.SIMPLE_HARD),
                skin,
                skin,
                new PanelSpec.Core(CORE, core),
                List.of());
    }

    /** Under 1 kN on 100 x 100 mm in the middle. */
    private static double navierMm(double shearMPa) {
        double d = CORE + SKIN;
        double bending = E * SKIN * d * d / (2 * (1 - NU * NU)) + 2 * E * Math.pow(SKIN, 3) / (12 * (1 - NU * NU));
        double shear = shearMPa * d * d / CORE;
        double sum = 0;
        for (int m = 1; m < 100; m += 2) {
            for (int n = 1; n < 100; n += 2) {
                double load = 16
                        * 0.1
                        / (Math.PI * Math.PI * m * n)
                        * Math.sin(m * Math.PI * 50 / A)
                        * Math.sin(n * Math.PI * 50 / B);
                double k = Math.PI * Math.PI * (m * m / (A * A) + n * n / (B * B));
                sum += load * (1 / (bending * k * k) + 1 / (shear * k));
            }
        }
        return sum;
    }
}
