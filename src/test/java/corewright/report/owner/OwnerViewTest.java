package corewright.report.owner;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.assessment.Assessment;
import corewright.report.SampleAssessment;
import corewright.report.owner.OwnerView.Amount;
import org.junit.jupiter.api.Test;

/** The owner's page on a screen says what the paper says, and its pictures what the figures say. */
class OwnerViewTest {
    @Test
    void itIsWhatThePaperSays() {
        Assessment found = SampleAssessment.damaged();
        OwnerView view = OwnerView.of(found);
        assertThat(view.now().get(0)).startsWith("Keep load off the mooring bollard");
        assertThat(String.join(" ", view.now())).isEqualTo(OwnerWords.now(found).replace("**", ""));
        for (Amount amount : view.amounts()) {
            assertThat(amount.middle()).isBetween(amount.low(), amount.high());
        }
    }

    /** Stiffness is force over deflection: with a quarter left it gives four times as far. */
    @Test
    void theDeckGivesAsFarAsItsStiffnessSays() {
        assertThat(new OwnerView.Foot("the deck", 3.1).dipMm(0.25)).isEqualTo(12.4);
        assertThat(OwnerView.of(SampleAssessment.damaged()).foot())
                .as("no panel was calculated")
                .isEmpty();
    }

    @Test
    void nothingIsDrawnOfWhatIsNotKnown() {
        OwnerView sound = OwnerView.of(SampleAssessment.sound());
        assertThat(sound.now()).containsExactly("Nothing is pressing. Read the deck again in a year.");

        OwnerView unread = OwnerView.of(SampleAssessment.unread());
        assertThat(unread.amounts()).isEmpty();
        assertThat(unread.choices()).isEmpty();
        assertThat(unread.now()).hasSize(1);
    }
}
