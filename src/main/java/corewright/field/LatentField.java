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
    /** While a person edits; a probability is then right to some 0.003. */
    private static final double NEARLY = 3e-3;

    /** Fewer observations cannot tell direction from chance; common practice in fitting directional variograms. */
    private static final int ENOUGH_FOR_DIRECTION = 60;

    /** A tenth of the least of these: what many sites left where they were add up to. */
    private static final double MOVED = 1e-4;

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
    private final Plane plane;
    private final Model fitted;
    private final List<Block> blocks;
    private final Sites sites;
    private final double[] doubt;
    private final double[] surprise;

    /** Observations' places as drawn out for the field's direction, their blocks, and the search among them. */
    @SuppressWarnings("ArrayRecordComponent")
    private record Plane(
            LatentPrior prior, Stretch stretch, Places places, Blocks layout, List<int[]> members, Search search) {
        static Plane of(LatentPrior prior, Stretch stretch, Places places, Blocks layout, List<Site> observed) {
            List<int[]> members = layout.members(places);
            return new Plane(prior, stretch, places, layout, members, new Search(prior, places, observed, members));
        }

        /** The same drawn out, if the observations show a direction. */
        Plane directed(List<Site> observed) {
            Stretch found = search.direction();
            Places drawn = found.of(places);
            return found.equals(Stretch.NONE) ? this : of(prior, found, drawn, Blocks.of(drawn), observed);
        }
    }

    /** @param earlier what this field follows; null where range and sill are to be searched for */
    private LatentField(Plane plane, List<Site> observed, @Nullable LatentField earlier) {
        this.plane = plane;
        this.observed = observed;
        prior = plane.prior;
        places = plane.places;
        List<int[]> members = plane.members;
        Sites start = earlier == null ? new Sites(places.size()) : earlier.remembered(places, observed);
        fitted = earlier != null ? earlier.fitted : plane.search.best(start);
        Model model = members.size() == 1 ? Model.of(prior, fitted.range, fitted.sill) : fitted;
        NeighbourIndex index = places.index();
        blocks = IntStream.range(0, members.size())
                .parallel()
                .mapToObj(b -> solved(
                        model,
                        Blocks.withHalo(places, members.get(b), index),
                        members.get(b).length,
                        start,
                        earlier == null ? null : earlier.blocks.get(b)))
                .toList();
        int n = places.size();
        sites = earlier == null ? new Sites(n) : start;
        doubt = new double[n];
        surprise = new double[n];
        for (int b = 0; b < blocks.size(); b++) {
            Block block = blocks.get(b);
            int[] own = members.get(b);
            sites.takeMoved(block.sites(), own, earlier == null ? 0 : MOVED);
            for (int i = 0; i < own.length; i++) {
                doubt[own[i]] = block.doubt()[i];
                surprise[own[i]] = block.surprise()[i];
            }
        }
    }

    private Block solved(Model model, int[] heard, int own, Sites start, @Nullable Block earlier) {
        Places there = places.only(heard);
        List<Site> said = Arrays.stream(heard).mapToObj(observed::get).toList();
        if (earlier != null && earlier.same(own, there, said)) {
            return earlier;
        }
        var run = new ExpectationPropagation(said, model.mean(there), model.covariance(there));
        run.startFrom(start.only(heard));
        boolean settled = run.run(FINAL_ROUNDS, earlier == null ? SETTLED : NEARLY);
        return Block.of(own, there, said, run, settled);
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
        return new LatentField(plane(prior, places, observed), observed, null);
    }

    /** The same, reaching farther in one direction than across it where enough observations show that it does. */
    public static LatentField fitDirected(LatentPrior prior, Places places, List<Site> observed) {
        Plane plane = plane(prior, places, observed);
        return new LatentField(
                observed.size() < ENOUGH_FOR_DIRECTION ? plane : plane.directed(observed), observed, null);
    }

    private static Plane plane(LatentPrior prior, Places places, List<Site> observed) {
        if (places.terms() != prior.drift().size() || observed.size() != places.size()) {
            throw new IllegalArgumentException(observed.size() + " observations at " + places.size() + " places");
        }
        return Plane.of(prior, Stretch.NONE, places, Blocks.of(places), observed);
    }

    /**
     * The field from other observations with this one's range, sill, direction and drift. Blocks whose observations are the
     * same are taken over as they are and the others start from what is known, which is what makes it quick after a small
     * change; the result differs from a fresh start by no more than the tolerance at which the rounds stop.
     */
    public LatentField with(Places others, List<Site> said) {
        if (others.terms() != prior.drift().size() || said.size() != others.size()) {
            throw new IllegalArgumentException(said.size() + " observations at " + others.size() + " places");
        }
        Stretch stretch = plane.stretch;
        return new LatentField(Plane.of(prior, stretch, stretch.of(others), plane.layout, said), said, this);
    }

    /** Direction of the long range, degrees from +x towards +y, below 180; of no meaning where the ratio is 1. */
    public double longAxisDegrees() {
        return (plane.stretch.degrees() + 360) % 180;
    }

    /** Long range over short range; 1 where the observations show no direction. */
    public double rangeRatio() {
        return plane.stretch.ratio();
    }

    /** Range; the geometric mean of the long and the short one where there is a direction. */
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
        return at(targets, null);
    }

    /**
     * The same, taking over what an earlier state of the field said wherever the observations heard there are the same and
     * say the same.
     *
     * @param asked places in the plane as it is
     * @param earlier of the field that this one came from by {@link #with}; null for none
     */
    public Estimate at(Places asked, @Nullable Estimate earlier) {
        Places targets = plane.stretch.of(asked);
        double[] mean = new double[targets.size()];
        double[] sd = new double[targets.size()];
        boolean all = places.size() <= NEIGHBOURS;
        NeighbourIndex index = places.index();
        Posterior whole = all ? heard(IntStream.range(0, places.size()).toArray()) : null;
        Estimate known = earlier == null || !earlier.field.alike(this) ? null : earlier;
        NeighbourIndex before = known == null ? index : known.field.places.index();
        squares(targets).parallelStream().forEach(square -> {
            int[] near = nearest(targets, square, index);
            if (known != null && known.holds(targets, square, this, near, before)) {
                known.copy(square, mean, sd);
            } else {
                Posterior posterior = whole != null ? whole : heard(near);
                posterior.estimate(targets, square, mean, sd);
            }
        });
        return new Estimate(this, targets, mean, sd);
    }

    /** Whether both hear a place's neighbours under the same model and with the same squares. */
    private boolean alike(LatentField other) {
        return fitted == other.fitted
                && (blocks.size() == 1) == (other.blocks.size() == 1)
                && places.spacing() == other.places.spacing();
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
    public Draws draws(Places asked, int count, double widen, Random random) {
        Places targets = plane.stretch.of(asked);
        int m = targets.size();
        double[] mean = at(asked).mean;
        double[][] covariance = heard(nearestToAny(targets)).covariance(targets);
        double[][] e = new double[m][count];
        double[][] values = new double[m][count];
        for (int i = 0; i < m; i++) {
            Arrays.setAll(e[i], d -> -widen * random.nextGaussian());
            Arrays.fill(values[i], mean[i]);
        }
        Cholesky.ofSemiDefinite(covariance).subtractProduct(values, e);
        double[][] draws = new double[count][m];
        for (int i = 0; i < m; i++) {
            for (int d = 0; d < count; d++) {
                draws[d][i] = values[i][d];
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
        private final LatentField field;
        private final Places targets;
        private final double[] mean;
        private final double[] sd;

        Estimate(LatentField field, Places targets, double[] mean, double[] sd) {
            this.field = field;
            this.targets = targets;
            this.mean = mean;
            this.sd = sd;
        }

        /** Whether the same targets were estimated from the same neighbours, which now say the same. */
        private boolean holds(Places now, int[] square, LatentField later, int[] near, NeighbourIndex index) {
            if (targets.size() != now.size()) {
                return false;
            }
            for (int i : square) {
                if (!targets.same(i, now, i)) {
                    return false;
                }
            }
            int[] heard = nearest(targets, square, index);
            boolean same = heard.length == near.length;
            for (int k = 0; same && k < near.length; k++) {
                same = field.places.same(heard[k], later.places, near[k])
                        && field.sites.same(heard[k], later.sites, near[k]);
            }
            return same;
        }

        private void copy(int[] which, double[] toMean, double[] toSd) {
            for (int i : which) {
                toMean[i] = mean[i];
                toSd[i] = sd[i];
            }
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
