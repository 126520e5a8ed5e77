package corewright.damage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.reuse.Memory;
import corewright.survey.CoreState;
import corewright.survey.Sound;
import corewright.survey.Survey;
import org.junit.jupiter.api.Test;

/** Editing with what was fitted kept. */
class FittedTest {
    private static Deck divided() {
        return Deck.plain()
                .divider("LINESTRING(1000 -10,1000 1010)")
                .moistureGrid(125, 500, 500, 220, 50)
                .tapGrid(125, 500, 500, 160)
                .probes(500, 500, 5, CoreState.ROTTED, null);
    }

    @Test
    void anUnchangedSurveyGivesTheSameMap() {
        Survey survey = divided().survey();
        Memory memory = new Memory();
        Fitted first = Damage.fit(survey, memory);

        Memory second = memory.next();
        Fitted again = Damage.fit(survey, second);

        assertThat(second.worked()).isEmpty();
        assertThat(again.map().faces().get(0).surfaces())
                .isEqualTo(first.map().faces().get(0).surfaces());
        assertThat(again.map().voidMm3()).isEqualTo(first.map().voidMm3());
    }

    @Test
    void aChangedReadingMovesTheMapInItsBayOnly() {
        Fitted first = Damage.fit(divided().survey(), new Memory());

        Survey edited =
                divided().reads(760, 500, 60).taps(690, 500, Sound.HOLLOW).survey();
        FaceDamage after =
                Damage.follow(edited, first.parameters()).map().faces().get(0);

        Surfaces before = first.map().faces().get(0).surfaces();
        assertThat(after.surfaces().pWet().cellAt(760, 500))
                .isGreaterThan(before.pWet().cellAt(760, 500) + 0.1);
        for (int i = 0; i < before.pWet().size(); i++) {
            boolean other = before.pWet().centreX(i % before.pWet().columns()) > 1000;
            if (other && !Double.isNaN(before.pWet().at(i))) {
                assertThat(after.surfaces().pWet().at(i))
                        .isEqualTo(before.pWet().at(i));
            }
        }
    }

    /** Started from what is known, the rounds stop within their tolerance of where they would from nothing. */
    @Test
    void theWayToAStateOfReadingsHardlyMatters() {
        Survey plain = divided().survey();
        Survey edited = divided().reads(610, 700, 45).survey();
        Fitted fitted = Damage.fit(plain, new Memory());

        Surfaces direct = fitted.map().faces().get(0).surfaces();
        Surfaces back = Damage.follow(
                        plain, Damage.follow(edited, fitted.parameters()).parameters())
                .map()
                .faces()
                .get(0)
                .surfaces();

        for (int i = 0; i < direct.pLoose().size(); i++) {
            if (!Double.isNaN(direct.pLoose().at(i))) {
                // a thousandth of a site's precision moves a probability by at most about as much
                assertThat(back.pLoose().at(i)).isCloseTo(direct.pLoose().at(i), within(5e-3));
                assertThat(back.pWet().at(i)).isCloseTo(direct.pWet().at(i), within(5e-3));
            }
        }
    }

    @Test
    void followingAnEditLeavesVolumesAndSuggestionsForLater() {
        Survey edited = divided().reads(610, 700, 45).survey();
        Fitted first = Damage.fit(divided().survey(), new Memory());

        Fitted followed = Damage.follow(edited, first.parameters());

        FaceDamage map = followed.map().faces().get(0);
        assertThat(first.old()).isFalse();
        assertThat(followed.old()).isTrue();
        assertThat(map.surfaces()).isNotEqualTo(first.map().faces().get(0).surfaces());
        assertThat(map.next()).isEqualTo(first.map().faces().get(0).next());
        assertThat(followed.map().voidMm3()).isEqualTo(first.map().voidMm3());
    }

    @Test
    void oneBayIsWorkedAnewWhereOneReadingChangedAndTheMapIsAsIfNothingWereRemembered() {
        Survey edited = divided().reads(610, 700, 45).survey();
        Memory memory = new Memory();
        Damage.fit(divided().survey(), memory);

        Memory second = memory.next();
        Fitted again = Damage.fit(edited, second);

        assertThat(second.worked()).containsEntry("BayInput", 1);
        assertThat(second.taken()).containsEntry("BayInput", 1);
        assertThat(again.old()).isFalse();
        assertThat(again.map()).isEqualTo(Damage.fit(edited, new Memory()).map());
    }
}
