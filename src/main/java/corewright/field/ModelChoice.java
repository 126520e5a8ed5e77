package corewright.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Chooses a variogram by its leave-one-out error.
 *
 * <p><b>Steps.</b> (1) merge, thin when there are very many; (2) with fewer than {@link #FEW} places: the range handed in,
 * stated as such; (3) fit all four shapes; (4) with {@link #DIRECTION_FROM} places or more, fit the best of them again with
 * a long axis; (5) the least leave-one-out root mean square wins, a direction only when it betters the best without by
 * {@link #DIRECTION_GAIN}.
 */
public final class ModelChoice {
    /** Below this no variogram is fitted: 30 places make 435 pairs, 29 a class. Common practice: 30 pairs a class. */
    public static final int FEW = 30;

    /** Common practice asks for 250 places for a directional variogram; fewer will do here, for the score must bear it out. */
    static final int DIRECTION_FROM = 100;

    /**
     * Part of the leave-one-out error that a direction must save. Chosen so that of 40 fields of 150 samples without any
     * direction (see the test) none was given one.
     */
    static final double DIRECTION_GAIN = 0.05;

    /** With more places than this a fixed random choice of them decides: pairs and scores grow with their square. */
    static final int MOST = 1000;

    /** Nugget assumed with few readings, as part of their variance; judgement. */
    private static final double NUGGET_SHARE = 0.1;

    private ModelChoice() {}

    /**
     * What was chosen.
     *
     * @param score leave-one-out from all places looked at
     * @param why one sentence for people
     */
    public record Choice(Variogram variogram, CrossValidation score, String why) {}

    /**
     * The choice for these samples; never fails.
     *
     * @param fallbackRange used with few samples, coordinate unit, above 0
     */
    public static Choice choose(Samples samples, double fallbackRange) {
        Samples merged = samples.merged();
        Samples s = thin(merged);
        double variance = variance(s);
        if (!(variance > 0)) {
            Variogram flat = Variogram.isotropic(Shape.EXPONENTIAL, 0, 0, fallbackRange);
            return scored(s, flat, s.size() + " readings without any difference: the value is taken as constant.");
        }
        if (s.size() < FEW) {
            Variogram assumed = Variogram.isotropic(
                    Shape.EXPONENTIAL, NUGGET_SHARE * variance, (1 - NUGGET_SHARE) * variance, fallbackRange);
            String why = "Only %d readings, fewer than %d: the range is assumed (%.4g), not fitted.";
            return scored(s, assumed, say(why, s.size(), FEW, fallbackRange));
        }
        Choice round = bestShape(s, merged.size());
        return s.size() < DIRECTION_FROM ? round : directed(s, round);
    }

    private static Choice bestShape(Samples s, int of) {
        List<Bin> bins = ExperimentalVariogram.omni(s.xs(), s.ys(), s.values());
        List<Choice> fitted = new ArrayList<>();
        for (Shape shape : Shape.values()) {
            Choice choice = scored(s, VariogramFit.fit(bins, shape).variogram(), "");
            if (Double.isFinite(choice.score().rootMeanSquare())) {
                fitted.add(choice);
            }
        }
        Choice best = fitted.get(0);
        for (Choice c : fitted) {
            best = c.score().rootMeanSquare() < best.score().rootMeanSquare() ? c : best;
        }
        String looked = s.size() < of ? say("%d of %d readings", s.size(), of) : s.size() + " readings";
        String why = "Of four shapes the %s foretells left-out readings best (root mean square error %.4g, %s).";
        String name = best.variogram().shape().name().toLowerCase(Locale.ROOT);
        return new Choice(
                best.variogram(), best.score(), say(why, name, best.score().rootMeanSquare(), looked));
    }

    /** The same shape with a long axis, where that pays. */
    private static Choice directed(Samples s, Choice round) {
        double cutoff = ExperimentalVariogram.usualCutoff(s);
        Variogram v =
                VariogramFit.fitDirected(s, round.variogram().shape(), cutoff).variogram();
        if (v.ratio() == 1) {
            return round;
        }
        Choice along = scored(s, v, "");
        double gain = 1 - along.score().rootMeanSquare() / round.score().rootMeanSquare();
        if (!(gain >= DIRECTION_GAIN)) {
            return round;
        }
        String why =
                "%s Along %.0f degrees from +x towards +y they agree %.1f times as far as across: %.0f %% less error.";
        return new Choice(v, along.score(), say(why, round.why(), v.majorDeg(), 1 / v.ratio(), 100 * gain));
    }

    private static Choice scored(Samples s, Variogram v, String why) {
        return new Choice(v, CrossValidation.leaveOneOut(s, v, 0), why);
    }

    private static String say(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
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

    /** Every sample, or {@link #MOST} of them by a shuffle with a fixed seed: rows of a file often follow a pattern. */
    private static Samples thin(Samples s) {
        int n = s.size();
        if (n <= MOST) {
            return s;
        }
        int[] order = new int[n];
        for (int i = 0; i < n; i++) {
            order[i] = i;
        }
        Random random = new Random(1);
        int[] chosen = new int[MOST];
        for (int i = 0; i < MOST; i++) {
            int other = i + random.nextInt(n - i);
            chosen[i] = order[other];
            order[other] = order[i];
        }
        return s.only(chosen);
    }
}
