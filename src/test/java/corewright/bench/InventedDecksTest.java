package corewright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.bench.InventedDecks.Tally;
import corewright.bench.InventedTruth.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The benchmark's short form: one deck of each kind, held to far less than the medians of many. */
class InventedDecksTest {
    @ParameterizedTest
    @EnumSource(names = "NONE", mode = EnumSource.Mode.EXCLUDE)
    void findsMostOfTheDamageOfAnInventedDeck(Kind kind) {
        Tally tally = new Tally();

        InventedDecks.add(tally, kind, 3, false);

        // the worst medians of eight decks, many small leaks: 0.80 and 0.46; a single deck may be a third below
        assertThat(tally.scores().get(0).overlap().wet()).isGreaterThan(0.53);
        assertThat(tally.scores().get(0).overlap().delaminated()).isGreaterThan(0.30);
    }

    @Test
    void claimsNothingOnAnInventedDeckWithoutDamage() {
        Tally tally = new Tally();

        InventedDecks.add(tally, Kind.NONE, 3, false);

        // 0.02 m2 of false region is what a deck may show in three of a hundred
        assertThat(tally.falseM2().get(0)).isLessThan(0.02);
    }
}
