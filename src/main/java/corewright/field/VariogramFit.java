package corewright.field;

import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Fits a variogram model to experimental bins by weighted least squares with weights pairs over squared lag. Source: Cressie
 * (1985), Math. Geology 17:563-586, in gstat's form (its fit method 7).
 *
 * <p>For a given range the best nugget and sill are a two-variable least squares problem with both at least 0, solved
 * exactly; so only the range is searched, over its whole interval, and no start value is needed (variable projection: Golub
 * and Pereyra 1973, SIAM J. Numer. Anal. 10:413-432).
 */
public final class VariogramFit {
    /** Steps of the range's coarse search, equal in its logarithm: neighbours differ by 8 %. */
    private static final int STEPS = 60;

    /** The range is sought from half the first lag (below, all is nugget) to five times the last (above, a line). */
    private static final double SHORTEST = 0.5;

    private static final double LONGEST = 5;

    /** Short over long, in steps of about a fifth: finer ones the directional bins cannot tell apart. */
    private static final double[] RATIOS = {0.8, 0.65, 0.5, 0.4, 0.3, 0.2};

    private VariogramFit() {}

    /**
     * @param weightedSse sum of pairs over squared lag times squared misfit
     */
    public record Fit(Variogram variogram, double weightedSse) {}

    /**
     * The best fit; never fails. No bin: nugget 0, sill 0, range 1. All semivariances 0: nugget and sill 0. One bin: its
     * semivariance as pure nugget. Bins that fall with distance: pure nugget.
     *
     * @return nugget and sill 0 or more, range above 0, isotropic
     */
    public static Fit fit(List<Bin> bins, Shape shape) {
        Lags lags = Lags.of(bins);
        return fit(lags, shape, 0, 1);
    }

    /**
     * Fits a long axis too: bins in six sectors of 30 degrees, long axes every 15 degrees, ratios from 1 down to 0.2.
     *
     * @param cutoff longest distance counted, coordinate unit
     */
    static Fit fitDirected(Samples samples, Shape shape, double cutoff) {
        Lags lags = new Lags();
        for (int azimuth = 0; azimuth < 180; azimuth += 30) {
            var classes = new ExperimentalVariogram.Classes(cutoff, cutoff / 15, azimuth, 15);
            lags.add(ExperimentalVariogram.directional(samples.xs(), samples.ys(), samples.values(), classes), azimuth);
        }
        Fit best = fit(lags, shape, 0, 1);
        for (double ratio : RATIOS) {
            for (int major = 0; major < 180; major += 15) {
                Fit fit = fit(lags, shape, major, ratio);
                best = fit.weightedSse() < best.weightedSse() ? fit : best;
            }
        }
        return best;
    }

    /** Fits with the direction given: bins stand at their own lag vectors. */
    static Fit fit(Lags lags, Shape shape, double majorDeg, double ratio) {
        if (lags.size() == 0) {
            return new Fit(new Variogram(shape, 0, 0, 1, majorDeg, ratio), 0);
        }
        if (lags.size() == 1) {
            return new Fit(new Variogram(shape, lags.gamma(0), 0, lags.last(), majorDeg, ratio), 0);
        }
        double low = Math.log(SHORTEST * lags.first());
        double step = (Math.log(LONGEST * lags.last()) - low) / STEPS;
        DoubleUnaryOperator misfit = logRange ->
                atRange(lags, shape, Math.exp(logRange), majorDeg, ratio).weightedSse();
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= STEPS; i++) {
            double sse = misfit.applyAsDouble(low + i * step);
            if (sse < least) {
                least = sse;
                best = i;
            }
        }
        double from = low + Math.max(best - 1, 0) * step;
        double to = low + Math.min(best + 1, STEPS) * step;
        double refined = goldenSection(misfit, from, to);
        double coarse = low + best * step;
        double range = Math.exp(misfit.applyAsDouble(refined) <= least ? refined : coarse);
        return atRange(lags, shape, range, majorDeg, ratio);
    }

    /** Smallest value in an interval; 40 steps shrink it by 4e-9. Source: Press et al. (2007), section 10.2. */
    private static double goldenSection(DoubleUnaryOperator f, double from, double to) {
        double golden = (Math.sqrt(5) - 1) / 2;
        double a = from;
        double b = to;
        double c = b - golden * (b - a);
        double d = a + golden * (b - a);
        double fc = f.applyAsDouble(c);
        double fd = f.applyAsDouble(d);
        for (int i = 0; i < 40; i++) {
            if (fc <= fd) {
                b = d;
                d = c;
                fd = fc;
                c = b - golden * (b - a);
                fc = f.applyAsDouble(c);
            } else {
                a = c;
                c = d;
                fc = fd;
                d = a + golden * (b - a);
                fd = f.applyAsDouble(d);
            }
        }
        return (a + b) / 2;
    }

    /** Best nugget and sill for one range: normal equations of {@code gamma = n + s g(h)}, each of n and s at least 0. */
    private static Fit atRange(Lags lags, Shape shape, double range, double majorDeg, double ratio) {
        Correlation correlation = new Correlation(new Variogram(shape, 0, 1, range, majorDeg, ratio));
        int n = lags.size();
        double[] g = new double[n];
        double w1 = 0;
        double wg = 0;
        double wgg = 0;
        double wy = 0;
        double wgy = 0;
        for (int i = 0; i < n; i++) {
            g[i] = 1 - correlation.at(lags.dx(i), lags.dy(i));
            double w = lags.weight(i);
            w1 += w;
            wg += w * g[i];
            wgg += w * g[i] * g[i];
            wy += w * lags.gamma(i);
            wgy += w * g[i] * lags.gamma(i);
        }
        double determinant = w1 * wgg - wg * wg;
        double nugget = -1;
        double sill = -1;
        if (determinant > 1e-12 * w1 * wgg) { // else g is constant over the bins: nugget and sill are one
            nugget = (wgg * wy - wg * wgy) / determinant;
            sill = (w1 * wgy - wg * wy) / determinant;
        }
        if (sill < 0) {
            nugget = wy / w1;
            sill = 0;
        } else if (nugget < 0) {
            nugget = 0;
            sill = wgy / wgg;
        }
        double sse = 0;
        for (int i = 0; i < n; i++) {
            double misfit = lags.gamma(i) - nugget - sill * g[i];
            sse += lags.weight(i) * misfit * misfit;
        }
        return new Fit(new Variogram(shape, nugget, sill, range, majorDeg, ratio), sse);
    }
}
