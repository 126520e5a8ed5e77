package corewright.repair;

import static corewright.DamageFixtures.deck;
import static corewright.DamageFixtures.rectangle;
import static org.assertj.core.api.Assertions.assertThat;

import corewright.DamageFixtures.Deck;
import corewright.damage.Condition;
import corewright.repair.pattern.HolePattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HolePatternTest {
    /**
     * The unit square: the best known coverings by equal circles (Nurmela and Ostergard 2000, from memory). The others: what
     * exact Voronoi descent reached beforehand. Never below area / (pi R^2). Up to 0.5 % of the cells may stay open.
     */
    @ParameterizedTest
    @CsvSource({
        "1000, 1000, 230.64, 9",
        "1000, 1000, 298.73, 6",
        "1000, 1000, 353.56, 4",
        "600, 400, 50, 44",
        "1000, 1000, 75, 77",
        "1000, 1000, 100, 45"
    })
    void rectanglesNeedNoMoreThanTheBestKnownCoverings(double length, double width, double reachMm, int most) {
        Deck deck = deck(rectangle(0, -2500, 6000, 2500))
                .with(PlanBenchmark.capped(reachMm))
                .region(Condition.VOID, rectangle(1000, -500, 1000 + length, -500 + width), 1.5, 0.1);
        PlanBenchmark.Problem p = PlanBenchmark.Problem.of(deck, reachMm);
        int[] holes = p.holes();
        assertThat(holes.length).isBetween((int) Math.ceil(length * width / (Math.PI * reachMm * reachMm)), most);
        assertThat(p.covered(holes)).isGreaterThanOrEqualTo(0.995);
    }

    /** Own cavities 1, 4 and 7 of the benchmark, where the inscribed radius is far above two reaches. */
    @Test
    void raggedCavitiesNeedAQuarterMoreThanThePlaneAtMost() {
        int greedy = 0;
        int sum = 0;
        for (int seed : new int[] {1, 4, 7}) {
            PlanBenchmark.Problem p = PlanBenchmark.Problem.of(PlanBenchmark.raggedDeck(seed, 75), 75);
            int[] holes = p.holes();
            assertThat((double) holes.length)
                    .isLessThanOrEqualTo(1.25 * 2 * p.area.getArea() / (3 * Math.sqrt(3) * 75 * 75));
            assertThat(p.covered(holes)).isGreaterThanOrEqualTo(0.995);
            greedy += HolePattern.greedy(p.task());
            sum += holes.length;
        }
        assertThat(sum).isLessThanOrEqualTo((int) (0.8 * greedy));
    }
}
