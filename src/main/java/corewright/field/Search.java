package corewright.field;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Range and sill by climbing: from the prior's modes to whichever neighbouring trial makes observations and prior most
 * probable, until none does. Range and sill grow together along a ridge (readings say more of their ratio than of
 * either), so that diagonal neighbours are tried too. Many observations are taken in blocks, as if these were independent
 * of each other (block composite likelihood: Eidsvik and others, J. Comput. Graph. Statist. 23 (2014) 295).
 */
final class Search {
    private static final int ROUNDS = 6;

    /** Enough to tell which of two trials is better. */
    private static final double ROUGHLY = 1e-2;

    /** Blocks asked at most, those with most observations that the prior did not foretell: the rest repeat it. */
    private static final int MOST_BLOCKS = 8;

    private static final int[][] STEPS = {{1, 0}, {-1, 0}, {0, 1}, {0, -1}, {1, 1}, {-1, -1}};

    /**
     * Evidence in favour, as a natural logarithm, that counts as strong: a factor of 150 (Kass and Raftery, J. Amer.
     * Statist. Assoc. 90 (1995) 773), times the some ten directions and ratios among which the best is picked.
     */
    private static final double SHOWN = 7.5;

    private record Part(Places places, List<Site> observed) {}

    /** Sites of each part; {@code score} is the logarithm of their probability and the prior's. */
    record Trial(int r, int s, List<ExpectationPropagation> sites, double score) {}

    private final LatentPrior prior;
    private final List<int[]> asked;
    private final List<Part> parts = new ArrayList<>();
    private final Map<List<Integer>, Trial> tried = new HashMap<>();
    private @Nullable Trial climbed;

    Search(LatentPrior prior, Places places, List<Site> observed, List<int[]> blocks) {
        this.prior = prior;
        Model model = Model.of(prior, prior.range().mode(), prior.sill().mode());
        double[] mean = model.mean(places);
        Comparator<int[]> telling = Comparator.comparingLong((int[] block) -> Arrays.stream(block)
                .filter(i -> tells(observed.get(i), mean[i]))
                .count());
        asked = blocks.stream().sorted(telling.reversed()).limit(MOST_BLOCKS).toList();
        for (int[] block : asked) {
            parts.add(new Part(
                    places.only(block),
                    Arrays.stream(block).mapToObj(observed::get).toList()));
        }
    }

    private static boolean tells(Site site, double mean) {
        return !(site instanceof Site.Interval s) || mean < s.low() || mean > s.high();
    }

    /**
     * Range and sill of the best trial, and the drift coefficients as the observations leave them.
     *
     * @param start is given the sites of the best trial, for the final run to start from
     */
    Model best(Sites start) {
        Trial best = climb();
        for (int i = 0; i < parts.size(); i++) {
            best.sites.get(i).noteIn(start, asked.get(i));
        }
        return informed(best);
    }

    /** The best trial. */
    Trial climb() {
        Trial known = climbed;
        return known != null ? known : climbed();
    }

    private Trial climbed() {
        Trial best = trial(
                prior.range().trials().indexOf(prior.range().mode()),
                prior.sill().trials().indexOf(prior.sill().mode()),
                null);
        Trial from;
        do {
            Wanted.check();
            from = best;
            Trial middle = from;
            List<Trial> around = Arrays.stream(STEPS)
                    .parallel()
                    .filter(step -> there(middle, step))
                    .map(step -> tried(middle, step))
                    .toList();
            for (Trial trial : around) {
                tried.put(List.of(trial.r, trial.s), trial);
                best = trial.score > best.score ? trial : best;
            }
        } while (best != from);
        climbed = best;
        return best;
    }

    private boolean there(Trial from, int[] step) {
        int r = from.r + step[0];
        int s = from.s + step[1];
        return r >= 0
                && s >= 0
                && r < prior.range().trials().size()
                && s < prior.sill().trials().size();
    }

    private Trial tried(Trial from, int[] step) {
        Trial known = tried.get(List.of(from.r + step[0], from.s + step[1]));
        return known != null ? known : trial(from.r + step[0], from.s + step[1], from);
    }

    private Trial trial(int r, int s, @Nullable Trial from) {
        return trial(r, s, from, Stretch.NONE);
    }

    private Trial trial(int r, int s, @Nullable Trial from, Stretch stretch) {
        double range = prior.range().trials().get(r);
        double sill = prior.sill().trials().get(s);
        Model model = Model.of(prior, range, sill);
        double score = prior.range().logPrior(range) + prior.sill().logPrior(sill);
        List<ExpectationPropagation> sites = new ArrayList<>();
        for (Part part : parts) {
            Places there = stretch.of(part.places);
            var own = new ExpectationPropagation(part.observed, model.mean(there), model.covariance(there));
            if (from != null) {
                own.startFrom(from.sites.get(sites.size()));
            }
            own.run(ROUNDS, ROUGHLY);
            score += own.logEvidence();
            sites.add(own);
        }
        return new Trial(r, s, sites, score);
    }

    /**
     * The direction in which the field reaches farther, where the observations show one: their evidence is larger by
     * {@link #SHOWN} than without.
     */
    Stretch direction() {
        Trial none = climb();
        Directed best = best(none, Stretch.COARSE);
        if (best.score < none.score) {
            return Stretch.NONE;
        }
        Directed finer = best(none, best.stretch.finer());
        Directed taken = finer.score > best.score ? finer : best;
        return taken.score > none.score + SHOWN ? taken.stretch : Stretch.NONE;
    }

    private record Directed(Stretch stretch, double score) {}

    private Directed best(Trial none, List<Stretch> stretches) {
        return stretches.stream()
                .parallel()
                .map(s -> new Directed(s, trial(none.r, none.s, none, s).score))
                .toList()
                .stream()
                .max(Comparator.comparingDouble(Directed::score))
                .orElseThrow();
    }

    private Model informed(Trial best) {
        Model model = Model.of(
                prior, prior.range().trials().get(best.r), prior.sill().trials().get(best.s));
        Drift drift = new Drift(model);
        for (int i = 0; i < parts.size(); i++) {
            drift.add(parts.get(i).places, best.sites.get(i));
        }
        return drift.informed();
    }
}
