package corewright.field;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NeighbourIndexTest {
    private static int[] bySorting(double[] x, double[] y, double px, double py, int k, int skip) {
        return IntStream.range(0, x.length)
                .filter(i -> i != skip)
                .boxed()
                .sorted(Comparator.comparingDouble(
                        i -> (x[i] - px) * (x[i] - px) + (y[i] - py) * (y[i] - py))) // stable: ties by position
                .limit(k)
                .mapToInt(i -> i)
                .toArray();
    }

    /** Whole coordinates, so that ties abound; queries inside, at and far outside the field; clusters, lines, single points. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void findsWhatSortingFinds(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 40; round++) {
            int n = 1 + random.nextInt(120);
            int width = 1 + random.nextInt(50);
            int height = round % 4 == 0 ? 1 : 1 + random.nextInt(50);
            double[] x = random.ints(n, 0, width).asDoubleStream().toArray();
            double[] y = random.ints(n, 0, height).asDoubleStream().toArray();
            x[0] = round % 5 == 0 ? 4000 : x[0]; // one far away leaves the rest in few buckets
            NeighbourIndex index = new NeighbourIndex(x, y);
            for (int query = 0; query < 20; query++) {
                double px = random.nextInt(3 * width) - width;
                double py = random.nextInt(3 * height) - height;
                int k = 1 + random.nextInt(30);
                int skip = random.nextInt(n + 1) - 1;
                assertThat(index.nearest(px, py, k, skip)).isEqualTo(bySorting(x, y, px, py, k, skip));
            }
        }
    }

    @Test
    void distancesEqualButForRoundingAreTies() {
        double[] x = {2.045, 2.358}; // both 0.274105 squared from the query, 0 by one rounding farther
        double[] y = {1.483, 0.812};

        assertThat(new NeighbourIndex(x, y).nearest(2.537, 1.304, 1, -1)).containsExactly(0);
    }

    @Test
    void nothingToFindIsAnEmptyAnswer() {
        assertThat(new NeighbourIndex(new double[0], new double[0]).nearest(1, 1, 5, -1))
                .isEmpty();
        assertThat(new NeighbourIndex(new double[1], new double[1]).nearest(1, 1, 5, 0))
                .isEmpty();
    }

    @Test
    void threeHundredThousandPointsTakeMomentsNotMinutes() {
        int n = 300_000;
        Random random = new Random(1);
        double[] x = random.doubles(n, 0, 5000).toArray();
        double[] y = random.doubles(n, 0, 3000).toArray();
        double[] value = new double[n];
        Arrays.setAll(value, i -> Math.sin(x[i] / 300) + y[i] / 1000);
        OrdinaryKriging kriging =
                new OrdinaryKriging(Samples.of(x, y, value), Variogram.isotropic(Shape.SPHERICAL, 0.01, 1, 400));
        double[] nodesX = random.doubles(5000, 0, 5000).toArray();
        double[] nodesY = random.doubles(5000, 0, 3000).toArray();

        Estimates e = kriging.estimate(nodesX, nodesY, 24);

        for (int i = 0; i < 5000; i++) { // samples 7 apart on a slope of 1/300: well under 0.05
            assertThat(e.estimate(i))
                    .isCloseTo(
                            Math.sin(nodesX[i] / 300) + nodesY[i] / 1000, org.assertj.core.api.Assertions.within(0.05));
        }
    }

    @Test
    void findsExactlyTheSamplesOfABox() {
        Random random = new Random(8);
        double[] x = random.doubles(500, -50, 400).toArray();
        double[] y = random.doubles(500, 0, 90).toArray();

        int[] found = new NeighbourIndex(x, y).within(10, -20, 130, 45);

        assertThat(found)
                .isEqualTo(IntStream.range(0, 500)
                        .filter(i -> x[i] >= 10 && x[i] <= 130 && y[i] <= 45)
                        .toArray());
    }
}
