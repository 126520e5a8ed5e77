package corewright.field;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Range and sill by climbing: from the prior's modes to whichever neighbouring trial makes observations and prior more
 * probable, until none does. Range and sill grow together along a ridge (readings say more of their ratio than of
 * either), so that diagonal neighbours are tried too.
 */
final class Search {
    private static final int ROUNDS = 6;

    /** Enough to tell which of two trials is better. */
    private static final double ROUGHLY = 1e-2;

    private final LatentPrior prior;
    private final Places places;
    private final List<Site> observed;
    private final double[] mean;
    private final double[] drift;
    private final Map<List<Integer>, Trial> tried = new HashMap<>();

    record Trial(double range, double sill, ExpectationPropagation sites, double score) {}

    Search(LatentPrior prior, Places places, List<Site> observed) {
        this.prior = prior;
        this.places = places;
        this.observed = observed;
        mean = LatentField.priorMean(prior, places);
        drift = driftCovariance(prior, places);
    }

    Trial best() {
        int r = prior.range().trials().indexOf(prior.range().mode());
        int s = prior.sill().trials().indexOf(prior.sill().mode());
        Trial best = trial(r, s, null);
        int[][] steps = {{1, 0}, {-1, 0}, {0, 1}, {0, -1}, {1, 1}, {-1, -1}};
        boolean climbing = true;
        while (climbing) {
            climbing = false;
            for (int[] step : steps) {
                int nr = r + step[0];
                int ns = s + step[1];
                boolean there = nr >= 0
                        && ns >= 0
                        && nr < prior.range().trials().size()
                        && ns < prior.sill().trials().size();
                if (there && trial(nr, ns, best).score > best.score) {
                    r = nr;
                    s = ns;
                    best = trial(nr, ns, best);
                    climbing = true;
                    break;
                }
            }
        }
        return best;
    }

    private Trial trial(int r, int s, @Nullable Trial from) {
        Trial known = tried.get(List.of(r, s));
        if (known != null) {
            return known;
        }
        double range = prior.range().trials().get(r);
        double sill = prior.sill().trials().get(s);
        var sites = new ExpectationPropagation(observed, mean, covariance(range, sill));
        if (from != null) {
            sites.startFrom(from.sites);
        }
        sites.run(ROUNDS, ROUGHLY);
        double score = sites.logEvidence()
                + prior.range().logPrior(range)
                + prior.sill().logPrior(sill);
        Trial trial = new Trial(range, sill, sites, score);
        tried.put(List.of(r, s), trial);
        return trial;
    }

    private static double[] driftCovariance(LatentPrior prior, Places places) {
        int n = places.size();
        double[] covariance = new double[n * n];
        for (int k = 0; k < prior.drift().size(); k++) {
            double variance = prior.drift().get(k).variance();
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    covariance[i * n + j] += variance * places.term(k, i) * places.term(k, j);
                }
            }
        }
        return covariance;
    }

    private double[] covariance(double range, double sill) {
        int n = places.size();
        double[] covariance = drift.clone();
        for (int i = 0; i < n; i++) {
            for (int j = i; j < n; j++) {
                double h = Math.hypot(places.x(i) - places.x(j), places.y(i) - places.y(j));
                double c = sill * prior.kernel().correlation(h / range);
                covariance[i * n + j] += c;
                if (i != j) {
                    covariance[j * n + i] += c;
                }
            }
        }
        return covariance;
    }
}
