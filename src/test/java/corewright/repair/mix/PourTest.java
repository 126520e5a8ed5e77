package corewright.repair.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.repair.plan.Batch;
import corewright.repair.plan.Hole;
import corewright.survey.Spot;
import corewright.survey.settings.Drilling;
import corewright.survey.settings.Resin;
import corewright.survey.settings.Settings;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PourTest {
    /** A tool that gives any rate, so that its pressure decides. */
    private static final Drilling PRESSURE = new Drilling(6.4, 12.5, 1.5, 40, 1e6, 0.5, 150, 0, 0, 200, 12, 300, 6, 5);

    /**
     * Radial filling between plates at constant pressure (Hele-Shaw 1898), {@code t = 12 mu / (h^2 p) [R^2/2 ln(R/r0) - (R^2 -
     * r0^2)/4]}, worked beforehand apart from the program. The last is the case of a loose skin: 15 g of thin epoxy at 19 °C.
     */
    @ParameterizedTest
    @CsvSource({
        "3, 50, 1, 4, 100, 0.3626",
        "1.5, 50, 1, 4, 100, 1.450",
        "1, 0.53955, 0.5, 3, 20, 3.13",
        "1, 0.53955, 0.5, 3, 50, 32.18",
        "1, 0.53955, 0.5, 3, 100, 167.2",
        "0.3, 40, 0.606, 3.2, 120.3, 45.71"
    })
    void aThinMixTakesWhatTheRadialLawSays(
            double gapMm, double kPa, double paS, double r0, double frontMm, double seconds) {
        Drilling tool = new Drilling(2 * r0, 12.5, 1.5, kPa, 1e6, 0.5, 150, 0, 0, 200, 12, 300, 6, 5);
        double netG = Math.PI * (frontMm * frontMm - r0 * r0) * gapMm * 1e-3;
        // the table's last digit, and the midpoint rule on 60 parts, off most where the front leaves the hole
        assertThat(new Pour(mix(paS, 1e6), tool, 25).seconds(hole(gapMm, 1), netG))
                .isCloseTo(seconds, Percentage.withPercentage(0.6));
    }

    /** A mix that thickens as exp(t/tau) needs the time t with tau (exp(-t0/tau) - exp(-(t0+t)/tau)) as long as a thin one's. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 60, 300})
    void aMixThatThickensTakesLonger(double ageS) {
        double gelS = 1000;
        double tau = gelS / Math.log(100);
        Hole hole = hole(0.5, 1);
        double thin = new Pour(mix(2, 1e6), PRESSURE, 25).seconds(hole, 8, 0, 0);
        double expected = -tau * Math.log(Math.exp(-ageS / tau) - thin / tau) - ageS;
        double seconds = new Pour(mix(2, gelS), PRESSURE, 25).seconds(hole, 8, ageS, 0);
        assertThat(seconds).isCloseTo(expected, Percentage.withPercentage(1)).isGreaterThan(thin);
    }

    @Test
    void inAHighGapTheToolsRateDecides() {
        Drilling tool = Settings.defaults().drilling();
        assertThat(new Pour(mix(3, 2400), tool, 25).seconds(hole(6, 1), 30)).isCloseTo(10, within(1e-9));
    }

    @Test
    void aMixThatGelsBeforeItIsInTakesForEver() {
        assertThat(new Pour(mix(50, 300), PRESSURE, 25).seconds(hole(0.2, 1), 50, 0, 0))
                .isInfinite();
    }

    /** 3 minutes of work time: what a hole cannot take from one cup comes from several, each in time; holes part their cups. */
    @Test
    void cupsArePouredWithinTheWorkTime() {
        Settings d = Settings.defaults();
        Resin quick = new Resin("q", 0.3, 1000, 1, 1, 0.6, 180, 180, 180, 600, 3600, 25, true, 0, 0, 0, 0, "test");
        Pour pour = new Pour(quick, d.drilling(), d.climate().temperatureC());
        double factor = quick.timeFactor(d.climate().temperatureC());
        List<Hole> holes = List.of(hole(0.3, 1), hole(0.3, 2), hole(0.3, 3), hole(0.3, 4));
        List<Batch> cups = Batches.of("R1", holes, Mix.ofNet(80, quick, 0.15), quick, d);
        assertThat(cups).hasSizeGreaterThan(2);
        for (Batch cup : cups) {
            double age = d.drilling().mixingS();
            double netG = (cup.partAG() + cup.partBG()) * 0.85;
            for (int i = 0; i < cup.holes().size(); i++) {
                Hole hole = holes.get(Integer.parseInt(cup.holes().get(i).substring(3)) - 1);
                age += pour.seconds(hole, netG / cup.holes().size(), age, 0) + (i > 0 ? Batches.HOLE_S : 0);
            }
            assertThat(age).isLessThanOrEqualTo(factor * quick.workS());
        }
    }

    private static Resin mix(double paS, double gelS) {
        return new Resin("m", 0.3, 1000, 1, 1, paS, 200, 200, 200, gelS, gelS, 25, true, 0, 0, 0, 0, "test");
    }

    private static Hole hole(double gapMm, int number) {
        return new Hole(
                "R1-" + number,
                "R1",
                Hole.Kind.INJECTION,
                number,
                new Spot("f", 1000 * number, 0),
                6.4,
                4,
                150,
                1e5,
                null,
                Hole.Range.NONE,
                gapMm);
    }
}
