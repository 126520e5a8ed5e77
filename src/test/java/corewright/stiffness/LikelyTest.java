package corewright.stiffness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.damage.Quantiles;
import org.junit.jupiter.api.Test;

class LikelyTest {
    @Test
    void nothingLostIsNotInDoubt() {
        assertThat(Likely.range(1, 1, 1)).isEqualTo(new Quantiles(1, 1, 1));
        assertThat(Likely.range(1.02, 1.01, 1.03)).isEqualTo(new Quantiles(1.01, 1.02, 1.03));
    }

    @Test
    void theMiddleStaysAndEitherOutlookMayBeEitherEnd() {
        Quantiles range = Likely.range(0.25, 0.24, 0.28);

        assertThat(range.p50()).isEqualTo(0.25);
        assertThat(range.p10()).isLessThan(0.24);
        assertThat(range.p90()).isGreaterThan(0.28);
        assertThat(Likely.range(0.25, 0.28, 0.24)).isEqualTo(range);
        assertThat(Likely.range(0.25, 0.27, 0.28).p10()).isLessThan(0.25);
    }

    /** Errors that do not hang together join by the root of the squares: with no doubt of one kind the other is left alone. */
    @Test
    void withoutOutlooksTheRangeIsAPartOfWhatWasLost() {
        Quantiles half = Likely.range(0.5, 0.5, 0.5);
        Quantiles quarter = Likely.range(0.25, 0.25, 0.25);

        assertThat(Math.log(quarter.p90() / 0.25)).isCloseTo(2 * Math.log(half.p90() / 0.5), within(1e-12));
        assertThat(Math.log(0.25 / quarter.p10())).isCloseTo(2 * Math.log(0.5 / half.p10()), within(1e-12));
        assertThat(quarter.p90()).isLessThan(1);
    }
}
