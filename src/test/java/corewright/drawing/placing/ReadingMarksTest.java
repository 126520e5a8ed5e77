package corewright.drawing.placing;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.assessment.Assessment;
import corewright.assessment.Partial;
import corewright.desktop.state.NewSurvey;
import corewright.drawing.DrawingFixture;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.PlanView;
import corewright.drawing.marks.ReadingMark;
import corewright.survey.About;
import corewright.survey.Finding;
import corewright.survey.Moisture;
import corewright.survey.Origin;
import corewright.survey.Part;
import corewright.survey.Reading;
import corewright.survey.Readings;
import corewright.survey.Side;
import corewright.survey.Spot;
import corewright.survey.Subject;
import corewright.survey.Survey;
import corewright.survey.Tap;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;

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

    /** Three thousand readings, 40 mm apart: far off some are left out, close by each has its place. */
    @Test
    void numbersDoNotPileUpHoweverManyThereAre() {
        Survey empty = NewSurvey.of("many", "deck", LocalDate.of(2026, 4, 2), new Envelope(0, 3000, -800, 800));
        List<Moisture> many = new ArrayList<>();
        for (int i = 0; i < 3000; i++) {
            Spot spot = new Spot("deck", 20 + 40 * (i % 75), -780 + 40 * (i / 75));
            many.add(new Moisture(
                    new Origin("many", i), "M" + i, spot, i % 101, false, "A", null, null, false, Side.OUTER, ""));
        }
        Assessment bare = Partial.bare(Part.MOISTURE.with(empty, many), List.of());
        double before = 0;
        for (double scale : new double[] {18, 9, 4}) {
            List<ReadingMark> shown = shown(bare, scale);
            for (int i = 0; i < shown.size(); i++) {
                for (int j = 0; j < i; j++) {
                    assertThat(shown.get(i).box().meets(shown.get(j).box()))
                            .as("two numbers on one place at 1 : %s", scale)
                            .isFalse();
                }
            }
            // of 200 x 145 mm of paper, with a reading every 40 mm of deck
            double share = shown.size() / Math.min(3000, 200 * 145 * scale * scale / 40 / 40);
            assertThat(share).as("share shown at 1 : %s", scale).isGreaterThan(before);
            before = share;
        }
        assertThat(before).as("share shown close by").isGreaterThan(0.8);
    }

    private static List<ReadingMark> shown(Assessment bare, double scale) {
        Box box = new Box(0, 0, 200, 145);
        MapSpec spec = new MapSpec(bare, "deck", box, scale, Set.of(Layer.READINGS), MapWording.TRADE);
        return MapLayout.seen(spec, new PlanView(scale, 100 - 1500 / scale, 72)).readings();
    }
}
