package corewright.field;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * A smooth hidden field, known through observations of its value or of the interval it lies in.
 *
 * <p>The field has a normal prior ({@link LatentPrior}); where every observation is a value the result is kriging with
 * known error variances and, through the drift coefficients' priors, an unknown mean. Range and sill are those tried that
 * make observations and prior together most probable.
 *
 * <p>Source: Rasmussen and Williams, Gaussian Processes for Machine Learning (2006), chapters 2.7 and 3.6; Omre, Math.
 * Geol. 19 (1987) 25, for the prior on drift coefficients.
 */
public final class LatentField {
    private static final int FINAL_ROUNDS = 30;
    private static final double SETTLED = 1e-3;

    /** Places predicted together: one stripe of the triangular solve stays in the cache. */
    private static final int BLOCK = 64;

    private final LatentPrior prior;
    private final Places places;
    private final double range;
    private final double sill;
    private final ExpectationPropagation sites;
    private final double[] weights;
    private final boolean settled;

    private LatentField(LatentPrior prior, Places places, Search.Trial best) {
        this.prior = prior;
        this.places = places;
        range = best.range();
        sill = best.sill();
        sites = best.sites();
        settled = sites.run(FINAL_ROUNDS, SETTLED);
        weights = sites.alpha();
    }

    /**
     * @param places where the observations were made
     * @param observed what each says
     */
    public static LatentField fit(LatentPrior prior, Places places, List<Site> observed) {
        if (places.terms() != prior.drift().size() || observed.size() != places.size()) {
            throw new IllegalArgumentException(observed.size() + " observations at " + places.size() + " places");
        }
        return new LatentField(prior, places, new Search(prior, places, observed).best());
    }

    public double range() {
        return range;
    }

    public double sill() {
        return sill;
    }

    /** Distance beyond which an observation tells next to nothing of the field. */
    public double reach() {
        return range * prior.kernel().reach();
    }

    /** Whether the approximation stopped moving. */
    public boolean settled() {
        return settled;
    }

    /** Probability that observation i has nothing to do with the field; 0 for values. */
    public double doubt(int i) {
        return sites.doubt(i);
    }

    /** Standard deviations between the value observed at i and what all other observations say; 0 for intervals. */
    public double surprise(int i) {
        return sites.surprise(i);
    }

    /** Mean and standard deviation of the field itself, without any reading's noise, at other places. */
    public Estimate at(Places targets) {
        int m = targets.size();
        double[] mean = priorMean(prior, targets);
        double[] sd = new double[m];
        int blocks = (m + BLOCK - 1) / BLOCK;
        IntStream.range(0, blocks).parallel().forEach(b -> {
            int from = b * BLOCK;
            int to = Math.min(m, from + BLOCK);
            estimate(targets, from, to, mean, sd);
        });
        return new Estimate(mean, sd);
    }

    private void estimate(Places targets, int from, int to, double[] mean, double[] sd) {
        int width = to - from;
        double[] cross = cross(targets, from, to);
        for (int i = 0; i < places.size(); i++) {
            for (int j = 0; j < width; j++) {
                mean[from + j] += weights[i] * cross[i * width + j];
            }
        }
        sites.reduce(cross, width);
        for (int j = 0; j < width; j++) {
            double variance = priorCovariance(targets, from + j, targets, from + j);
            for (int i = 0; i < places.size(); i++) {
                double e = cross[i * width + j];
                variance -= e * e;
            }
            sd[from + j] = Math.sqrt(Math.max(0, variance));
        }
    }

    /**
     * Draws of the field at all targets at once, given the observations.
     *
     * @param widen multiplies each draw's departure from the mean
     */
    public Draws draws(Places targets, int count, double widen, Random random) {
        int m = targets.size();
        int n = places.size();
        double[] mean = at(targets).mean;
        double[] cross = cross(targets, 0, m);
        sites.reduce(cross, m);
        double[] covariance = new double[m * m];
        for (int i = 0; i < m; i++) {
            for (int j = i; j < m; j++) {
                covariance[i * m + j] = priorCovariance(targets, i, targets, j);
            }
            for (int k = 0; k < n; k++) {
                double c = cross[k * m + i];
                for (int j = i; j < m; j++) {
                    covariance[i * m + j] -= c * cross[k * m + j];
                }
            }
        }
        Cholesky root = Cholesky.ofSemiDefinite(m, covariance);
        double[][] draws = new double[count][];
        double[] e = new double[m];
        for (int d = 0; d < count; d++) {
            for (int i = 0; i < m; i++) {
                e[i] = widen * random.nextGaussian();
            }
            draws[d] = root.times(e);
            for (int i = 0; i < m; i++) {
                draws[d][i] += mean[i];
            }
        }
        return new Draws(m, draws);
    }

    /** Prior covariance of sites and targets, row-major, sites by targets. */
    private double[] cross(Places targets, int from, int to) {
        int width = to - from;
        double[] cross = new double[places.size() * width];
        for (int i = 0; i < places.size(); i++) {
            for (int j = 0; j < width; j++) {
                cross[i * width + j] = priorCovariance(places, i, targets, from + j);
            }
        }
        return cross;
    }

    private double priorCovariance(Places a, int i, Places b, int j) {
        double h = Math.hypot(a.x(i) - b.x(j), a.y(i) - b.y(j));
        double sum = sill * prior.kernel().correlation(h / range);
        for (int k = 0; k < prior.drift().size(); k++) {
            sum += prior.drift().get(k).variance() * a.term(k, i) * b.term(k, j);
        }
        return sum;
    }

    static double[] priorMean(LatentPrior prior, Places places) {
        double[] mean = new double[places.size()];
        for (int i = 0; i < mean.length; i++) {
            for (int k = 0; k < prior.drift().size(); k++) {
                mean[i] += prior.drift().get(k).mean() * places.term(k, i);
            }
        }
        return mean;
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
