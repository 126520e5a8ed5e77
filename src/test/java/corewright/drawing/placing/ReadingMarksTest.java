package corewright.drawing.placing;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.assessment.Assessment;
import corewright.drawing.DrawingFixture;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.PlanView;
import corewright.drawing.marks.ReadingMark;
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
