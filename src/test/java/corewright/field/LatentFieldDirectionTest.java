package corewright.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.field.LatentPrior.Coefficient;
import corewright.field.LatentPrior.Scale;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Fields drawn with a known direction, or none, at 150 places. */
class LatentFieldDirectionTest {
    private static final LatentPrior PRIOR = new LatentPrior(
            Matern.FIVE_HALVES,
            List.of(new Coefficient(0, 1)),
            new Scale(List.of(50.0, 75.0, 110.0, 160.0, 230.0), 110, 0.5),
            new Scale(List.of(2.0, 4.0, 8.0, 16.0), 8, 0.7));

    private static LatentField fitted(Stretch truth, long seed) {
        Random random = new Random(seed);
        int n = 150;
        double[] x = random.doubles(n, 0, 2000).toArray();
        double[] y = random.doubles(n, 0, 1200).toArray();
        Places places = new Places(x, y);
        double[][] covariance = Model.of(PRIOR, 110, 8).covariance(truth.of(places));
        double[] field = CholeskyTest.drawn(covariance, random);
        List<Site> seen = new ArrayList<>();
        for (double f : field) {
            seen.add(new Site.Value(f + 0.3 * random.nextGaussian(), 0.3));
        }
        return LatentField.fitDirected(PRIOR, places, seen);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 60, 90, 135})
    void findsTheLongAxisOfAFieldThatReachesFourTimesAsFarAlongIt(double degrees) {
        LatentField field = fitted(new Stretch(degrees, 4), 11);

        assertThat(field.rangeRatio()).isGreaterThanOrEqualTo(2);
        double off = Math.abs(field.longAxisDegrees() - degrees);
        assertThat(Math.min(off, 180 - off)).isLessThanOrEqualTo(22.5); // the step between the angles tried
        assertThat(field.range()).isCloseTo(110, within(55.0));
    }

    /** Evidence of 150 to one is asked for, so one field in many may seem to have a direction; of these none does. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void findsNoDirectionWhereThereIsNone(long seed) {
        assertThat(fitted(Stretch.NONE, seed).rangeRatio()).isEqualTo(1);
    }

    /** Along the long axis a reading speaks farther. */
    @Test
    void oneReadingReachesFartherAlongThanAcross() {
        LatentField field = fitted(new Stretch(0, 4), 11);
        Places there = new Places(new double[] {3000, 3150, 3000}, new double[] {600, 600, 750});
        Places places = new Places(new double[] {3000}, new double[] {600});

        LatentField.Estimate near =
                field.with(places, List.of(new Site.Value(5, 0.1))).at(there);

        assertThat(near.mean(0)).isCloseTo(5, within(0.1));
        assertThat(near.mean(1)).isGreaterThan(near.mean(2) + 0.5);
    }
}
