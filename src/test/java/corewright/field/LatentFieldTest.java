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

class LatentFieldTest {
    private static LatentPrior prior(double mean, double meanVariance, double range, double sill) {
        return new LatentPrior(
                Matern.THREE_HALVES,
                List.of(new Coefficient(mean, meanVariance)),
                Scale.fixed(range),
                Scale.fixed(sill));
    }

    /** Rasmussen and Williams, equations 2.23 and 2.24, by hand for two values. */
    @Test
    void isKrigingWhereEveryObservationIsAValue() {
        LatentField field = LatentField.fit(
                prior(1, 0, 100, 4),
                new Places(new double[] {0, 100}, new double[] {0, 0}),
                List.of(new Site.Value(3, 1), new Site.Value(2, 2)));

        LatentField.Estimate middle = field.at(new Places(new double[] {50}, new double[] {0}));

        double far = 4 * 2 * Math.exp(-1);
        double near = 4 * 1.5 * Math.exp(-0.5);
        double det = 5 * 8 - far * far;
        double w1 = near * (8 - far) / det;
        double w2 = near * (5 - far) / det;
        assertThat(middle.mean(0)).isCloseTo(1 + w1 * 2 + w2 * 1, within(1e-12));
        assertThat(middle.sd(0)).isCloseTo(Math.sqrt(4 - near * (w1 + w2)), within(1e-12));
    }

    /**
     * One interval: the mixture's exact posterior by fine summation. Expectation propagation is exact for one site; the
     * tolerance is a few times its stopping rule of 1e-3 in a site's shift.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.005, 0.02})
    void isExactForOneBoundedObservation(double doubt) {
        Site.Interval hollow = new Site.Interval(1.5, Double.POSITIVE_INFINITY, 1, doubt, 1.0 / 3);
        LatentField field =
                LatentField.fit(prior(-1, 1, 100, 3), new Places(new double[] {0}, new double[] {0}), List.of(hollow));

        LatentField.Estimate here = field.at(new Places(new double[] {0}, new double[] {0}));

        double weight = 0;
        double sum = 0;
        double squares = 0;
        for (double f = -20; f <= 20; f += 1e-3) {
            double p = Normal.density((f + 1) / 2) * ((1 - doubt) * Normal.below(f - 1.5) + doubt / 3);
            weight += p;
            sum += p * f;
            squares += p * f * f;
        }
        double mean = sum / weight;
        assertThat(here.mean(0)).isCloseTo(mean, within(4e-3));
        assertThat(here.sd(0)).isCloseTo(Math.sqrt(squares / weight - mean * mean), within(4e-3));
        assertThat(field.settled()).isTrue();
    }

    @Test
    void fallsBackOnThePriorWithoutObservations() {
        LatentField field =
                LatentField.fit(prior(-2.5, 0, 100, 8), new Places(new double[0], new double[0]), List.of());

        LatentField.Estimate anywhere = field.at(new Places(new double[] {7}, new double[] {-3}));

        assertThat(anywhere.mean(0)).isEqualTo(-2.5);
        assertThat(anywhere.sd(0)).isCloseTo(Math.sqrt(8), within(1e-12));
        assertThat(anywhere.above(0, 0)).isCloseTo(prior(-2.5, 0, 100, 8).above(0), within(1e-12));
    }

    @Test
    void doubtsTheCallThatContradictsAllItsNeighbours() {
        List<Site> calls = new ArrayList<>();
        double[] x = new double[25];
        double[] y = new double[25];
        for (int i = 0; i < 25; i++) {
            x[i] = 50 * (i % 5);
            y[i] = 50 * (i / 5);
            double low = i == 12 ? 1.5 : Double.NEGATIVE_INFINITY;
            double high = i == 12 ? Double.POSITIVE_INFINITY : -1.5;
            calls.add(new Site.Interval(low, high, 1, 0.02, 1.0 / 3));
        }

        LatentField field = LatentField.fit(prior(-2.5, 4, 300, 8), new Places(x, y), calls);

        assertThat(field.doubt(12)).isGreaterThan(0.5);
        assertThat(field.doubt(11)).isLessThan(0.05);
    }

    /** Mean and covariance of 4000 draws within four standard errors of what the field states. */
    @Test
    void drawsHaveTheStatedMeanAndSpread() {
        LatentField field = LatentField.fit(
                prior(0, 1, 80, 2),
                new Places(new double[] {0, 90}, new double[] {0, 40}),
                List.of(new Site.Value(2, 0.3), new Site.Interval(-1, 0.5, 0.2, 0.01, 0.5)));
        Places targets = new Places(new double[] {10, 60, 300}, new double[] {0, 20, 0});

        Draws draws = field.draws(targets, 4000, 1, new Random(7));

        LatentField.Estimate stated = field.at(targets);
        for (int t = 0; t < 3; t++) {
            double sum = 0;
            double squares = 0;
            for (int d = 0; d < 4000; d++) {
                sum += draws.at(d, t);
                squares += draws.at(d, t) * draws.at(d, t);
            }
            double mean = sum / 4000;
            double sd = Math.sqrt(squares / 4000 - mean * mean);
            assertThat(mean).isCloseTo(stated.mean(t), within(4 * stated.sd(t) / Math.sqrt(4000)));
            assertThat(sd / stated.sd(t)).isCloseTo(1, within(4 / Math.sqrt(8000)));
        }
    }

    /** By hand for two values: -½ z'C⁻¹z − ½ ln |C| − ln 2π (Rasmussen and Williams, equation 2.30). */
    @Test
    void statesTheEvidenceOfValuesExactly() {
        List<Site> values = List.of(new Site.Value(3, 1), new Site.Value(2, 2));
        double c = 4 * 2 * Math.exp(-1);

        var sites = new ExpectationPropagation(values, new double[] {1, 1}, new double[][] {{4, c}, {c, 4}});
        sites.run(6, 1e-2);
        double evidence = sites.logEvidence();

        double det = 5 * 8 - c * c;
        double quadratic = (2 * 2 * 8 - 2 * 2 * 1 * c + 1 * 1 * 5) / det;
        assertThat(evidence).isCloseTo(-0.5 * quadratic - 0.5 * Math.log(det) - Math.log(2 * Math.PI), within(1e-9));
    }

    @Test
    void findsTheRangeThatGeneratedTheValues() {
        Random random = new Random(11);
        int n = 150;
        double[] x = random.doubles(n, 0, 1500).toArray();
        double[] y = random.doubles(n, 0, 1500).toArray();
        LatentField truth = LatentField.fit(prior(0, 0, 100, 4), new Places(new double[0], new double[0]), List.of());
        Draws draw = truth.draws(new Places(x, y), 1, 1, random);
        List<Site> values = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            values.add(new Site.Value(draw.at(0, i), 0.1));
        }
        LatentPrior open = new LatentPrior(
                Matern.THREE_HALVES,
                List.of(new Coefficient(0, 0)),
                new Scale(List.of(25.0, 50.0, 100.0, 200.0, 400.0), 50, 1),
                new Scale(List.of(1.0, 4.0, 16.0), 1, 1));

        LatentField fitted = LatentField.fit(open, new Places(x, y), values);

        assertThat(fitted.range()).isEqualTo(100);
        assertThat(fitted.sill()).isEqualTo(4);
    }
}
