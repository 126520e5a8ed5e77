package corewright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Simulated decks with their truth; see trial-decks/README.md among the test resources. */
class TrialDecksTest {
    /** Floors: what was measured when the method was last changed, less 0.03 (void: less 0.1). */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "deck00, 0.92, 0.84, 0.40",
        "deck05, 0.92, 0.80, 0.40",
        "deck12, 0.84, 0.88, 0.70",
        "deck14, 0.82, 0.74, 0.55"
    })
    void findsTheDamageOfADeckWhoseTruthIsKnown(String deck, double wet, double delaminated, double empty)
            throws IOException {
        DeckScore score = TrialDecks.score(Path.of("src/test/resources/trial-decks", deck));

        assertThat(score.overlap().wet()).isGreaterThan(wet);
        assertThat(score.overlap().delaminated()).isGreaterThan(delaminated);
        assertThat(score.overlap().empty()).isGreaterThan(empty);
        assertThat(score.trueLitres())
                .isBetween(score.litres().p10() / 2, score.litres().p90() * 2);
    }
}
