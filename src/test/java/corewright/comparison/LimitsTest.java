package corewright.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LimitsTest {
    private static List<Double> normal(long seed, double mean) {
        Random random = new Random(seed);
        List<Double> draws = new ArrayList<>();
        for (int i = 0; i < 500; i++) {
            draws.add(mean + random.nextGaussian());
        }
        return draws;
    }

    /** Half a per cent of a normal lies beyond 2.576 standard deviations; five hundred draws tell a limit to about a tenth of it. */
    @Test
    void limitsAreThoseOfIndependentErrors() {
        Limits limits = Limits.ofDifference(normal(1, 10), normal(2, 7));
        double reach = 2.576 * Math.sqrt(2);
        assertThat(limits.low()).isCloseTo(-3 - reach, within(0.4));
        assertThat(limits.high()).isCloseTo(-3 + reach, within(0.4));
    }

    /** The same random numbers stand behind both surveys: draw by draw they would agree exactly. */
    @Test
    void aDrawIsNeverPutBesideItsOwnNumber() {
        List<Double> draws = normal(3, 0);
        Limits limits = Limits.ofDifference(draws, draws);
        assertThat(limits.high() - limits.low()).isGreaterThan(5);
    }

    @Test
    void aDifferenceTheDrawsDoNotHoldWidensThem() {
        List<Double> nought = Collections.nCopies(500, 0.0);
        assertThat(Limits.ofDifference(nought, nought).with(-2)).isEqualTo(new Limits(-2, 0));
        assertThat(new Limits(-2, 0).holdsNought()).isTrue();
        assertThat(new Limits(-4, -2).widened(2)).isEqualTo(new Limits(-5, -1));
    }
}
