package corewright.repair.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.repair.plan.Reach;
import corewright.survey.settings.Drilling;
import corewright.survey.settings.Resin;
import corewright.survey.settings.Settings;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReachLawTest {
    /** The mix of the table below: gels 25 minutes after mixing. */
    private static final Resin FOAM =
            new Resin("f", 0.35, 1160, 4.83, 1.15, 3, 360, 360, 1320, 1500, 2940, 25, true, 0, 0, 0, 0, "test");

    private static final Resin THIN = Settings.defaults().resin("epoxy-thin");

    /** Closed form inverted with SciPy (see the README beside the file); nine digits given. */
    @Test
    void frontAgreesWithTheClosedFormOfRadialFilling() throws IOException {
        List<String> lines;
        try (InputStream in = ReachLawTest.class.getResourceAsStream("/corewright/repair/radial-fill.csv")) {
            lines = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .toList();
        }
        assertThat(lines).hasSize(39);
        for (String line : lines) {
            String[] f = line.split(",");
            double gapMm = 1000 * Double.parseDouble(f[1]);
            double radiusMm = 1000 * Double.parseDouble(f[2]);
            double pressureKPa = Double.parseDouble(f[3]) / 1000;
            double effectiveS = Double.parseDouble(f[7]);
            if (!f[5].isEmpty()) {
                double elapsedS = f[6].equals("inf") ? Double.POSITIVE_INFINITY : Double.parseDouble(f[6]);
                assertThat(ReachLaw.effectiveTimeS(Double.parseDouble(f[5]), elapsedS))
                        .as(line)
                        .isCloseTo(effectiveS, Percentage.withPercentage(1e-4));
            }
            assertThat(ReachLaw.frontMm(gapMm, radiusMm, pressureKPa, Double.parseDouble(f[4]), effectiveS))
                    .as(line)
                    .isCloseTo(1000 * Double.parseDouble(f[8]), Percentage.withPercentage(1e-4));
        }
    }

    /** Own table, computed beforehand in C++: this foam, 200 g, waste 15 %. */
    @ParameterizedTest
    @CsvSource({
        "0.3, 40, 59, pressure in the gap",
        "1, 40, 150, largest reach relied on",
        "3, 40, 150, largest reach relied on",
        "6, 40, 150, largest reach relied on",
        "12, 40, 118, size of a batch",
        "0.3, 10, 33, pressure in the gap",
        "1, 10, 92, pressure in the gap",
        "12, 10, 118, size of a batch"
    })
    // the table's 128 mm of a batch, less the 10 mm that a hole may stand off
    void plannedReachAgreesWithTheTable(double gapMm, double pressureKPa, double reachMm, String governedBy) {
        Reach reach = new ReachLaw(FOAM, at(pressureKPa), 25).at(gapMm);
        assertThat(reach.mm()).isCloseTo(reachMm, within(0.5)); // the table is rounded to a millimetre
        assertThat(reach.governedBy()).isEqualTo(governedBy);
    }

    /** The same table: half the pressure reach, before batch and cap. */
    @ParameterizedTest
    @CsvSource({
        "0.3, 10, 33", "0.3, 40, 59", "0.3, 100, 88", "1, 10, 92", "1, 40, 170", "1, 100, 257", "3, 10, 245",
        "3, 40, 459", "3, 100, 699", "6, 10, 459", "6, 40, 867", "6, 100, 1324", "12, 10, 867", "12, 40, 1646",
        "12, 100, 2520"
    })
    void halfThePressureReachAgreesWithTheTable(double gapMm, double pressureKPa, double halfMm) {
        assertThat(0.5 * new ReachLaw(FOAM, at(pressureKPa), 25).pressureReachMm(gapMm))
                .isCloseTo(halfMm, within(0.5 + 0.001 * halfMm)); // hole 6.4 mm here and there
    }

    @ParameterizedTest
    @CsvSource({"0.1, 79", "0.2, 146", "0.3, 209", "0.5, 332"})
    void thinEpoxyGetsFartherInLowGaps(double gapMm, double halfMm) {
        assertThat(0.5 * new ReachLaw(THIN, at(40), 25).pressureReachMm(gapMm)).isCloseTo(halfMm, within(0.6));
        assertThat(new ReachLaw(THIN, at(40), 25).pressureReachMm(gapMm))
                .isGreaterThan(new ReachLaw(FOAM, at(40), 25).pressureReachMm(gapMm));
    }

    @Test
    void aCoolDayPromisesNoLongerReach() {
        double warm = new ReachLaw(FOAM, at(40), 28).pressureReachMm(0.3);
        double cool = new ReachLaw(FOAM, at(40), 12).pressureReachMm(0.3);
        assertThat(cool).isCloseTo(warm, within(1e-6));
    }

    @Test
    void aSlowToolGoverns() {
        Drilling d = at(40);
        Drilling slow = new Drilling(6.4, 12.5, 1.5, 40, 0.02, 0.5, 150, 0.15, 60, 200, 12, 300, 6, 5);
        assertThat(new ReachLaw(FOAM, slow, 25).at(6).governedBy()).isEqualTo("rate of the tool");
        assertThat(new ReachLaw(FOAM, d, 25).at(6).governedBy()).isNotEqualTo("rate of the tool");
    }

    private static Drilling at(double pressureKPa) {
        return new Drilling(6.4, 12.5, 1.5, pressureKPa, 3, 0.5, 150, 0.15, 60, 200, 12, 300, 6, 5);
    }
}
