package corewright.drawing.placing;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.assessment.Assessment;
import corewright.drawing.DrawingFixture;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.PlanView;
import corewright.drawing.marks.ReadingMark;
import corewright.survey.About;
import corewright.survey.Finding;
import corewright.survey.Moisture;
import corewright.survey.Reading;
import corewright.survey.Readings;
import corewright.survey.Subject;
import corewright.survey.Tap;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ReadingMarksTest {
    private static final PlanView VIEW = new PlanView(20, 24, 95);

    @Test
    void joinsEachTapToTheReadingAtItsPlaceAndBracketsWhatIsDoubted() {
        Assessment assessment = DrawingFixture.foredeck();
        MapSpec spec =
                new MapSpec(assessment, DrawingFixture.FACE, new Box(0, 0, 200, 200), 20, Set.of(), MapWording.TRADE);

        List<ReadingMark> marks = ReadingMarks.of(spec, VIEW);

        // as counted in ronja.txt: 115 places, 12 dull, 14 hollow, 4 in brackets
        assertThat(marks).hasSize(115);
        assertThat(marks.stream().filter(m -> m.lines() == 1)).hasSize(12);
        assertThat(marks.stream().filter(m -> m.lines() == 2)).hasSize(14);
        assertThat(marks.stream().filter(m -> m.trust() == ReadingMark.Trust.DOUBTED))
                .hasSize(4);
    }

    /** A tap may bear a meter reading's id; what a person set aside is struck through as what the program sets aside. */
    @Test
    void marksTheReadingThatAFindingIsAboutAndNoOther() {
        Assessment all = DrawingFixture.foredeck();
        Readings r = all.survey().readings();
        Tap doubted = r.taps().get(20);
        Moisture aside = r.moisture().get(40);
        List<Moisture> moisture = new ArrayList<>(r.moisture());
        Moisture same = moisture.get(60);
        moisture.set(
                60,
                new Moisture(
                        same.origin(), doubted.id(), same.spot(), 20, false, "A", null, null, false, same.side(), ""));
        List<ReadingMark> marks = ReadingMarks.of(
                spec(DrawingFixture.with(
                        all,
                        new Readings(moisture, r.taps(), List.of(), List.of(), List.of(), List.of()),
                        List.of(finding(doubted, Subject.CONTRADICTION), finding(aside, Subject.SET_ASIDE)))),
                VIEW);

        assertThat(marks.stream().filter(m -> m.trust() == ReadingMark.Trust.DOUBTED))
                .singleElement()
                .satisfies(
                        m -> assertThat(m.x()).isEqualTo(VIEW.at(doubted.spot()).getX()));
        assertThat(marks.stream().filter(m -> m.trust() == ReadingMark.Trust.SET_ASIDE))
                .singleElement()
                .satisfies(
                        m -> assertThat(m.x()).isEqualTo(VIEW.at(aside.spot()).getX()));
    }

    private static Finding finding(Reading reading, Subject subject) {
        Finding.Severity severity = subject == Subject.SET_ASIDE ? Finding.Severity.HINT : Finding.Severity.DOUBT;
        return new Finding(severity, reading.origin(), About.of(reading), subject, "it is", "says nothing of the deck");
    }

    private static MapSpec spec(Assessment assessment) {
        return new MapSpec(assessment, DrawingFixture.FACE, new Box(0, 0, 200, 200), 20, Set.of(), MapWording.TRADE);
    }

    @Test
    void leavesOutEveryNumberThatWouldTouchAnother() {
        List<ReadingMark> dense = List.of(at(10), at(12), at(14), at(16.5));

        assertThat(ReadingMarks.thinned(dense, new Obstacles()))
                .extracting(ReadingMark::x)
                .containsExactly(10.0, 14.0);
    }

    private static ReadingMark at(double x) {
        return new ReadingMark(x, 10, "88", false, 0, ReadingMark.Trust.TAKEN);
    }
}
