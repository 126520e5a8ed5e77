package corewright.damage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.reuse.Memory;
import corewright.survey.Sound;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class InsightTest {
    private static Deck leak() {
        Random random = new Random(3);
        Deck deck = Deck.plain();
        for (double y = 50; y < 1000; y += 100) {
            for (double x = 50; x < 2000; x += 100) {
                double far = Math.hypot(x - 800, y - 500);
                deck.reads(x, y, 10 + 40 / (1 + Math.exp((far - 250) / 40)) + random.nextGaussian());
                deck.taps(x, y, far < 160 ? Sound.HOLLOW : far < 200 ? Sound.DULL : Sound.SOUND);
            }
        }
        return deck;
    }

    private static Insight insight(Deck deck) {
        Fitted fitted = Damage.fit(deck.survey(), new Memory());
        return InsightWork.of(fitted.map().faces().get(0), fitted.parameters());
    }

    private static double brier(Insight.Quantity q) {
        return q.foretold().stream()
                .mapToDouble(f -> Math.pow(f.probability() - (f.came() ? 1 : 0), 2))
                .average()
                .orElseThrow();
    }

    @Test
    void everyReadingIsForetoldOnceAndBetterThanByTheirShareAlone() {
        Insight insight = insight(leak());

        assertThat(insight.water().foretold()).hasSize(200);
        assertThat(insight.bond().foretold()).hasSizeBetween(180, 200); // a dull call tells neither side of the bound
        for (Insight.Quantity q : new Insight.Quantity[] {insight.water(), insight.bond()}) {
            double share = q.foretold().stream()
                    .mapToDouble(f -> f.came() ? 1 : 0)
                    .average()
                    .orElseThrow();
            // foretelling by the share alone has the Brier score p (1 - p): Brier, Mon. Weather Rev. 78 (1950) 1
            assertThat(brier(q)).isLessThan(0.5 * share * (1 - share));
            assertThat(q.foretold()).allSatisfy(f -> {
                assertThat(f.low()).isLessThanOrEqualTo(f.middle());
                assertThat(f.middle()).isLessThanOrEqualTo(f.high());
                assertThat(f.probability()).isBetween(0.0, 1.0);
            });
        }
    }

    @Test
    void nearReadingsAreMoreAlikeThanFarOnesAndTheModelSaysSoToo() {
        for (Insight.Lag first : insight(leak()).water().lags().subList(0, 1)) {
            Insight.Lag last = insight(leak()).water().lags().get(6);
            assertThat(first.seen()).isLessThan(last.seen());
            assertThat(first.model()).isLessThan(last.model());
        }
    }

    @Test
    void drawsOfTheVolumeAreThoseOfTheMap() {
        Deck deck = leak();
        Fitted fitted = Damage.fit(deck.survey(), new Memory());
        FaceDamage face = fitted.map().faces().get(0);
        double[] draws = InsightWork.of(face, fitted.parameters()).voidMm3().stream()
                .mapToDouble(v -> v)
                .toArray();

        assertThat(Quantiles.of(draws)).isEqualTo(face.voidMm3());
    }

    @Test
    void aFaceWithoutReadingsHasNothingToForetell() {
        Insight insight = insight(Deck.plain());

        assertThat(insight.water().foretold()).isEmpty();
        assertThat(insight.water().lags()).isEmpty();
        assertThat(insight.bond().foretold()).isEmpty();
    }

    /** Two normals of correlation r fall on different sides of their mean with probability arccos(r) / pi (Sheppard 1899). */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.3, 0.6, 0.9})
    void halfSquareOfOneStepAgreesWithSheppard(double r) {
        double variance = 0.09; // the other bound is ten standard deviations away
        double halfSquare = ReadingScore.CALL.halfSquare(-LooseEvidence.DULL_BAND, r * variance, (1 - r) * variance);

        // 0.5 is the step; the rule takes a step to 0.02 of its height
        assertThat(halfSquare).isCloseTo(0.5 * 0.25 * Math.acos(r) / Math.PI, within(0.02 * 0.0625));
    }
}
