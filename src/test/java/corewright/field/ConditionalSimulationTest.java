package corewright.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ConditionalSimulationTest {
    private static final double[] X = {0, 30, 60, 20};
    private static final double[] Y = {0, 10, 0, 40};
    private static final Samples SAMPLES = Samples.of(X, Y, new double[] {1, 3, 2, 5});

    @Test
    void everyDrawHonoursTheSamples() {
        Variogram v = Variogram.isotropic(Shape.SPHERICAL, 0.2, 1, 50);
        double[] nodesX = {0, 15, 30, 60, 44, 20};
        double[] nodesY = {0, 12, 10, 0, 30, 40};

        Draws draws = ConditionalSimulation.draw(new OrdinaryKriging(SAMPLES, v), nodesX, nodesY, 20, 9);

        for (int d = 0; d < draws.count(); d++) {
            assertThat(draws.at(d, 0)).isEqualTo(1);
            assertThat(draws.at(d, 2)).isEqualTo(3);
            assertThat(draws.at(d, 3)).isEqualTo(2);
            assertThat(draws.at(d, 5)).isEqualTo(5);
        }
        assertThat(draws.at(0, 1)).isNotEqualTo(draws.at(1, 1));
    }

    @Test
    void sameSeedSameDraws() {
        Kriging kriging = new OrdinaryKriging(SAMPLES, Variogram.isotropic(Shape.MATERN32, 0, 1, 20));

        Draws first = ConditionalSimulation.draw(kriging, new double[] {5, 7}, new double[] {5, 9}, 3, 4);
        Draws again = ConditionalSimulation.draw(kriging, new double[] {5, 7}, new double[] {5, 9}, 3, 4);

        assertThat(first.draw(2)).isEqualTo(again.draw(2));
    }

    /** Tolerances: four standard errors of 20000 draws. */
    @Test
    void drawsHaveTheMeanVarianceAndCovarianceOfKriging() {
        Kriging kriging = new SimpleKriging(
                SAMPLES, Variogram.isotropic(Shape.EXPONENTIAL, 0.3, 1, 40), new Mean(2, 1.5), Target.SIGNAL);
        double[] nodesX = {10, 16};
        double[] nodesY = {20, 22};
        int n = 20_000;

        Draws draws = ConditionalSimulation.draw(kriging, nodesX, nodesY, n, 2);

        Estimates expected = kriging.estimate(nodesX, nodesY, 0);
        double[] mean = new double[2];
        for (int d = 0; d < n; d++) {
            mean[0] += draws.at(d, 0) / n;
            mean[1] += draws.at(d, 1) / n;
        }
        double[] variance = new double[2];
        double covariance = 0;
        for (int d = 0; d < n; d++) {
            double a = draws.at(d, 0) - mean[0];
            double b = draws.at(d, 1) - mean[1];
            variance[0] += a * a / n;
            variance[1] += b * b / n;
            covariance += a * b / n;
        }
        for (int i = 0; i < 2; i++) {
            double error = Math.sqrt(expected.variance(i) / n);
            assertThat(mean[i]).isCloseTo(expected.estimate(i), within(4 * error));
            assertThat(variance[i])
                    .isCloseTo(expected.variance(i), within(4 * expected.variance(i) * Math.sqrt(2.0 / n)));
        }
        double exact = kriging.system.posterior(nodesX, nodesY)[1];
        double bound = Math.sqrt((variance[0] * variance[1] + exact * exact) / n);
        assertThat(covariance).isCloseTo(exact, within(4 * bound));
        assertThat(exact).isPositive();
    }
}
