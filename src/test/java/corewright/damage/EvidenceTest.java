package corewright.damage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.field.Site;
import corewright.survey.CoreMoisture;
import corewright.survey.CoreState;
import corewright.survey.FeelerEnd;
import corewright.survey.Finding;
import corewright.survey.Meter;
import corewright.survey.Sound;
import corewright.survey.Subject;
import corewright.survey.Survey;
import corewright.survey.Tap;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EvidenceTest {
    private final List<Finding> findings = new ArrayList<>();

    private List<Observation> wet(Deck deck) {
        Survey survey = deck.survey();
        return WetEvidence.of(
                survey.faces().get(0),
                survey.readings(),
                survey.settings().thresholds(),
                MeterScale.all(survey),
                new Judged(survey),
                findings);
    }

    /** Dry 10, wet 30: the share is (value - 10) / 40 and z its logit. */
    @Test
    void putsTheWetReadingAtZeroAndCarriesTheMetersErrorThrough() {
        Site.Value atWet = (Site.Value) wet(Deck.plain().reads(1, 1, 30)).get(0).site();
        Site.Value quarter =
                (Site.Value) wet(Deck.plain().reads(1, 1, 20)).get(0).site();

        assertThat(atWet.value()).isCloseTo(0, within(1e-12));
        assertThat(atWet.error()).isCloseTo(0.045 / 0.25, within(1e-12));
        assertThat(quarter.value()).isCloseTo(Math.log(1.0 / 3), within(1e-12));
        assertThat(quarter.error()).isCloseTo(0.045 / 0.1875, within(1e-12));
    }

    @Test
    void takesTheEndsAndOffScaleReadingsAsBounds() {
        Site.Interval dry =
                (Site.Interval) wet(Deck.plain().reads(1, 1, 11)).get(0).site();
        Site.Interval full =
                (Site.Interval) wet(Deck.plain().reads(1, 1, 100, true)).get(0).site();
        Deck coarse = Deck.plain().reads(1, 1, 40, true);
        coarse.meter = new Meter("A", Meter.Kind.RELATIVE, 40, 10.0, 35.0);
        Site.Interval off = (Site.Interval) wet(coarse).get(0).site();

        assertThat(dry.high()).isCloseTo(-Math.log(9), within(1e-12));
        assertThat(full.low()).isCloseTo(Math.log(9), within(1e-12));
        assertThat(off.low()).isCloseTo(Math.log(0.6 / 0.4), within(1e-12));
        assertThat(off.high()).isInfinite();
    }

    @Test
    void averagesRepeatsAndTakesTheErrorFromTheirScatter() {
        Deck deck = Deck.plain();
        for (int place = 0; place < 5; place++) {
            deck.reads(100 * place, 1, 28).reads(100 * place, 1, 32);
        }

        List<Observation> seen = wet(deck);

        // two readings 4 apart: standard deviation 2 root 2, its mean's error 2, on a span of 40
        assertThat(seen).hasSize(5);
        assertThat(((Site.Value) seen.get(0).site()).error()).isCloseTo(2.0 / 40 / 0.25, within(1e-12));
    }

    @Test
    void doubtsARaisedReadingBesideMetalDownwardsOnly() {
        Site.Value beside = (Site.Value)
                wet(Deck.plain().metal(500, 500).reads(540, 500, 40)).get(0).site();
        Site.Value clear = (Site.Value)
                wet(Deck.plain().metal(500, 500).reads(700, 500, 40)).get(0).site();

        assertThat(beside.value()).isLessThan(clear.value());
        assertThat(beside.error()).isGreaterThan(3 * clear.error());
        assertThat(findings).singleElement().satisfies(f -> {
            assertThat(f.message()).isEqualTo("raised reading 40 beside cleat, 40 mm away: it may be falsely high");
            assertThat(f.about().id()).isEqualTo("M1");
        });
    }

    @Test
    void trustsALowReadingBesideMetal() {
        assertThat(wet(Deck.plain().metal(500, 500).reads(540, 500, 12)).get(0).site())
                .isEqualTo(wet(Deck.plain().reads(540, 500, 12)).get(0).site());
        assertThat(findings).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"DRY,,-1", "WET,,1", "ROTTED,,1", "NONE,,0", "NONE,WET,1", "ROTTED,DRY,-1"})
    void hearsFromPilotHolesWhatTheySayOfWater(CoreState state, @Nullable CoreMoisture noted, int direction) {
        List<Observation> seen = wet(Deck.plain().probes(1, 1, 2, state, noted));

        if (direction == 0) {
            assertThat(seen).isEmpty();
        } else {
            Site.Interval site = (Site.Interval) seen.get(0).site();
            assertThat(direction > 0 ? site.low() : site.high()).isZero();
        }
    }

    @Test
    void takesTheLowEndForDryAndTwiceThatForWetWithFindings() {
        Deck deck = Deck.plain();
        deck.meter = new Meter("A", Meter.Kind.RELATIVE, 100, null, null);
        for (int i = 0; i <= 20; i++) {
            deck.reads(50 * i, 1, 10 + i);
        }

        MeterScale scale = MeterScale.all(deck.survey()).values().iterator().next();

        assertThat(scale.dry()).isEqualTo(12);
        assertThat(scale.wet()).isEqualTo(24);
        assertThat(scale.findings()).hasSize(2).extracting(Finding::subject).containsOnly(Subject.METER_SCALE);
    }

    /** Stiffness goes with one over time squared: 1.2 times is 0.69, 1.5 times 0.44, 2 times a quarter. */
    @ParameterizedTest
    @CsvSource({"300, SOUND", "360, SOUND", "450, DULL", "600, HOLLOW"})
    void judgesAContactTimeAgainstSoundSkin(double us, Sound expected) {
        Deck deck = Deck.plain();
        for (int i = 0; i < 12; i++) {
            deck.tapsFor(100 * i, 1, 300);
        }
        Survey survey = deck.tapsFor(1, 500, us).survey();
        List<Tap> taps = survey.readings().taps();

        assertThat(new TapScale(survey).call(taps.get(taps.size() - 1))).isEqualTo(expected);
    }

    /** depth = core tanh u; the error is 0.5 mm through the slope, plus 0.05. */
    @Test
    void putsDepthsOnTheBoundedScale() {
        Deck deck = Deck.plain()
                .probes(1, 1, 5, null, null)
                .probes(2, 2, 0, null, null)
                .probes(3, 3, 12.5, null, null);
        Survey survey = deck.survey();

        List<Observation> seen = VoidEvidence.of(survey, survey.readings(), new TapScale(survey));

        Site.Value five = (Site.Value) seen.get(0).site();
        assertThat(12.5 * Math.tanh(five.value())).isCloseTo(5, within(1e-9));
        assertThat(five.error()).isCloseTo(0.5 / (12.5 * (1 - 0.16)) + 0.05, within(1e-9));
        assertThat(((Site.Interval) seen.get(1).site()).high()).isZero();
        assertThat(12.5 * Math.tanh(((Site.Interval) seen.get(2).site()).low())).isCloseTo(0.95 * 12.5, within(1e-9));
    }

    @Test
    void aRodOfAHundredMillimetresSpeaksAtThreePlacesAndItsEnd() {
        Survey firm = Deck.plain().feels(100, 100, 200, 100, FeelerEnd.FIRM).survey();
        Survey beyond = Deck.plain().feels(100, 100, 200, 100, FeelerEnd.BEYOND).survey();

        List<Observation> seen = VoidEvidence.of(firm, firm.readings(), new TapScale(firm));

        assertThat(seen).hasSize(4);
        assertThat(seen.get(3).spot().xMm()).isEqualTo(200);
        assertThat(((Site.Interval) seen.get(3).site()).high()).isZero();
        List<Observation> open = VoidEvidence.of(beyond, beyond.readings(), new TapScale(beyond));
        assertThat(((Site.Interval) open.get(3).site()).low()).isPositive();
    }
}
