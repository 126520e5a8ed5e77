package corewright.assessment;

import static corewright.DamageFixtures.deck;
import static corewright.DamageFixtures.rectangle;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.Assessments;
import corewright.DamageFixtures.Deck;
import corewright.damage.Condition;
import corewright.damage.NextReading;
import corewright.damage.NextReading.Kind;
import corewright.damage.NextReading.Unit;
import corewright.decision.Flip;
import corewright.decision.Method;
import corewright.survey.Spot;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Next readings of several faces become one list. */
class NextOverallTest {
    @Test
    void facesKeepTheirOrderAndTheMostTellingComesFirst() {
        List<NextReading> fore =
                List.of(next(1, "fore", 0.2, Unit.SQUARE_METRE), next(2, "fore", 0.3, Unit.SQUARE_METRE));
        List<NextReading> sole = List.of(next(1, "sole", 0.4, Unit.LITRE), next(2, "sole", 0.1, Unit.LITRE));

        List<NextReading> ranked = NextOverall.ranked(List.of(fore, sole));

        // shares: fore 2/3 then 1; sole 1 then 1/4
        assertThat(ranked).extracting(n -> n.spot().face()).containsExactly("sole", "fore", "fore", "sole");
        assertThat(ranked).extracting(NextReading::gain).containsExactly(0.4, 0.2, 0.3, 0.1);
        assertThat(ranked).extracting(NextReading::rank).containsExactly(1, 2, 3, 4);
    }

    /** What changes a decision comes as far forward as it is likely to, whatever stands before it on its face. */
    @Test
    void whatChangesADecisionComesForward() {
        List<NextReading> fore = List.of(
                next(1, "fore", 0.4, Unit.SQUARE_METRE),
                next(2, "fore", 0.3, Unit.SQUARE_METRE),
                new NextReading(3, Kind.PROBE, new Spot("fore", 500, 0), 0, Unit.LITRE, 0.8),
                new NextReading(4, Kind.PROBE, new Spot("fore", 900, 0), 0, Unit.LITRE, 1.1));

        List<NextReading> ranked = NextOverall.ranked(List.of(fore));

        // worth: taps 1 and 3/4 by area alone; holes 0.8 and 1.1 by decisions alone
        assertThat(ranked).extracting(NextReading::decisions).containsExactly(1.1, 0.0, 0.8, 0.0);
        assertThat(ranked).extracting(NextReading::gain).containsExactly(0.0, 0.4, 0.0, 0.3);
    }

    /** One hole, two answers: dry core there and wet core there both change the method. */
    @Test
    void aHoleThatWouldChangeAMethodIsSuggestedWithBothItsAnswers() {
        Deck deck =
                deck(rectangle(0, -1500, 4000, 1500)).region(Condition.VOID, rectangle(1000, 100, 1400, 400), 4, 0.2);
        List<Flip> flips =
                Assessments.decide(deck.survey(), deck.damage()).weighing().flips();
        assertThat(flips).hasSize(2).allMatch(f -> f.spot() != null);

        assertThat(NextOverall.of(deck.damage(), flips)).singleElement().satisfies(n -> {
            assertThat(n.kind()).isEqualTo(Kind.PROBE);
            assertThat(n.spot()).isEqualTo(flips.get(0).spot());
            assertThat(n.decisions())
                    .isCloseTo(flips.get(0).probability() + flips.get(1).probability(), within(1e-12)); // one sum
        });
    }

    /** What further readings of a region would change stands with the first place for the meter in it. */
    @Test
    void aMeanThatWouldChangeAMethodStandsWithAPlaceOfItsRegion() {
        Deck deck =
                deck(rectangle(0, -1500, 4000, 1500)).region(Condition.WET, rectangle(1000, 100, 1400, 400), 0, 0.8);
        NextReading outside = moisture(1, 300);
        NextReading inside = moisture(2, 1200);
        Flip flip = new Flip("R1", Method.MONITOR, Method.DRY_OUT, "further readings", 0.3, null);

        assertThat(NextOverall.deciding(
                        deck.damage().faces().get(0).regions(), List.of(outside, inside), Deck.FACE, List.of(flip)))
                .extracting(NextReading::decisions)
                .containsExactly(0.0, 0.3);
    }

    private static NextReading moisture(int rank, double x) {
        return new NextReading(rank, Kind.MOISTURE, new Spot(Deck.FACE, x, 250), 0.1, Unit.SQUARE_METRE);
    }

    private static NextReading next(int rank, String face, double gain, Unit unit) {
        return new NextReading(rank, Kind.TAP, new Spot(face, 0, 0), gain, unit);
    }
}
