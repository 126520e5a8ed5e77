package corewright.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for kriging whatever the data; seeded random inputs. Tolerance: rounding, 1e-8 of values near 10. */
class KrigingPropertiesTest {
    private static final double ROUNDING = 1e-8;

    static LongStream seeds() {
        return LongStream.range(0, 24);
    }

    /** A random case: samples, a variogram with nugget and direction, nodes. */
    private static final class Case {
        final double[] x;
        final double[] y;
        final double[] value;
        final Variogram variogram;
        final double[] nodesX;
        final double[] nodesY;
        final int neighbours;

        Case(long seed) {
            Random random = new Random(seed);
            int n = 5 + random.nextInt(60);
            x = uniform(random, n, 1000);
            y = uniform(random, n, 600);
            value = new double[n];
            Arrays.setAll(value, i -> 10 + random.nextGaussian());
            Shape shape = Shape.values()[(int) (seed % 4)];
            variogram = new Variogram(
                    shape,
                    0.05 + 0.3 * random.nextDouble(),
                    1,
                    50 + 400 * random.nextDouble(),
                    360 * random.nextDouble(),
                    0.2 + 0.8 * random.nextDouble());
            nodesX = uniform(random, 40, 1000);
            nodesY = uniform(random, 40, 600);
            neighbours = seed % 2 == 0 ? 0 : Math.min(8, n - 1);
        }

        private static double[] uniform(Random random, int n, double width) {
            double[] a = new double[n];
            Arrays.setAll(a, i -> width * random.nextDouble());
            return a;
        }

        Samples samples() {
            return Samples.of(x, y, value);
        }

        Estimates estimates() {
            return new OrdinaryKriging(samples(), variogram).estimate(nodesX, nodesY, neighbours);
        }
    }

    private static void assertSame(Estimates a, Estimates b) {
        assertThat(a.estimates()).containsExactly(b.estimates(), within(ROUNDING));
        assertThat(a.variances()).containsExactly(b.variances(), within(ROUNDING));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void honoursEverySampleExactly(long seed) {
        Case c = new Case(seed);

        Estimates at = new OrdinaryKriging(c.samples(), c.variogram).estimate(c.x, c.y, c.neighbours);

        assertThat(at.estimates()).containsExactly(c.value);
        assertThat(at.variances()).containsOnly(0);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void reproducesAConstant(long seed) {
        Case c = new Case(seed);
        Arrays.fill(c.value, 7.25);

        assertThat(c.estimates().estimates()).containsOnly(7.25);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void translationChangesNothing(long seed) {
        Case c = new Case(seed);
        Estimates before = c.estimates();
        for (double[] a : new double[][] {c.x, c.nodesX}) {
            Arrays.setAll(a, i -> a[i] + 4096); // a power of two: the differences keep all but the last three digits
        }

        assertSame(c.estimates(), before);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void turningPlacesAndLongAxisTogetherChangesNothing(long seed) {
        Case c = new Case(seed);
        double turnDeg = 37;
        Variogram v = c.variogram;
        Variogram turned =
                new Variogram(v.shape(), v.nugget(), v.partialSill(), v.range(), v.majorDeg() + turnDeg, v.ratio());
        Estimates before = c.estimates();
        turn(c.x, c.y, turnDeg);
        turn(c.nodesX, c.nodesY, turnDeg);

        assertSame(new OrdinaryKriging(c.samples(), turned).estimate(c.nodesX, c.nodesY, c.neighbours), before);
    }

    private static void turn(double[] x, double[] y, double degrees) {
        double cos = Math.cos(Math.toRadians(degrees));
        double sin = Math.sin(Math.toRadians(degrees));
        for (int i = 0; i < x.length; i++) {
            double turned = x[i] * cos - y[i] * sin;
            y[i] = x[i] * sin + y[i] * cos;
            x[i] = turned;
        }
    }

    @Test
    void withoutSamplesThereIsNoMeanAndNoAnswer() {
        Samples none = Samples.of(new double[0], new double[0], new double[0]);
        Variogram v = Variogram.isotropic(Shape.MATERN32, 0.5, 2, 10);

        assertThatThrownBy(() -> new OrdinaryKriging(none, v)).hasMessageContaining("at least one sample");
    }

    @Test
    void repeatsAtOnePlaceBecomeTheirMeanAndTheirScatterItsError() {
        double[] x = {0, 100, 100, 200};
        double[] y = {0, 50, 50, 0};
        Samples samples = Samples.of(x, y, new double[] {1, 2, 4, 5});
        Variogram v = Variogram.isotropic(Shape.GAUSSIAN, 0, 1, 150);

        Estimates e = new OrdinaryKriging(samples, v).estimate(new double[] {100, 90}, new double[] {50, 50}, 0);

        Samples merged = samples.merged();
        assertThat(merged.size()).isEqualTo(3);
        assertThat(merged.value(1)).isEqualTo(3);
        assertThat(merged.errorVariance(1)).isEqualTo(1); // variance of 2 and 4 is 2, over two repeats
        assertThat(e.estimate(0)).isEqualTo(3);
        assertThat(e.variance(0)).isEqualTo(1);
        assertThat(e.estimate(1)).isBetween(1.0, 5.0);
    }

    @Test
    void samplesCloserThanRoundingAreOnePlaceAndStayHarmless() {
        double[] x = {0, 1e-6, 500, 1000, 300 + 1e-5, 300, 700, 700.01};
        double[] y = {0, 0, 400, 0, 100, 100, 100, 100};
        Samples samples = Samples.of(x, y, new double[] {3, 3, 5, 7, 4, 4.5, 6, 6});
        Variogram smooth = Variogram.isotropic(Shape.GAUSSIAN, 0, 2, 800);

        Estimates e = new OrdinaryKriging(samples, smooth).estimate(new double[] {250, 0}, new double[] {90, 0}, 0);

        assertThat(samples.merged().size()).isEqualTo(6); // the pair 0.01 apart is not rounding
        assertThat(e.estimate(1)).isEqualTo(3);
        assertThat(e.estimate(0)).isBetween(3.0, 7.0);
        assertThat(e.variance(0)).isBetween(0.0, 2.0);
    }

    @Test
    void aSampleWithAnErrorCountsForLess() {
        double[] x = {0, 10};
        double[] y = {0, 0};
        Variogram v = Variogram.isotropic(Shape.SPHERICAL, 0, 1, 30);

        Samples uneven = Samples.of(x, y, new double[] {0, 1}, new double[] {0, 5});
        Estimates e = new OrdinaryKriging(uneven, v).estimate(new double[] {5}, new double[] {0}, 0);

        // two samples, weights w and 1 - w: w = (C22 - C12 + k1 - k2) / (C11 + C22 - 2 C12), here k1 = k2
        double c12 = Shape.SPHERICAL.correlation(1 / 3.0);
        double w = (6 - c12) / (1 + 6 - 2 * c12);
        assertThat(e.estimate(0)).isCloseTo(1 - w, within(1e-12));
    }

    @Test
    void aVariogramOfSillZeroGivesTheMeanForCertain() {
        Samples flat = Samples.of(new double[] {0, 1, 5}, new double[] {0, 2, 1}, new double[] {4, 4, 4});
        Variogram nothing = Variogram.isotropic(Shape.SPHERICAL, 0, 0, 10);

        Estimates e = new OrdinaryKriging(flat, nothing).estimate(new double[] {3}, new double[] {3}, 0);

        assertThat(e.estimate(0)).isEqualTo(4);
        assertThat(e.variance(0)).isZero();
    }

    @Test
    void tooManySamplesAtOnceAreRefusedWithAdvice() {
        int n = OrdinaryKriging.MOST_SAMPLES_AT_ONCE + 1;
        double[] line = new double[n];
        Arrays.setAll(line, i -> i);
        OrdinaryKriging kriging =
                new OrdinaryKriging(Samples.of(line, line, line), Variogram.isotropic(Shape.SPHERICAL, 0, 1, 5));

        assertThatThrownBy(() -> kriging.estimate(line, line, 0))
                .hasMessage("6001 samples at once, at most 6000: ask for the nearest neighbours");
    }
}
