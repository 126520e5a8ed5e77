package corewright.report.owner;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.survey.About;
import corewright.survey.Finding;
import corewright.survey.Origin;
import corewright.survey.Reading;
import corewright.survey.Spot;
import corewright.survey.Subject;
import java.util.List;
import org.junit.jupiter.api.Test;

class OwnerDoubtsTest {
    private static final Spot SPOT = new Spot("foredeck", 300, 300);

    private static Finding doubt(About about, Subject subject, String message) {
        return new Finding(Finding.Severity.DOUBT, new Origin("x", 1), about, subject, message, "so");
    }

    private static About probe(String id) {
        return new About.OfReading(new Reading.Key(Reading.Kind.PROBE, id, SPOT), SPOT);
    }

    @Test
    void aReadingThatContradictsTwiceIsOneReading() {
        assertThat(OwnerDoubts.of(List.of(
                        doubt(probe("P1"), Subject.CONTRADICTION, "of water"),
                        doubt(probe("P1"), Subject.CONTRADICTION, "of the bond"))))
                .isEqualTo(" One reading contradicts its neighbours; the plan follows the neighbours.");
    }

    /** Few taps and few meter readings on a face of one bay: said of the face by the check, of the bay by the map. */
    @Test
    void aPartWithTooFewReadingsIsOnePart() {
        About face = new About.OfFace("foredeck");
        About bay = new About.OfBay("foredeck-B1", "foredeck");
        assertThat(OwnerDoubts.of(List.of(
                        doubt(face, Subject.FEW_READINGS, "Only 3 taps"),
                        doubt(face, Subject.FEW_READINGS, "Only 4 moisture readings"),
                        doubt(bay, Subject.FEW_READINGS, "3 taps"),
                        doubt(bay, Subject.FEW_READINGS, "4 readings of water"))))
                .isEqualTo(
                        " One part of the deck has too few readings to tell how far one speaks for its surroundings.");
    }

    @Test
    void aDividerIsAnotherDoubtAndNoReading() {
        assertThat(OwnerDoubts.of(List.of(
                        doubt(probe("P1"), Subject.METAL, "beside metal"),
                        doubt(new About.OfFeature("stringer", SPOT), Subject.DIVIDER, "ends inside"))))
                .isEqualTo(" One reading near metal may be falsely high and counts for less than it shows."
                        + " One more doubt: see findings.csv.");
    }
}
