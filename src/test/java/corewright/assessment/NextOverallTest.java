package corewright.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.damage.NextReading;
import corewright.damage.NextReading.Kind;
import corewright.damage.NextReading.Unit;
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

    private static NextReading next(int rank, String face, double gain, Unit unit) {
        return new NextReading(rank, Kind.TAP, new Spot(face, 0, 0), gain, unit);
    }
}
