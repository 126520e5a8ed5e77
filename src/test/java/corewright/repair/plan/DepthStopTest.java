package corewright.repair.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.survey.Laminate;
import corewright.survey.settings.Resin;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DepthStopTest {
    /** Outer skin 3 mm; the rule of the word table by hand. */
    @ParameterizedTest
    @CsvSource({"12.5, 0, 4.0", "12.5, 2.5, 4.0", "12.5, 6, 7.5", "12.5, 12.5, 14.0", "12.5, 20, 14.0", "2.5, 2.5, 4.0"
    })
    void followsTheWordTable(double coreMm, double voidMm, double stopMm) {
        Laminate laminate = new Laminate("l", 3, coreMm, 2.5, "s", "c", true);
        assertThat(DepthStop.mm(laminate, voidMm, 1.5)).isCloseTo(stopMm, within(1e-12));
    }

    /** By hand: 3 and 4 mm of skin over 12.5 mm of core are drilled to 5 mm, as 14 mm are allowed in the first; over 2.5 mm to 4. */
    @Test
    void oneCollarSettingServesWhatItMay() {
        Laminate three = new Laminate("a", 3, 12.5, 2.5, "s", "c", true);
        Laminate four = new Laminate("b", 4, 12.5, 2.5, "s", "c", true);
        Laminate low = new Laminate("c", 3, 2.5, 2.5, "s", "c", true);
        assertThat(DepthStop.collarsMm(Map.of(three, 4.0, four, 4.8), 1.5)).isEqualTo(Map.of(three, 5.0, four, 5.0));
        assertThat(DepthStop.collarsMm(Map.of(three, 4.0, four, 5.0, low, 4.0), 1.5))
                .isEqualTo(Map.of(three, 5.0, four, 5.0, low, 4.0));
    }

    @ParameterizedTest
    @CsvSource({"2.4, false", "2.5, true", "12.5, true"})
    void aThinCoreCannotBeOpened(double coreMm, boolean possible) {
        assertThat(DepthStop.possible(new Laminate("l", 3, coreMm, 2.5, "s", "c", true), 1.5))
                .isEqualTo(possible);
    }

    /**
     * A sealed cavity by Boyle's law, {@code p0 (pack (1 - 1/X) / (1 - pack/X) - 1)} with p0 101.325 kPa: computed beforehand apart
     * from the program, gauge kPa to whole ones.
     */
    @ParameterizedTest
    @CsvSource({
        "3, 1.1, 16",
        "3, 1.25, 43",
        "3, 1.5, 101",
        "3, 2, 304",
        "4, 1.1, 14",
        "4, 1.25, 37",
        "4, 1.5, 81",
        "4, 2, 203",
        "6, 1.1, 12",
        "6, 1.25, 32",
        "6, 1.5, 68",
        "6, 2, 152"
    })
    void sealedPressureFollowsBoyle(double expansion, double pack, double kPa) {
        Resin resin = new Resin(
                "f", 0.35, 1160, expansion, pack, 3, 360, 360, 1320, 1500, 2940, 25, true, 0, 0, 0, 0, "test");
        assertThat(Restraint.sealedKPa(resin)).isCloseTo(kPa, within(0.6)); // the table is rounded to 1 kPa
    }

    /** {@code p0 pack (1 - 1/X) / (1 - pack/X)}, by hand for X 4.83 and pack 1.15: 101.325 x 1.15 x 0.79296 / 0.76190. */
    @Test
    void trappedAirPushesHarderThanAirThatHasGone() {
        Resin foam = Resin.builtIn().get(0);
        assertThat(Restraint.trappedKPa(foam)).isCloseTo(121.3, within(0.1));
        assertThat(Restraint.trappedKPa(foam) - Restraint.sealedKPa(foam)).isCloseTo(101.325, within(1e-9));
    }

    /** A collar holds half a millimetre: up where the margin stays, else down, never to where the skin still holds. */
    @ParameterizedTest
    @CsvSource({"3, 12.5, 4.2, 4.5", "3, 12.5, 4.0, 4.0", "3, 2.7, 4.2, 4.0", "3.9, 2.6, 4.95, 5.0"})
    void aCollarIsSetInHalfMillimetres(double skinMm, double coreMm, double leastMm, double collarMm) {
        Laminate laminate = new Laminate("l", skinMm, coreMm, 2.5, "e-glass-polyester", "balsa-150", true);
        assertThat(DepthStop.collarMm(laminate, leastMm, 1.5)).isCloseTo(collarMm, within(1e-9));
    }
}
