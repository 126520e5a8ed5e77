package corewright.drawing.placing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.contour.Raster;
import corewright.drawing.kit.PlanView;
import corewright.drawing.placing.ArrivalLines.Line;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;

/** Lines of arrival against a front that spreads evenly, whose place is known. */
class ArrivalLinesTest {
    private static final double CELL_MM = 5;
    private static final double MM_PER_MINUTE = 40;
    private static final PlanView VIEW = new PlanView(5, 100, 100);

    @Test
    void everyLineIsTheCircleOfItsMinute() {
        List<Line> lines = ArrivalLines.of(radial(80, 0), VIEW);

        assertThat(lines).extracting(Line::minute).containsExactlyInAnyOrder(1, 2, 3, 4);
        for (Line line : lines) {
            for (Coordinate c : line.onPaper().getCoordinates()) {
                double radius = Math.hypot(c.x - VIEW.datumX(), c.y - VIEW.datumY()) * VIEW.scale();
                // linear between cell centres: off by at most h^2 / (8 r) = 0.08 mm at 40 mm, plus its own corner cut
                assertThat(radius).isCloseTo(line.minute() * MM_PER_MINUTE, within(0.1 * CELL_MM));
            }
        }
    }

    @Test
    void whereNothingArrivesThereIsNoLine() {
        double[] nothing = new double[100];
        Arrays.fill(nothing, Double.NaN);

        assertThat(ArrivalLines.of(new Raster(0, 0, 5, 10, 10, nothing), VIEW)).isEmpty();
    }

    @Test
    void theEdgeOfTheFillIsNoLineOfArrival() {
        double edgeMm = 110;

        for (Line line : ArrivalLines.of(radial(80, edgeMm), VIEW)) {
            for (Coordinate c : line.onPaper().getCoordinates()) {
                double radius = Math.hypot(c.x - VIEW.datumX(), c.y - VIEW.datumY()) * VIEW.scale();
                assertThat(radius).isLessThan(edgeMm - CELL_MM);
            }
        }
    }

    @Test
    void aLongFillHasFewLines() {
        assertThat(ArrivalLines.of(radial(400, 0), VIEW).stream()
                        .map(Line::minute)
                        .distinct())
                .hasSizeBetween(2, 6);
    }

    /** Arrival in seconds round (0, 0); NaN beyond an edge, where there is one. */
    private static Raster radial(int cells, double edgeMm) {
        double[] seconds = new double[cells * cells];
        double from = -cells * CELL_MM / 2;
        for (int k = 0; k < seconds.length; k++) {
            double x = from + (k % cells + 0.5) * CELL_MM;
            double y = from + (k / cells + 0.5) * CELL_MM;
            double away = Math.hypot(x, y);
            // nothing in the corners, so that every line closes
            double edge = edgeMm > 0 ? edgeMm : -from - CELL_MM;
            seconds[k] = away > edge ? Double.NaN : 60 * away / MM_PER_MINUTE;
        }
        return new Raster(from, from, CELL_MM, cells, cells, seconds);
    }
}
