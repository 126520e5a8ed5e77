package corewright.damage;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.survey.Finding;
import corewright.survey.Judgements;
import corewright.survey.Reading;
import corewright.survey.ReadingOverride;
import corewright.survey.ReadingOverride.Trust;
import corewright.survey.Sound;
import corewright.survey.Subject;
import java.util.List;
import org.junit.jupiter.api.Test;

class JudgedTest {
    /** Dry and sound all over but for one hollow call and one raised reading beside a cleat. */
    private static Deck contested() {
        return Deck.plain()
                .metal(1500, 500)
                .moistureGrid(125, 0, 0, 0, 0)
                .tapGrid(125, 0, 0, 0)
                .taps(812, 512, Sound.HOLLOW)
                .reads(1510, 530, 45);
    }

    private static FaceDamage map(Deck deck, ReadingOverride... overrides) {
        deck.judgements = new Judgements(List.of(), List.of(overrides), List.of());
        return deck.map();
    }

    private static ReadingOverride hollow(Trust trust) {
        int last = contested().survey().readings().taps().size() - 1;
        return ReadingOverride.of(contested().survey().readings().taps().get(last), trust, "heard it twice");
    }

    private static ReadingOverride raised(Trust trust) {
        int last = contested().survey().readings().moisture().size() - 1;
        return ReadingOverride.of(contested().survey().readings().moisture().get(last), trust, "");
    }

    @Test
    void aTrustedCallStandsAgainstItsNeighbours() {
        FaceDamage before = map(contested());
        FaceDamage after = map(contested(), hollow(Trust.TRUSTED));

        assertThat(after.surfaces().pLoose().cellAt(812, 512))
                .isGreaterThan(before.surfaces().pLoose().cellAt(812, 512) + 0.1);
        assertThat(after.findings())
                .filteredOn(f -> f.subject().word().equals("judgement"))
                .extracting(Finding::message)
                .containsExactly("trusted by the surveyor: heard it twice");
    }

    @Test
    void aTrustedReadingBesideMetalIsTakenInFull() {
        FaceDamage before = map(contested());
        FaceDamage after = map(contested(), raised(Trust.TRUSTED));

        assertThat(before.findings()).extracting(Finding::subject).contains(Subject.METAL);
        assertThat(after.findings()).extracting(Finding::subject).doesNotContain(Subject.METAL);
        assertThat(after.surfaces().pWet().cellAt(1510, 530))
                .isGreaterThan(before.surfaces().pWet().cellAt(1510, 530));
    }

    @Test
    void aReadingSetAsideIsAsIfItHadNotBeenTaken() {
        Deck never = Deck.plain().metal(1500, 500).moistureGrid(125, 0, 0, 0, 0).tapGrid(125, 0, 0, 0);

        FaceDamage map = map(contested(), hollow(Trust.SET_ASIDE), raised(Trust.SET_ASIDE));

        assertThat(map.surfaces()).isEqualTo(never.map().surfaces());
        assertThat(map.findings())
                .filteredOn(f -> f.subject().word().equals("judgement"))
                .extracting(Finding::message)
                .containsExactly(
                        "set aside by the surveyor: no reason given", "set aside by the surveyor: heard it twice");
    }

    @Test
    void theLaterJudgementWins() {
        FaceDamage map = map(contested(), hollow(Trust.SET_ASIDE), hollow(Trust.TRUSTED));

        assertThat(map.surfaces())
                .isEqualTo(map(contested(), hollow(Trust.TRUSTED)).surfaces());
    }

    @Test
    void aJudgementOfNoReadingIsKeptAndNamed() {
        ReadingOverride stray = new ReadingOverride(Reading.Kind.TAP, "T999", Deck.spot(1, 1), Trust.SET_ASIDE, "");

        FaceDamage map = map(contested(), stray);

        assertThat(map.surfaces()).isEqualTo(map(contested()).surfaces());
        assertThat(map.findings())
                .filteredOn(f -> f.subject().word().equals("judgement"))
                .extracting(Finding::message)
                .containsExactly("no reading of that kind, id and place: the judgement T999 speaks of nothing");
    }
}
