package corewright.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class PublishedKrigingTest {
    private static final double[] X = {61, 63, 64, 68, 71, 73, 75};
    private static final double[] Y = {139, 140, 129, 128, 140, 141, 128};
    private static final double[] V = {477, 696, 227, 646, 606, 791, 783};
    private static final Variogram MODEL = Variogram.isotropic(Shape.EXPONENTIAL, 0, 10, 1 / 0.3);

    private static Estimates atTheNode(double[] values) {
        return new OrdinaryKriging(Samples.of(X, Y, values), MODEL).estimate(new double[] {65}, new double[] {137}, 0);
    }

    /**
     * Isaaks and Srivastava (1989), ch. 12, the example of seven samples around (65, 137) with covariance 10 exp(-0.3 h);
     * data and model recalled, weights 0.173 0.318 0.129 0.086 0.151 0.057 0.086, estimate 592.73 and variance 8.956
     * recomputed from them. Tolerances: half the last digit listed.
     */
    @Test
    void weightsEstimateAndVarianceOfSevenSamplesAreThoseOfIsaaksAndSrivastava() {
        double[] weights = {0.173, 0.318, 0.129, 0.086, 0.151, 0.057, 0.086};
        for (int i = 0; i < weights.length; i++) {
            double[] unit = new double[7]; // the estimate of a unit value is its weight
            unit[i] = 1;
            assertThat(atTheNode(unit).estimate(0)).as("weight %d", i).isCloseTo(weights[i], within(0.0005));
        }
        assertThat(atTheNode(V).estimate(0)).isCloseTo(592.73, within(0.005));
        assertThat(atTheNode(V).variance(0)).isCloseTo(8.956, within(0.0005));
    }

    /** R gstat 2.1-0 on meuse, global and nearest 20: printed with 9 digits. */
    @Test
    void pointsOutsideAndInsideTheMeuseDataAgreeWithGstat() {
        Samples meuse = ReferenceTable.of("meuse_points.csv").samples("logzinc");
        Variogram model = Variogram.isotropic(Shape.SPHERICAL, 0.0506624268192143, 0.590607802210119, 897.020909797001);
        double[] x = {180000, 179500, 180500, 179000, 181140};
        double[] y = {331000, 331000, 332000, 330500, 333700};

        OrdinaryKriging kriging = new OrdinaryKriging(meuse, model);

        double[] all = {5.05549819, 5.84736514, 5.07808575, 6.11452541, 6.62235553};
        double[] variance = {0.161138226, 0.206434869, 0.155805464, 0.130164711, 0.252020481};
        double[] nearest = {5.04861925, 5.89446687, 5.06536743, 6.12564238};
        int four = nearest.length; // for the last node only the global numbers are listed
        assertThat(kriging.estimate(x, y, 0).estimates()).containsExactly(all, within(1e-8));
        assertThat(kriging.estimate(x, y, 0).variances()).containsExactly(variance, within(1e-9));
        assertThat(kriging.estimate(Arrays.copyOf(x, four), Arrays.copyOf(y, four), 20)
                        .estimates())
                .containsExactly(nearest, within(1e-8));
    }

    /** R gstat 2.1-0 on meuse, {@code vgm} of each shape; 0.5 % because gstat ends its fits at a loose criterion. */
    @Test
    void otherFitsOfTheMeuseDataAreThoseOfGstat() {
        ReferenceTable meuse = ReferenceTable.of("meuse_points.csv");
        Samples log = meuse.samples("logzinc");
        Samples below = meuse.samples("zinc", zinc -> zinc < 500 ? 1 : 0);

        assertFit(log, Shape.EXPONENTIAL, 0, 0.7186526, 449.758); // at the bound: no nugget
        assertFit(below, Shape.SPHERICAL, 0.10116374, 0.15749557, 882.87221);
        // listed as Matern with smoothness 1/2, which is the exponential
        assertFit(meuse.samples("zinc"), Shape.EXPONENTIAL, 9486.4, 163285.3, 381.7076);
    }

    private static void assertFit(Samples samples, Shape shape, double nugget, double sill, double range) {
        var bins = ExperimentalVariogram.omni(samples.xs(), samples.ys(), samples.values());
        Variogram fitted = VariogramFit.fit(bins, shape).variogram();
        assertThat(fitted.nugget()).isCloseTo(nugget, within(0.005 * nugget));
        assertThat(fitted.partialSill()).isCloseTo(sill, within(0.005 * sill));
        assertThat(fitted.range()).isCloseTo(range, within(0.005 * range));
    }
}
