package corewright.stiffness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.sandwich.spec.Strengths.OfCore;
import corewright.survey.Materials;
import corewright.survey.settings.Resin;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CoreStrengthsTest {
    private static final CoreStrengths BALSA =
            new CoreStrengths(Materials.builtIn().core("balsa-150")); // shear 2.0, crushing 10 MPa

    @Test
    void wetAndRottedBalsaKeepTheirShares() {
        OfCore wet = BALSA.softened(Softening.WET);
        OfCore rotted = BALSA.softened(Softening.ROTTED);

        assertThat(wet.shear().orElseThrow()).isCloseTo(1.4, within(1e-9));
        assertThat(wet.crush().orElseThrow()).isCloseTo(5.0, within(1e-9));
        assertThat(rotted.shear().orElseThrow()).isCloseTo(0.1, within(1e-9));
        assertThat(rotted.crush().orElseThrow()).isCloseTo(0.5, within(1e-9));
    }

    /** 1160 x 1.15 / 4.83 = 276.19 kg/m3; 0.6 x 100 x (276.19 / 1160)^1.8 = 4.532 MPa, over the root of 3 2.616: by hand, to 0.001. */
    @Test
    void foamFollowsTheDensityLawUnlessTheCoreLeftIsWeaker() {
        Resin resin = Resin.builtIn().get(0);

        OfCore alone = CoreStrengths.filled(resin, 0.6, Optional.empty());
        OfCore overSound = CoreStrengths.filled(resin, 0.6, Optional.of(BALSA.sound()));
        OfCore overWet = CoreStrengths.filled(resin, 0.6, Optional.of(BALSA.softened(Softening.WET)));

        assertThat(alone.crush().orElseThrow()).isCloseTo(4.532, within(0.002));
        assertThat(alone.shear().orElseThrow()).isCloseTo(2.616, within(0.002));
        assertThat(alone.bond().shear().orElseThrow()).isCloseTo(1.308, within(0.001));
        assertThat(alone.bond().peel().orElseThrow()).isCloseTo(1.308, within(0.001));
        assertThat(overSound.shear().orElseThrow()).isEqualTo(2.0);
        assertThat(overWet.shear().orElseThrow()).isCloseTo(1.4, within(1e-9));
        assertThat(overWet.bond()).isEqualTo(alone.bond());
    }

    @Test
    void theSheetOfTheMixWins() {
        Resin r = Resin.builtIn().get(0);
        Resin sheet = new Resin(
                "own",
                r.hardenerPerResin(),
                r.densityKgM3(),
                r.expansion(),
                r.pack(),
                r.viscosityPaS(),
                r.workS(),
                r.firstRiseS(),
                r.riseEndS(),
                r.gelS(),
                r.hardS(),
                r.referenceC(),
                true,
                1.1,
                3.3,
                0.7,
                0.4,
                "its sheet");

        OfCore filled = CoreStrengths.filled(sheet, 0.6, Optional.empty());

        assertThat(filled.shear()).hasValue(1.1);
        assertThat(filled.crush()).hasValue(3.3);
        assertThat(filled.bond().shear()).hasValue(0.7);
        assertThat(filled.bond().peel()).hasValue(0.4);
    }
}
