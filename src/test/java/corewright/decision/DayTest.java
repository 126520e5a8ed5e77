package corewright.decision;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DayTest {
    /** A few of the days of {@link DayBenchmark}; each had a fault once: one alone who plugs while pouring, vents due in no work time. */
    @ParameterizedTest
    @ValueSource(longs = {5, 17, 163})
    void nobodyIsAskedForWhatCannotBeDone(long seed) {
        assertThat(DayFaults.of(DayFaults.deckOf(seed))).isEmpty();
    }
}
