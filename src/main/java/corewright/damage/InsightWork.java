package corewright.damage;

import corewright.field.Bin;
import corewright.field.ExperimentalVariogram;
import corewright.field.LatentField;
import corewright.field.Matern;
import corewright.field.Normal;
import corewright.field.Places;
import corewright.field.Site;
import corewright.survey.Spot;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Works out an {@link Insight}.
 *
 * <p>Foretelling: the places are shuffled into {@link #FOLDS} parts and each part is foretold from the others with the
 * fitted range, sill and drift (Hastie, Tibshirani and Friedman, The Elements of Statistical Learning, 2nd ed. 2009,
 * section 7.10). Readings at one place stay together. Where water is a drift of looseness its estimate from all meter
 * readings is kept.
 */
public final class InsightWork {
    private static final int FOLDS = 10;

    /** Readings foretold that are enough to judge a map by: further parts are left once so many are. Judgement. */
    private static final double ENOUGH = 2000;

    /** With so many foretold the remaining bays, in an order by chance, are left. Judgement. */
    private static final int MOST = 4000;

    /** Readings whose pairs are compared; of more an even selection is taken. Judgement. */
    private static final int PAIRED = 4000;

    /** Fixed: the same survey gives the same insight. */
    private static final long SEED = 1;

    /** Distance classes up to the usual cut-off, as gstat has them. */
    private static final int CLASSES = 15;

    /** Of the standard normal: eight cases in ten lie within. */
    private static final double TENTH = 1.2815515655446004;

    /** One bay's observations that count, and where they were made, with the drift terms there. */
    private record Sample(LatentField field, Matern kernel, List<Observation> seen, Places at, ReadingScore score) {
        double meanLatent() {
            double latent = 0;
            for (int term = 0; term < at.terms(); term++) {
                int t = term;
                latent += field.drift(t)
                        * IntStream.range(0, at.size())
                                .mapToDouble(i -> at.term(t, i))
                                .average()
                                .orElse(0);
            }
            return latent;
        }

        boolean counts(int i) {
            Observation o = seen.get(i);
            return score.counts(o.reading()) && score.tells(o.site());
        }
    }

    private InsightWork() {}

    /**
     * Works out the insight into one face; takes as long as some ten fits with everything held, or as few as one where readings are many.
     *
     * @param fitted what was fitted when the face was mapped
     */
    public static Insight of(FaceDamage face, Parameters fitted) {
        return new Insight(water(face, fitted), bond(face, fitted), voidMm3(face, fitted));
    }

    static Insight.Quantity water(FaceDamage face, Parameters fitted) {
        return quantity(bays(face, fitted).stream()
                .map(b -> b.fields())
                .map(f -> new Sample(f.wet, Priors.WET.kernel(), f.wetSeen, places(f.wetSeen), ReadingScore.INDEX))
                .toList());
    }

    static Insight.Quantity bond(FaceDamage face, Parameters fitted) {
        return quantity(bays(face, fitted).stream()
                .map(b -> b.fields())
                .map(f -> new Sample(f.loose, Priors.LOOSE.kernel(), f.looseSeen, f.looseAt, ReadingScore.CALL))
                .toList());
    }

    private static Places places(List<Observation> seen) {
        return new Places(
                seen.stream().mapToDouble(o -> o.spot().xMm()).toArray(),
                seen.stream().mapToDouble(o -> o.spot().yMm()).toArray());
    }

    /** Draw by draw, over all bays. */
    static List<Double> voidMm3(FaceDamage face, Parameters fitted) {
        List<List<Double>> bays =
                bays(face, fitted).stream().map(BayWork::totalMm3).toList();
        int draws = bays.isEmpty() ? 0 : bays.get(0).size();
        return IntStream.range(0, draws)
                .mapToObj(d -> bays.stream().mapToDouble(b -> b.get(d)).sum())
                .toList();
    }

    private static List<BayWork> bays(FaceDamage face, Parameters fitted) {
        List<BayWork> works = new ArrayList<>();
        for (Bay bay : face.bays()) {
            BayWork work = fitted.of(bay);
            if (work != null) {
                works.add(work);
            }
        }
        return works;
    }

    private static Insight.Quantity quantity(List<Sample> samples) {
        int all = samples.stream().mapToInt(s -> s.seen.size()).sum();
        int folds = (int) Math.min(FOLDS, Math.ceil(FOLDS * ENOUGH / Math.max(all, 1)));
        List<Sample> mixed = new ArrayList<>(samples);
        Collections.shuffle(mixed, new Random(SEED));
        List<Insight.Foretold> foretold = new ArrayList<>();
        for (Sample sample : all > FOLDS * MOST ? mixed : samples) {
            if (foretold.size() < MOST) {
                foretold.addAll(foretold(sample, folds));
            }
        }
        return new Insight.Quantity(lags(samples), foretold);
    }

    /** @param folds how many of the parts are foretold */
    private static List<Insight.Foretold> foretold(Sample s, int folds) {
        int[] part = parts(s.seen);
        List<Insight.Foretold> out = new ArrayList<>();
        for (int p = 0; p < folds; p++) {
            int fold = p;
            int[] own =
                    IntStream.range(0, part.length).filter(i -> part[i] == fold).toArray();
            int[] rest =
                    IntStream.range(0, part.length).filter(i -> part[i] != fold).toArray();
            if (own.length == 0 || rest.length == 0) {
                continue;
            }
            List<Site> said =
                    IntStream.of(rest).mapToObj(i -> s.seen.get(i).site()).toList();
            LatentField.Estimate e = s.field.with(s.at.only(rest), said).at(s.at.only(own));
            for (int k = 0; k < own.length; k++) {
                if (s.counts(own[k])) {
                    out.add(foretold(s.score, s.seen.get(own[k]).site(), e.mean(k), e.sd(k)));
                }
            }
        }
        return out;
    }

    private static Insight.Foretold foretold(ReadingScore score, Site site, double mean, double sdOfField) {
        double sd = Math.hypot(sdOfField, ReadingScore.scatter(site));
        double doubt = site instanceof Site.Interval i ? i.doubt() : 0;
        double low = score.of(mean - TENTH * sd);
        double high = score.of(mean + TENTH * sd);
        return new Insight.Foretold(
                score.seen(site),
                low,
                score.of(mean),
                high,
                score.within(mean, sd, low, high),
                (1 - doubt) * Normal.below((mean - score.bound()) / sd) + doubt * score.byChance(),
                score.came(site));
    }

    /** The part of each observation; those at one place are in one part. */
    private static int[] parts(List<Observation> seen) {
        List<Spot> spots =
                new ArrayList<>(seen.stream().map(Observation::spot).distinct().toList());
        Collections.shuffle(spots, new Random(SEED));
        Map<Spot, Integer> part = new HashMap<>();
        for (int i = 0; i < spots.size(); i++) {
            part.put(spots.get(i), i % FOLDS);
        }
        return seen.stream().mapToInt(o -> part.getOrDefault(o.spot(), 0)).toArray();
    }

    /** Classes common to all bays; the cut-off is a third of the diagonal of the widest of them, as is usual. */
    private static List<Insight.Lag> lags(List<Sample> samples) {
        double cutoff = 0;
        for (Sample s : samples) {
            int[] own = paired(s);
            double[] x = coordinates(s, own, true);
            double[] y = coordinates(s, own, false);
            cutoff = Math.max(cutoff, Math.hypot(spread(x), spread(y)) / 3);
        }
        Map<Integer, double[]> sums = new TreeMap<>(); // by class: pairs, and times pairs: lag, seen, model
        for (Sample s : samples) {
            if (cutoff > 0) {
                add(sums, s, cutoff);
            }
        }
        return sums.values().stream()
                .map(v -> new Insight.Lag((int) v[0], v[1] / v[0], v[2] / v[0], v[3] / v[0]))
                .toList();
    }

    private static void add(Map<Integer, double[]> sums, Sample s, double cutoff) {
        int[] own = paired(s);
        double[] values = IntStream.of(own)
                .mapToDouble(i -> s.score.seen(s.seen.get(i).site()))
                .toArray();
        double scatter = IntStream.of(own)
                .mapToDouble(i -> ReadingScore.scatter(s.seen.get(i).site()))
                .map(v -> v * v)
                .average()
                .orElse(0);
        double width = cutoff / CLASSES;
        for (Bin b : ExperimentalVariogram.omni(
                coordinates(s, own, true), coordinates(s, own, false), values, cutoff, width)) {
            double shared = s.field.sill() * s.kernel.correlation(b.lag() / s.field.range());
            double model = s.score.halfSquare(s.meanLatent(), shared, s.field.sill() + scatter - shared);
            double[] sum = sums.computeIfAbsent((int) Math.floor(b.lag() / width), k -> new double[4]);
            sum[0] += b.pairs();
            sum[1] += b.pairs() * b.lag();
            sum[2] += b.pairs() * b.gamma();
            sum[3] += b.pairs() * model;
        }
    }

    private static int[] paired(Sample s) {
        int[] own = IntStream.range(0, s.seen.size()).filter(s::counts).toArray();
        if (own.length <= PAIRED) {
            return own;
        }
        Random random = new Random(SEED);
        double step = (double) own.length / PAIRED;
        return IntStream.range(0, PAIRED)
                .map(k -> own[(int) (step * (k + random.nextDouble()))])
                .toArray();
    }

    private static double[] coordinates(Sample s, int[] own, boolean aft) {
        return IntStream.of(own)
                .mapToObj(i -> s.seen.get(i).spot())
                .mapToDouble(p -> aft ? p.xMm() : p.yMm())
                .toArray();
    }

    private static double spread(double[] values) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double v : values) {
            low = Math.min(low, v);
            high = Math.max(high, v);
        }
        return values.length == 0 ? 0 : high - low;
    }
}
