package corewright.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CrossValidationTest {
    /** Dubrule's formula against leaving out and kriging anew, with repeats' errors among the samples. */
    @ParameterizedTest
    @EnumSource(Shape.class)
    void closedFormulaAgreesWithLeavingEachSampleOut(Shape shape) {
        Random random = new Random(3);
        int n = 70; // more than one block of right-hand sides
        double[] x = random.doubles(n, 0, 100).toArray();
        double[] y = random.doubles(n, 0, 100).toArray();
        double[] value = random.doubles(n, 5, 9).toArray();
        double[] error = random.doubles(n, 0, 0.4).toArray();
        Variogram v = new Variogram(shape, 0.1, 1, 30, 20, 0.5);

        CrossValidation formula = CrossValidation.leaveOneOut(Samples.of(x, y, value, error), v, 0);

        double sum = 0;
        double squares = 0;
        double squaresZ = 0;
        for (int i = 0; i < n; i++) {
            int left = i;
            int[] others = java.util.stream.IntStream.range(0, n)
                    .filter(j -> j != left)
                    .toArray();
            Samples rest = Samples.of(x, y, value, error).only(others);
            Estimates e = new OrdinaryKriging(rest, v).estimate(new double[] {x[i]}, new double[] {y[i]}, 0);
            double miss = value[i] - e.estimate(0);
            sum += miss;
            squares += miss * miss;
            squaresZ += miss * miss / (e.variance(0) + error[i]);
        }
        assertThat(formula.meanError()).isCloseTo(sum / n, within(1e-9));
        assertThat(formula.rootMeanSquare()).isCloseTo(Math.sqrt(squares / n), within(1e-9));
        assertThat(formula.rmsZ()).isCloseTo(Math.sqrt(squaresZ / n), within(1e-9));
        CrossValidation near = CrossValidation.leaveOneOut(Samples.of(x, y, value, error), v, n - 2);
        assertThat(near.rootMeanSquare()).isCloseTo(formula.rootMeanSquare(), within(0.02)); // one far sample fewer
    }

    @Test
    void oneSampleHasNothingToBeForetoldFrom() {
        Samples one = Samples.of(new double[] {1}, new double[] {1}, new double[] {1});

        CrossValidation none = CrossValidation.leaveOneOut(one, Variogram.isotropic(Shape.SPHERICAL, 0, 1, 1), 0);

        assertThat(none.samples()).isZero();
        assertThat(none.rootMeanSquare()).isNaN();
    }
}
