package corewright.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.decision.ExactSearch.Place;
import corewright.decision.ExactSearch.Way;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ExactSearchTest {
    /** Of sums of the same numbers in another order. */
    private static final double LAST_DIGIT = 1e-9;

    private static final Map<String, Double> COMPLIANCE = Map.of("P1", 2.1, "P2", 1.6, "P3", 3.2);

    @Test
    void equalsTryingAll() {
        Random random = new Random(20261129);
        int feasible = 0;
        for (int i = 0; i < 200; i++) {
            List<Place> places = places(random, 1 + random.nextInt(7), 1 + random.nextInt(3));
            ExactSearch search = new ExactSearch(places, COMPLIANCE);
            double share = 0.3 + 0.6 * random.nextDouble();
            double budget = 6000 * random.nextDouble();
            Best all = tryAll(places, share, budget);
            Optional<ExactSearch.Found> reaching = search.reaching(share);
            assertThat(reaching.isPresent()).isEqualTo(all.cost < Double.MAX_VALUE);
            reaching.ifPresent(f -> {
                assertThat(f.cost()).isCloseTo(all.cost, within(LAST_DIGIT * all.cost + LAST_DIGIT));
                assertThat(worth(places, f.methods())).isEqualTo(f.cost(), within(LAST_DIGIT * f.cost() + LAST_DIGIT));
            });
            feasible += reaching.isPresent() ? 1 : 0;
            Optional<ExactSearch.Found> affordable = search.within(budget);
            assertThat(affordable.isPresent()).isEqualTo(all.share > 0);
            affordable.ifPresent(f -> {
                assertThat(f.share()).isCloseTo(all.share, within(LAST_DIGIT));
                assertThat(f.cost()).isLessThanOrEqualTo(budget);
            });
        }
        assertThat(feasible).as("both answers are met").isBetween(40, 180);
    }

    /** Twelve regions of four ways in one panel, 16 million choices; processor time of this thread, the best of five. */
    @Test
    void twelveRegionsAreQuick() {
        List<Place> places = places(new Random(7), 12, 1);
        var clock = ManagementFactory.getThreadMXBean();
        double best = Double.MAX_VALUE;
        for (int i = 0; i < 5; i++) {
            long start = clock.getCurrentThreadCpuTime();
            ExactSearch search = new ExactSearch(places, COMPLIANCE);
            assertThat(search.reaching(0.6)).isPresent();
            assertThat(search.within(4000)).isPresent();
            best = Math.min(best, (clock.getCurrentThreadCpuTime() - start) / 1e6);
        }
        assertThat(best).as("ms").isLessThan(50);
    }

    private record Best(double cost, double share) {}

    private static List<Place> places(Random random, int regions, int panels) {
        List<Place> places = new ArrayList<>();
        for (int r = 0; r < regions; r++) {
            List<Way> ways = new ArrayList<>();
            for (Method method : Method.values()) {
                if (ways.isEmpty() || random.nextInt(4) > 0 || regions == 12) {
                    double size = method.ordinal() * (0.5 + random.nextDouble());
                    ways.add(new Way(method, 300 * size, 0.3 / regions * size * (0.5 + random.nextDouble())));
                }
            }
            places.add(new Place("R" + (r + 1), "P" + (1 + random.nextInt(panels)), ways));
        }
        return places;
    }

    private static Best tryAll(List<Place> places, double share, double budget) {
        int[] at = new int[places.size()];
        double cheapest = Double.MAX_VALUE;
        double most = 0;
        while (true) {
            double cost = 0;
            double least = Double.MAX_VALUE;
            for (String panel : COMPLIANCE.keySet()) {
                double left = COMPLIANCE.get(panel);
                boolean any = false;
                for (int i = 0; i < at.length; i++) {
                    if (places.get(i).panel().equals(panel)) {
                        Way way = places.get(i).ways().get(at[i]);
                        left -= way.removed();
                        cost += way.cost();
                        any = true;
                    }
                }
                least = any ? Math.min(least, 1 / Math.max(1e-9, left)) : least;
            }
            cheapest = least >= share ? Math.min(cheapest, cost) : cheapest;
            most = cost <= budget ? Math.max(most, least) : most;
            int i = 0;
            while (i < at.length && ++at[i] == places.get(i).ways().size()) {
                at[i++] = 0;
            }
            if (i == at.length) {
                return new Best(cheapest, most);
            }
        }
    }

    private static double worth(List<Place> places, List<Method> methods) {
        double cost = 0;
        for (int i = 0; i < places.size(); i++) {
            Method method = methods.get(i);
            cost += places.get(i).ways().stream()
                    .filter(w -> w.method() == method)
                    .findFirst()
                    .orElseThrow()
                    .cost();
        }
        return cost;
    }
}
