package corewright.desktop.insight;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.damage.Insight;
import corewright.damage.Insight.Foretold;
import corewright.damage.Insight.Lag;
import corewright.damage.Insight.Quantity;
import corewright.damage.Quantiles;
import corewright.desktop.state.Units;
import corewright.drawing.screen.Chart;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class InsightPanelsTest {
    private static final Quantity NONE = new Quantity(List.of(), List.of());

    /** Of a hundred readings so many lie inside their range; one in two is wet, foretold as such by {@code p}. */
    private static Quantity water(int inside, double p) {
        List<Foretold> foretold = IntStream.range(0, 100)
                .mapToObj(
                        i -> new Foretold(i < inside ? 90 : 170, 60, 95, 130, 0.8, i % 2 == 0 ? p : 1 - p, i % 2 == 0))
                .toList();
        List<Lag> lags = List.of(
                new Lag(4, 60, 900, 40),
                new Lag(50, 150, 50, 60),
                new Lag(90, 400, 195, 200),
                new Lag(90, 800, 205, 201));
        return new Quantity(lags, foretold);
    }

    private static List<InsightPanels.Panel> panels(Quantity water) {
        List<Double> draws =
                IntStream.rangeClosed(1, 100).mapToObj(i -> i * 10_000.0).toList();
        return InsightPanels.of(
                new Insight(water, NONE, draws), new Quantiles(100_000, 500_000, 900_000), Units.METRIC, false);
    }

    @Test
    void theVariogramIsReadOffInMetresFromClassesWithEnoughPairs() {
        // the root of twice 50 is 10; 200 is the first within a twentieth of the highest
        assertThat(panels(water(80, 0.9)).get(0).sentence())
                .isEqualTo(
                        "Two readings 0.15 m apart differ by some 10 of the index; beyond 0.40 m one reading tells next"
                                + " to nothing of another. The fitted line keeps to what was read.");
    }

    @Test
    void standardErrorsThatDoNotHoldAreSaidSo() {
        // 80 of 100 are foretold, with a standard deviation of 4
        assertThat(panels(water(78, 0.9)).get(1).sentence())
                .isEqualTo("78 of 100 readings lie inside the range stated without them; 80 were to be expected: the"
                        + " standard errors hold.");
        assertThat(panels(water(60, 0.9)).get(1).sentence()).endsWith("the standard errors on the map are too small.");
        assertThat(panels(water(95, 0.9)).get(1).sentence()).endsWith("are wider than need be.");
    }

    @Test
    void probabilitiesAreComparedWithWhatCameTrue() {
        assertThat(panels(water(80, 0.95)).get(2).sentence())
                .isEqualTo(
                        "What was foretold and what came true differ on the mean by 0.5 in 10 for wet; they can be taken"
                                + " at their word.");
        assertThat(panels(water(80, 0.6)).get(2).sentence())
                .contains("4.0 in 10")
                .endsWith("not as figures.");
    }

    @Test
    void theVolumeIsThatOfTheMapAndEveryDrawStandsInAColumn() {
        InsightPanels.Panel volume = panels(water(80, 0.9)).get(3);

        assertThat(volume.sentence()).isEqualTo("Most likely 0.50 litres; in 8 cases of 10 between 0.10 and 0.90.");
        Chart.Bars bars =
                (Chart.Bars) Objects.requireNonNull(volume.chart()).elements().get(0);
        assertThat(bars.heights().stream().mapToDouble(h -> h).sum()).isEqualTo(100);
    }

    @Test
    void tooFewReadingsSaySo() {
        List<InsightPanels.Panel> panels =
                InsightPanels.of(new Insight(NONE, NONE, List.of()), Quantiles.ZERO, Units.METRIC, false);

        assertThat(panels).hasSize(4).allSatisfy(p -> {
            assertThat(p.chart()).isNull();
            assertThat(p.sentence()).endsWith(".");
        });
    }
}
