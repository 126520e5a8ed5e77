package corewright.stiffness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import corewright.survey.EdgeSupport;
import corewright.survey.Laminate;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

class AbreastTest {
    @Test
    void resultsStandInTheOrderOfTheWorks() {
        List<Integer> works = IntStream.range(0, 40).boxed().toList();

        List<Integer> results = Abreast.on(works, k -> panel(1000), k -> {
            pause(k % 3);
            return 10 * k;
        });

        assertThat(results).isEqualTo(works.stream().map(k -> 10 * k).toList());
    }

    /** 9 x 9 m at 42 mm is ten times what may be side by side. */
    @Test
    void aLargePanelIsByItself() {
        AtomicInteger atWork = new AtomicInteger();
        List<Integer> beside = Abreast.on(List.of(1000, 9000, 1000, 9000, 1000), AbreastTest::panel, side -> {
            int others = atWork.getAndIncrement();
            pause(10);
            int most = Math.max(others, atWork.get() - 1);
            atWork.decrementAndGet();
            return side == 9000 ? most : 0;
        });

        assertThat(beside).isEqualTo(Collections.nCopies(5, 0));
    }

    @Test
    void anErrorComesOutAsItself() {
        assertThatThrownBy(() -> Abreast.on(List.of(1, 2), k -> panel(1000), k -> {
                    throw new StackOverflowError();
                }))
                .isInstanceOf(StackOverflowError.class);
    }

    private static void pause(int ms) {
        try {
            Thread.sleep(ms);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static DeckPanel panel(int sideMm) {
        Polygon area = (Polygon) new GeometryFactory().toGeometry(new Envelope(0, sideMm, 0, sideMm));
        return new DeckPanel(
                "deck-P1",
                "deck",
                area,
                Collections.nCopies(4, EdgeSupport.SIMPLE),
                EdgeSupport.FREE,
                new Laminate("lay-up", 3, 12.5, 3, "e-glass-polyester", "balsa-150", true),
                Optional.empty());
    }
}
