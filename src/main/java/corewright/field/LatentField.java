package corewright.field;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * A smooth hidden field, known through observations of its value or of the interval it lies in.
 *
 * <p>The field has a normal prior ({@link LatentPrior}); where every observation is a value the result is kriging with
 * known error variances and, through the drift coefficients' priors, an unknown mean. Range and sill are those tried that
 * make observations and prior together most probable. Up to {@link Blocks#WHOLE} observations are solved together; more
 * are solved in overlapping blocks, and the field at a place is estimated from the observations nearest to it.
 *
 * <p>Source: Rasmussen and Williams, Gaussian Processes for Machine Learning (2006), chapters 2.7 and 3.6; Omre, Math.
 * Geol. 19 (1987) 25, for the prior on drift coefficients.
 */
public final class LatentField {
    private static final int FINAL_ROUNDS = 30;
    private static final double SETTLED = 1e-3;

    /**
     * Observations heard at a place where there are more: ten rows of ten on a square grid. On the trial decks 64, 100 and
     * all of them give the same overlaps to 0.01.
     */
    private static final int NEIGHBOURS = 100;

    /** Places within a square this many spacings of observations wide share their neighbours: a halo of three rings. */
    private static final double SQUARE = 4;

    /** Observations heard by draws. */
    private static final int HEARD_BY_DRAWS = 400;

    private final LatentPrior prior;
    private final Places places;
    private final List<Site> observed;
    private final Blocks layout;
    private final Model fitted;
    private final List<Block> blocks;
    private final Sites sites;
    private final double[] doubt;
    private final double[] surprise;

    /** A block's observations, its own first, and what came of them. */
    private record Block(int own, Places places, List<Site> observed, ExpectationPropagation run, boolean settled) {}

    private LatentField(
            LatentPrior prior, Places places, List<Site> observed, Blocks layout, @Nullable LatentField earlier) {
        this.prior = prior;
        this.places = places;
        this.observed = observed;
        this.layout = layout;
        List<int[]> members = layout.members(places);
        Sites start = earlier == null ? new Sites(places.size()) : earlier.remembered(places, observed);
        fitted = earlier != null ? earlier.fitted : new Search(prior, places, observed, members).best(start);
        Model model = members.size() == 1 ? Model.of(prior, fitted.range, fitted.sill) : fitted;
        blocks = IntStream.range(0, members.size())
                .parallel()
                .mapToObj(b -> solved(model, members.get(b), start, earlier == null ? null : earlier.blocks.get(b)))
                .toList();
        int n = places.size();
        sites = new Sites(n);
        doubt = new double[n];
        surprise = new double[n];
        for (int b = 0; b < blocks.size(); b++) {
            ExpectationPropagation run = blocks.get(b).run;
            int[] own = members.get(b);
            sites.take(run, own);
            for (int i = 0; i < own.length; i++) {
                doubt[own[i]] = run.doubt(i);
                surprise[own[i]] = run.surprise(i);
            }
        }
    }

    private Block solved(Model model, int[] own, Sites start, @Nullable Block earlier) {
        int[] heard = Blocks.withHalo(places, own);
        Places there = places.only(heard);
        List<Site> said = Arrays.stream(heard).mapToObj(observed::get).toList();
        if (earlier != null
                && earlier.own == own.length
                && earlier.observed.equals(said)
                && earlier.places.same(there)) {
            return earlier;
        }
        var run = new ExpectationPropagation(said, model.mean(there), model.covariance(there));
        run.startFrom(start.only(heard));
        return new Block(own.length, there, said, run, run.run(FINAL_ROUNDS, SETTLED));
    }

    /** Sites of those observations that were there before, at the same place and saying the same. */
    private Sites remembered(Places others, List<Site> said) {
        Map<List<Object>, Integer> known = new HashMap<>();
        for (int i = 0; i < observed.size(); i++) {
            known.put(List.of(places.x(i), places.y(i), observed.get(i)), i);
        }
        Sites start = new Sites(others.size());
        for (int i = 0; i < said.size(); i++) {
            Integer before = known.get(List.of(others.x(i), others.y(i), said.get(i)));
            if (before != null) {
                start.copy(sites, before, i);
            }
        }
        return start;
    }

    /**
     * @param places where the observations were made
     * @param observed what each says
     */
    public static LatentField fit(LatentPrior prior, Places places, List<Site> observed) {
        if (places.terms() != prior.drift().size() || observed.size() != places.size()) {
            throw new IllegalArgumentException(observed.size() + " observations at " + places.size() + " places");
        }
        return new LatentField(prior, places, observed, Blocks.of(places), null);
    }

    /**
     * The field from other observations with this one's range, sill and drift. Blocks whose observations are the same are
     * taken over as they are and the others start from what is known, which is what makes it quick after a small change;
     * the result differs from a fresh start by no more than the tolerance at which the rounds stop.
     */
    public LatentField with(Places others, List<Site> said) {
        if (others.terms() != prior.drift().size() || said.size() != others.size()) {
            throw new IllegalArgumentException(said.size() + " observations at " + others.size() + " places");
        }
        return new LatentField(prior, others, said, layout, this);
    }

    public double range() {
        return fitted.range;
    }

    public double sill() {
        return fitted.sill;
    }

    /** Distance beyond which an observation tells next to nothing of the field. */
    public double reach() {
        return fitted.range * prior.kernel().reach();
    }

    /** Whether the approximation stopped moving. */
    public boolean settled() {
        return blocks.stream().allMatch(Block::settled);
    }

    /** Mean of drift coefficient k, given all observations; 0 is the constant. */
    public double drift(int k) {
        return fitted.drift(k);
    }

    /** Probability that observation i has nothing to do with the field; 0 for values. */
    public double doubt(int i) {
        return doubt[i];
    }

    /** Standard deviations between the value observed at i and what all other observations say; 0 for intervals. */
    public double surprise(int i) {
        return surprise[i];
    }

    /** Mean and standard deviation of the field itself, without any reading's noise, at other places. */
    public Estimate at(Places targets) {
        double[] mean = new double[targets.size()];
        double[] sd = new double[targets.size()];
        boolean all = places.size() <= NEIGHBOURS;
        NeighbourIndex index = places.index();
        Posterior whole = all ? heard(IntStream.range(0, places.size()).toArray()) : null;
        squares(targets).parallelStream().forEach(square -> {
            Posterior posterior = whole != null ? whole : heard(nearest(targets, square, index));
            posterior.estimate(targets, square, mean, sd);
        });
        return new Estimate(mean, sd);
    }

    /** Targets gathered by squares. */
    private List<int[]> squares(Places targets) {
        double side = SQUARE * places.spacing();
        Map<List<Long>, List<Integer>> squares = new LinkedHashMap<>();
        for (int i = 0; i < targets.size(); i++) {
            List<Long> key = List.of((long) Math.floor(targets.x(i) / side), (long) Math.floor(targets.y(i) / side));
            squares.computeIfAbsent(key, k -> new ArrayList<>()).add(i);
        }
        return squares.values().stream()
                .map(s -> s.stream().mapToInt(Integer::intValue).toArray())
                .toList();
    }

    private static int[] nearest(Places targets, int[] square, NeighbourIndex index) {
        double x = Arrays.stream(square).mapToDouble(targets::x).average().orElseThrow();
        double y = Arrays.stream(square).mapToDouble(targets::y).average().orElseThrow();
        return index.nearest(x, y, NEIGHBOURS, -1);
    }

    /** The field as some of the observations tell it; what the rest say of the drift is in the model already. */
    private Posterior heard(int[] which) {
        Model model = which.length == places.size() && blocks.size() == 1
                ? Model.of(prior, fitted.range, fitted.sill)
                : fitted;
        return new Posterior(model, places.only(which), sites.only(which));
    }

    /**
     * Draws of the field at all targets at once, given the observations.
     *
     * @param widen multiplies each draw's departure from the mean
     */
    public Draws draws(Places targets, int count, double widen, Random random) {
        int m = targets.size();
        double[] mean = at(targets).mean;
        double[] covariance = heard(nearestToAny(targets)).covariance(targets);
        double[] e = new double[m * count];
        for (int k = 0; k < e.length; k++) {
            e[k] = -widen * random.nextGaussian();
        }
        double[] values = new double[m * count];
        for (int i = 0; i < m; i++) {
            Arrays.fill(values, i * count, (i + 1) * count, mean[i]);
        }
        Cholesky.ofSemiDefinite(m, covariance).subtractProduct(values, e, count);
        double[][] draws = new double[count][m];
        for (int i = 0; i < m; i++) {
            for (int d = 0; d < count; d++) {
                draws[d][i] = values[i * count + d];
            }
        }
        return new Draws(m, draws);
    }

    /** All observations, or those nearest to some target where there are too many. */
    private int[] nearestToAny(Places targets) {
        if (places.size() <= HEARD_BY_DRAWS) {
            return IntStream.range(0, places.size()).toArray();
        }
        NeighbourIndex index = targets.index();
        record Far(int place, double squared) {}
        return IntStream.range(0, places.size())
                .mapToObj(i -> {
                    int t = targets.size() == 0 ? -1 : index.nearest(places.x(i), places.y(i), 1, -1)[0];
                    double dx = t < 0 ? 0 : places.x(i) - targets.x(t);
                    double dy = t < 0 ? 0 : places.y(i) - targets.y(t);
                    return new Far(i, dx * dx + dy * dy);
                })
                .sorted(java.util.Comparator.comparingDouble(Far::squared))
                .limit(HEARD_BY_DRAWS)
                .mapToInt(Far::place)
                .sorted()
                .toArray();
    }

    /** The field at some places; arrays in the order of the places, not to be written to. */
    public static final class Estimate {
        private final double[] mean;
        private final double[] sd;

        Estimate(double[] mean, double[] sd) {
            this.mean = mean;
            this.sd = sd;
        }

        public int size() {
            return mean.length;
        }

        public double mean(int i) {
            return mean[i];
        }

        public double sd(int i) {
            return sd[i];
        }

        /** Probability that the field lies above a bound. */
        public double above(int i, double bound) {
            return sd[i] == 0 ? (mean[i] > bound ? 1 : 0) : Normal.below((mean[i] - bound) / sd[i]);
        }
    }
}
