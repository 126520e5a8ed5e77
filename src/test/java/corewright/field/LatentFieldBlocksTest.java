package corewright.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.field.LatentPrior.Coefficient;
import corewright.field.LatentPrior.Scale;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Many observations: solved in blocks, and nearly as if they had been solved together. */
class LatentFieldBlocksTest {
    private static final LatentPrior PRIOR =
            new LatentPrior(Matern.FIVE_HALVES, List.of(new Coefficient(-2.5, 4)), Scale.fixed(110), Scale.fixed(8));

    private static final Site HOLLOW = new Site.Interval(1.5, Double.POSITIVE_INFINITY, 1, 0.02, 1.0 / 3);
    private static final Site SOUND = new Site.Interval(Double.NEGATIVE_INFINITY, -1.5, 1, 0.02, 1.0 / 3);

    /** A square grid 125 mm apart, 20 by 20, hollow within two discs. */
    private static final Places GRID = new Places(
            IntStream.range(0, 400).mapToDouble(i -> 125 * (i % 20)).toArray(),
            IntStream.range(0, 400).mapToDouble(i -> 125 * (i / 20)).toArray());

    private static List<Site> calls() {
        return new ArrayList<>(IntStream.range(0, 400)
                .mapToObj(i -> Math.hypot(GRID.x(i) - 700, GRID.y(i) - 700) < 300
                                || Math.hypot(GRID.x(i) - 1300, GRID.y(i) - 1250) < 200
                        ? HOLLOW
                        : SOUND)
                .toList());
    }

    @Test
    void blocksAgreeWithTheSolutionOfAllTogether() {
        LatentField blocks = LatentField.fit(PRIOR, GRID, calls());
        Model model = Model.of(PRIOR, 110, 8);
        var together = new ExpectationPropagation(calls(), model.mean(GRID), model.covariance(GRID));
        together.run(30, 1e-3);
        Sites all = new Sites(400);
        together.noteIn(all, IntStream.range(0, 400).toArray());
        Posterior exact = new Posterior(model, GRID, all);

        int m = 2000;
        Places targets = new Places(
                IntStream.range(0, m).mapToDouble(i -> 47.3 * (i % 50)).toArray(),
                IntStream.range(0, m).mapToDouble(i -> 59.1 * (i / 50)).toArray());
        double[] mean = new double[m];
        double[] sd = new double[m];
        exact.estimate(targets, IntStream.range(0, m).toArray(), mean, sd);
        LatentField.Estimate estimate = blocks.at(targets);

        for (int i = 0; i < m; i++) {
            // a tenth of the width of an undecided band's tenth: not to be seen on a map
            assertThat(estimate.above(i, 0)).isCloseTo(Normal.below(mean[i] / sd[i]), within(0.03));
        }
    }

    @Test
    void aChangedObservationLeavesFarBlocksAsTheyWere() {
        LatentField before = LatentField.fit(PRIOR, GRID, calls());
        List<Site> changed = calls();
        changed.set(0, HOLLOW);

        LatentField after = before.with(GRID, changed);

        Places corner = new Places(new double[] {2300, 20}, new double[] {2300, 20});
        assertThat(after.at(corner).mean(0)).isEqualTo(before.at(corner).mean(0));
        assertThat(after.at(corner).mean(1)).isGreaterThan(before.at(corner).mean(1) + 0.5);
    }

    @Test
    void aChangedFieldIsThatOfAFreshStart() {
        List<Site> changed = calls();
        changed.set(150, HOLLOW);

        LatentField.Estimate warm =
                LatentField.fit(PRIOR, GRID, calls()).with(GRID, changed).at(GRID);
        LatentField.Estimate fresh = LatentField.fit(PRIOR, GRID, changed).at(GRID);

        for (int i = 0; i < 400; i++) {
            // the rounds stop at a thousandth of a site; drift is kept from before the change
            assertThat(warm.above(i, 0)).isCloseTo(fresh.above(i, 0), within(0.02));
        }
    }

    /** Taken over or worked out anew, the field is the same to the last bit: what is taken over rests on the same sites. */
    @Test
    void whatIsTakenOverFromAnEarlierStateIsWhatWouldBeWorkedOutAnew() {
        LatentField before = LatentField.fit(PRIOR, GRID, calls());
        LatentField.Estimate known = before.at(GRID);
        List<Site> changed = calls();
        changed.set(0, HOLLOW);
        LatentField after = before.with(GRID, changed);

        LatentField.Estimate quick = after.at(GRID, known);
        LatentField.Estimate anew = after.at(GRID);

        for (int i = 0; i < 400; i++) {
            assertThat(quick.mean(i)).isEqualTo(anew.mean(i));
            assertThat(quick.sd(i)).isEqualTo(anew.sd(i));
        }
        assertThat(quick.mean(0)).isNotEqualTo(known.mean(0));
    }

    /**
     * Blocks of a hundred among 900 readings: along lines right across them the field takes no step that the solution of
     * all readings together does not take. With values only that solution needs no rounds.
     */
    @Test
    void theSeamsBetweenBlocksDoNotShow() {
        Random random = new Random(3);
        int side = 30;
        double[] x = new double[side * side];
        double[] y = new double[side * side];
        List<Site> values = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            x[i] = 80 * (i % side) + 20 * random.nextGaussian();
            y[i] = 80 * (i / side) + 20 * random.nextGaussian();
            values.add(
                    new Site.Value(3 * Math.sin(x[i] / 300) * Math.cos(y[i] / 250) + 0.4 * random.nextGaussian(), 0.4));
        }
        Places places = new Places(x, y);
        Model model = Model.of(PRIOR, 110, 8);
        var together = new ExpectationPropagation(values, model.mean(places), model.covariance(places));
        together.run(1, 1e-3);
        Sites all = new Sites(x.length);
        together.noteIn(all, IntStream.range(0, x.length).toArray());
        int m = 440;
        Places line = new Places(
                IntStream.range(0, m).mapToDouble(i -> 10.0 * (i % 220)).toArray(),
                IntStream.range(0, m)
                        .mapToDouble(i -> i < 220 ? 1133 : 10.0 * (i % 220))
                        .toArray());
        double[] mean = new double[m];
        double[] sd = new double[m];
        new Posterior(model, places, all).estimate(line, IntStream.range(0, m).toArray(), mean, sd);

        LatentField.Estimate blocks = LatentField.fit(PRIOR, places, values).at(line);

        for (int i = 1; i < m; i++) {
            double step = i == 220 ? 0 : blocks.mean(i) - blocks.mean(i - 1) - (mean[i] - mean[i - 1]);
            // a fiftieth of the field's own standard error at a reading's worth of scatter, 0.4
            assertThat(step).isCloseTo(0, within(0.02));
            assertThat(blocks.mean(i)).isCloseTo(mean[i], within(0.05));
        }
    }
}
