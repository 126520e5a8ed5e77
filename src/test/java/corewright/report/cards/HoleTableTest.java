package corewright.report.cards;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HoleTableTest {
    /** A vent's words stand between two boxes, whatever they say. */
    @ParameterizedTest
    @CsvSource({"NaN,0", "NaN,140", "240,6", "2760,26", "6360,126", "45000,140"})
    void wordsOfAVentKeepOffTheBoxes(double dueS, double heldG) {
        assertThat(HoleTable.words(dueS, heldG))
                .allSatisfy(w -> assertThat(HoleTable.VENT_TYPE.width(w)).isLessThan(HoleTable.VENT_ROOM));
    }
}
