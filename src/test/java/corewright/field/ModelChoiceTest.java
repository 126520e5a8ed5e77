package corewright.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ModelChoiceTest {
    /** A draw of a field with this variogram at n random places of a 100 x 100 square. */
    private static Samples drawn(Variogram v, int n, long seed) {
        Random random = new Random(seed);
        double[] x = random.doubles(n, 0, 100).toArray();
        double[] y = random.doubles(n, 0, 100).toArray();
        Correlation correlation = new Correlation(v);
        double[][] covariance = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                covariance[i][j] = v.partialSill() * correlation.at(x[i] - x[j], y[i] - y[j]);
            }
            covariance[i][i] = v.sill();
        }
        return Samples.of(x, y, CholeskyTest.drawn(covariance, new Random(seed)));
    }

    @Test
    void takesTheShapeThatForetellsBest() {
        Samples meuse = ReferenceTable.of("meuse_points.csv").samples("logzinc");

        ModelChoice.Choice choice = ModelChoice.choose(meuse, 500);

        for (Shape shape : Shape.values()) {
            double[] x = meuse.xs();
            Variogram v = VariogramFit.fit(ExperimentalVariogram.omni(x, meuse.ys(), meuse.values()), shape)
                    .variogram();
            assertThat(choice.score().rootMeanSquare())
                    .isLessThanOrEqualTo(
                            CrossValidation.leaveOneOut(meuse, v, 0).rootMeanSquare());
        }
        assertThat(choice.why()).contains("foretells left-out readings best").contains("155 readings");
    }

    @Test
    void findsADirectionThatIsThere() {
        int found = 0;
        for (long seed = 0; seed < 8; seed++) {
            Variogram truth = new Variogram(Shape.EXPONENTIAL, 0.02, 1, 40, 60, 0.2);
            Variogram v = ModelChoice.choose(drawn(truth, 250, seed), 20).variogram();
            if (v.ratio() < 1) {
                found++;
                assertThat(v.majorDeg()).as("long axis of seed %d", seed).isCloseTo(60, within(15.0));
            }
        }
        assertThat(found).isGreaterThanOrEqualTo(7);
    }

    @Test
    void seesNoDirectionWhereThereIsNone() {
        int found = 0;
        for (long seed = 0; seed < 40; seed++) {
            Variogram truth = Variogram.isotropic(Shape.SPHERICAL, 0.1, 1, 40);
            found += ModelChoice.choose(drawn(truth, 150, seed), 20).variogram().ratio() < 1 ? 1 : 0;
        }
        assertThat(found).isZero();
    }

    @Test
    void fewReadingsGetTheAssumedRangeAndSaySo() {
        Samples few = drawn(Variogram.isotropic(Shape.SPHERICAL, 0, 1, 30), 12, 1);

        ModelChoice.Choice choice = ModelChoice.choose(few, 110);

        assertThat(choice.variogram().range()).isEqualTo(110);
        assertThat(choice.why())
                .isEqualTo("Only 12 readings, fewer than 30: the range is assumed (110.0), not fitted.");
    }

    @Test
    void equalReadingsAreAConstantNotAFailure() {
        double[] x = new Random(1).doubles(50).toArray();
        double[] seven = new double[50];
        Arrays.fill(seven, 7);

        ModelChoice.Choice choice = ModelChoice.choose(Samples.of(x, x, seven), 1);

        assertThat(choice.variogram().sill()).isZero();
        assertThat(choice.score().rootMeanSquare()).isZero();
        assertThat(choice.why()).startsWith("50 readings without any difference");
    }

    @Test
    void neverFailsOnOddPlacesAndValues() {
        Random random = new Random(7);
        for (int n : new int[] {0, 1, 2, 3, 29, 30, 31, 120}) {
            double[] line = new double[n];
            Arrays.setAll(line, i -> i);
            double[] one = new double[n];
            double[] noise = random.doubles(n).toArray();
            double[] spike = new double[n];
            Arrays.setAll(spike, i -> i == 3 ? 1e6 : 0);
            for (double[] value : new double[][] {line, one, noise, spike}) {
                for (double[] y : new double[][] {line, one, noise}) {
                    ModelChoice.Choice choice = ModelChoice.choose(Samples.of(line, y, value), 5);
                    assertThat(choice.variogram().sill()).isNotNegative();
                    ModelChoice.Choice repeats = ModelChoice.choose(Samples.of(one, one, value), 5);
                    assertThat(repeats.why()).isNotEmpty();
                }
            }
        }
    }
}
