package corewright.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class VariogramTest {
    /** By hand from the formulas: 1 - 1.5/2 + 0.5/8; e^-0.5; e^-0.25; 1.5 e^-0.5. */
    @ParameterizedTest
    @CsvSource({
        "SPHERICAL, 0.3125",
        "EXPONENTIAL, 0.6065306597126334",
        "GAUSSIAN, 0.7788007830714049",
        "MATERN32, 0.9097959895689501"
    })
    void correlationAtHalfTheRange(Shape shape, double expected) {
        assertThat(shape.correlation(0.5)).isCloseTo(expected, within(1e-15));
        assertThat(shape.correlation(0)).isEqualTo(1);
        assertThat(shape.correlation(50)).isCloseTo(0, within(1e-15));
    }

    @Test
    void longAxisTurnsFromXTowardsY() {
        Variogram v = new Variogram(Shape.EXPONENTIAL, 0, 1, 100, 30, 0.25);
        double cos = Math.cos(Math.toRadians(30));

        assertThat(new Correlation(v).at(100 * cos, 50)).isCloseTo(Math.exp(-1), within(1e-12));
        assertThat(new Correlation(v).at(-12.5, 25 * cos)).isCloseTo(Math.exp(-1), within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({
        "-1, 1, 1, 1, nugget",
        "0, -1, 1, 1, sill",
        "0, 1, 0, 1, range",
        "0, 1, NaN, 1, range",
        "0, 1, 1, 0, ratio",
        "0, 1, 1, 1.5, ratio"
    })
    void impossibleParametersAreRefusedByName(double nugget, double sill, double range, double ratio, String name) {
        assertThatThrownBy(() -> new Variogram(Shape.SPHERICAL, nugget, sill, range, 0, ratio))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("variogram " + name + " is");
    }

    @Test
    void aPairAtAClassBoundaryBelongsBelowAndRepeatsAreLeftOut() {
        double[] x = {0, 0, 1, 3};

        List<Bin> bins = ExperimentalVariogram.omni(x, new double[4], new double[] {0, 9, 2, 4}, 3, 1);

        assertThat(bins)
                .containsExactly(new Bin(2, 1, (4 + 49) / 4.0), new Bin(1, 2, 2), new Bin(2, 3, (16 + 25) / 4.0));
    }

    @Test
    void aSectorTakesPairsOfItsDirectionInEitherSense() {
        double[] x = {0, 10, 0};
        double[] y = {0, 0, -10};
        double[] value = {1, 3, 7};

        List<Bin> alongY =
                ExperimentalVariogram.directional(x, y, value, new ExperimentalVariogram.Classes(20, 20, 90, 20));
        List<Bin> alongX =
                ExperimentalVariogram.directional(x, y, value, new ExperimentalVariogram.Classes(20, 20, 180, 20));

        assertThat(alongY).containsExactly(new Bin(1, 10, 18));
        assertThat(alongX).containsExactly(new Bin(1, 10, 2));
    }

    /** Manufactured: bins that lie on a model give it back. Tolerance: golden section to 4e-9 of a flat minimum's root. */
    @ParameterizedTest
    @EnumSource(Shape.class)
    void fitGivesBackTheModelThatMadeTheBins(Shape shape) {
        Variogram truth = Variogram.isotropic(shape, 0.3, 1.7, 240);
        List<Bin> bins = java.util.stream.IntStream.rangeClosed(1, 15)
                .mapToObj(i -> new Bin(100 + i, 40 * i, 0.3 + 1.7 * (1 - shape.correlation(40 * i / 240.0))))
                .toList();

        Variogram fitted = VariogramFit.fit(bins, shape).variogram();

        assertThat(fitted.nugget()).isCloseTo(0.3, within(1e-4));
        assertThat(fitted.partialSill()).isCloseTo(1.7, within(1e-4));
        assertThat(fitted.range()).isCloseTo(240, within(0.02));
    }

    @ParameterizedTest
    @EnumSource(Shape.class)
    void fitNeverFailsAndStaysPositive(Shape shape) {
        Random random = new Random(5);
        List<List<Bin>> odd = new java.util.ArrayList<>(List.of(
                List.of(),
                List.of(new Bin(1, 5, 2)),
                List.of(new Bin(1, 5, 0), new Bin(2, 9, 0)),
                List.of(new Bin(9, 1, 9), new Bin(9, 2, 4), new Bin(9, 3, 1)),
                List.of(new Bin(9, 1, 1), new Bin(9, 2, 4), new Bin(9, 3, 9)),
                List.of(new Bin(1, 5, Double.NaN), new Bin(1, 0, 1)),
                List.of(new Bin(1, 1e-9, 1e9), new Bin(1, 1e9, 1e-9))));
        for (int i = 0; i < 50; i++) {
            odd.add(random.ints(1 + i % 6, 1, 100)
                    .mapToObj(p -> new Bin(p, 10 * random.nextDouble(), random.nextDouble()))
                    .toList());
        }

        for (List<Bin> bins : odd) {
            VariogramFit.Fit fit = VariogramFit.fit(bins, shape); // the record refuses what is not positive
            assertThat(fit.weightedSse()).isNotNegative();
            assertThat(fit.variogram().sill()).isNotNegative();
        }
        assertThat(VariogramFit.fit(odd.get(2), shape).variogram().sill()).isZero();
        assertThat(VariogramFit.fit(odd.get(3), shape).variogram().partialSill())
                .isZero();
    }
}
