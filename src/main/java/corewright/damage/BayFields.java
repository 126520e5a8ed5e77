package corewright.damage;

import corewright.field.LatentField;
import corewright.field.LatentPrior;
import corewright.field.Places;
import corewright.field.Site;
import corewright.field.Wanted;
import corewright.survey.Spot;
import corewright.survey.settings.Thresholds;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * The three hidden fields of one bay, from that bay's readings alone: water, then looseness with water as a drift, then
 * void depth with looseness as a drift. Values stand on {@link #cells}, which reach a little beyond the bay.
 */
final class BayFields {
    /** Abscissae of the nine-point Gauss-Hermite rule for a standard normal, those from zero up; their mirror images too. */
    private static final double[] NODES = {0, 1.023255663789133, 2.076847978677830, 3.205429002856470, 4.512745863399783
    };

    /** Weights to {@link #NODES}; Abramowitz and Stegun, table 25.10, scaled to unit sum. */
    private static final double[] WEIGHTS = {
        0.406349206349206, 0.244097502894939, 0.049916406765218, 0.002789141321232, 0.0000223458440077466
    };

    /** A change of a drift term too small to follow: half a hundredth of a unit, where a call by ear scatters by one. */
    private static final double HARDLY = 0.005;

    final Bay bay;
    final int[] cells;
    final boolean[] inside;
    final double[] pWet;
    final double[] pLoose;
    final double[] pVoid;
    final double[] index;
    final double[] indexSd;
    final double[] depthMm;
    final double[] depthSdMm;
    final double[] coreMm;

    final List<Observation> wetSeen;
    final List<Observation> looseSeen;
    final List<Observation> voidSeen;
    /** Where looseness was read, with its drift terms there. */
    final Places looseAt;

    final LatentField wet;
    final LatentField loose;
    final LatentField empty;
    private final LatentField.Estimate wetHere;
    private final LatentField.Estimate wetAtTaps;
    private final LatentField.Estimate looseHere;
    private final LatentField.Estimate emptyHere;

    private final Frame frame;
    private final double[] moisture;
    private final double[] moistureAtTaps;
    private final double[] soaked;
    private final double[] voidTerm1;
    private final double[] voidTerm2;

    /** Core thickness under a cell, millimetres. */
    interface Cores {
        double atCell(int cell);
    }

    /** @param earlier the same bay with other readings, whose ranges, sills and drifts are kept; null to fit them */
    BayFields(BayInput input, Frame frame, Cores cores, @Nullable BayFields earlier) {
        bay = input.bay();
        BayInput.Seen seen = input.seen();
        this.frame = frame;
        wetSeen = seen.wet();
        looseSeen = seen.loose();
        voidSeen = seen.empty();
        cells = frame.cellsAround(bay.area());
        inside = insideFlags(frame, bay, cells);
        coreMm = new double[cells.length];
        for (int i = 0; i < cells.length; i++) {
            coreMm[i] = cores.atCell(cells[i]);
        }
        int few = input.numerics().fewReadings();

        Thresholds thresholds = input.thresholds();
        wet = fit(Priors.WET, few, earlier == null ? null : earlier.wet, wetSeen, places(wetSeen));
        wetHere = wet.at(cellPlaces(), earlier == null ? null : earlier.wetHere);
        pWet = above(wetHere, 0);
        index = new double[cells.length];
        indexSd = new double[cells.length];
        for (int i = 0; i < cells.length; i++) {
            setIndex(i, wetHere.mean(i), wetHere.sd(i));
        }

        moisture = kept(means(wetHere, Priors::moistureTerm), earlier == null ? null : earlier.moisture);
        soaked = insideTerm(pWet, thresholds, Priors::soakedTerm);
        wetAtTaps = wet.at(places(looseSeen), earlier == null ? null : earlier.wetAtTaps);
        moistureAtTaps = kept(means(wetAtTaps, Priors::moistureTerm), earlier == null ? null : earlier.moistureAtTaps);
        looseAt = places(looseSeen, moistureAtTaps, nearest(looseSeen, soaked));
        loose = fit(Priors.LOOSE, few, earlier == null ? null : earlier.loose, looseSeen, looseAt);
        looseHere = loose.at(cellPlaces(moisture, soaked), earlier == null ? null : earlier.looseHere);
        pLoose = above(looseHere, 0);

        voidTerm1 = kept(means(looseHere, Priors::loosenessTerm), earlier == null ? null : earlier.voidTerm1);
        voidTerm2 = insideTerm(pLoose, thresholds, Priors::insideTerm);
        empty = fit(
                Priors.VOID,
                few,
                earlier == null ? null : earlier.empty,
                voidSeen,
                places(voidSeen, nearest(voidSeen, voidTerm1), nearest(voidSeen, voidTerm2)));
        emptyHere = empty.at(cellPlaces(voidTerm1, voidTerm2), earlier == null ? null : earlier.emptyHere);
        pVoid = new double[cells.length];
        depthMm = new double[cells.length];
        depthSdMm = new double[cells.length];
        setVoids(emptyHere, thresholds.voidDepthMm());
    }

    /** Terms, but those that hardly moved since as they were, so that what follows from them need not be worked again. */
    private static double[] kept(double[] terms, double @Nullable [] earlier) {
        for (int i = 0; earlier != null && earlier.length == terms.length && i < terms.length; i++) {
            if (Math.abs(terms[i] - earlier[i]) <= HARDLY) {
                terms[i] = earlier[i];
            }
        }
        return terms;
    }

    private static double[] above(LatentField.Estimate estimate, double bound) {
        double[] p = new double[estimate.size()];
        for (int i = 0; i < p.length; i++) {
            p[i] = estimate.above(i, bound);
        }
        return p;
    }

    private static double[] means(LatentField.Estimate estimate, DoubleUnaryOperator term) {
        double[] terms = new double[estimate.size()];
        for (int i = 0; i < terms.length; i++) {
            terms[i] = term.applyAsDouble(estimate.mean(i));
        }
        return terms;
    }

    /** A drift term of each cell from its distance inside the outline where a probability is likely. */
    private double[] insideTerm(double[] p, Thresholds thresholds, DoubleUnaryOperator term) {
        double[] terms = DistanceInside.of(frame, cells, p, thresholds.likely());
        for (int i = 0; i < terms.length; i++) {
            terms[i] = term.applyAsDouble(terms[i]);
        }
        return terms;
    }

    private static boolean[] insideFlags(Frame frame, Bay bay, int[] cells) {
        boolean[] inside = new boolean[cells.length];
        int[] own = frame.cellsIn(bay.area());
        int k = 0;
        for (int i = 0; i < cells.length; i++) {
            while (k < own.length && own[k] < cells[i]) {
                k++;
            }
            inside[i] = k < own.length && own[k] == cells[i];
        }
        return inside;
    }

    private static LatentField fit(
            LatentPrior prior, int few, @Nullable LatentField earlier, List<Observation> seen, Places places) {
        Wanted.check();
        List<Site> sites = seen.stream().map(Observation::site).toList();
        return earlier != null
                ? earlier.with(places, sites)
                : LatentField.fitDirected(seen.size() < few ? prior.held() : prior, places, sites);
    }

    private static Places places(List<Observation> seen, double[]... terms) {
        double[] x = seen.stream().mapToDouble(o -> o.spot().xMm()).toArray();
        double[] y = seen.stream().mapToDouble(o -> o.spot().yMm()).toArray();
        return new Places(x, y, terms);
    }

    private Places cellPlaces(double[]... terms) {
        double[] x = new double[cells.length];
        double[] y = new double[cells.length];
        for (int i = 0; i < cells.length; i++) {
            x[i] = frame.x(cells[i]);
            y[i] = frame.y(cells[i]);
        }
        return new Places(x, y, terms);
    }

    /** A drift term at readings: that of the nearest cell. */
    private double[] nearest(List<Observation> seen, double[] ofCells) {
        return seen.stream()
                .mapToDouble(o -> {
                    int cell = frame.cellOf(o.spot().xMm(), o.spot().yMm());
                    return ofCells[slot(cell)];
                })
                .toArray();
    }

    /** Position of a cell in {@link #cells}, or of the nearest listed one. */
    int slot(int cell) {
        int at = java.util.Arrays.binarySearch(cells, cell);
        if (at >= 0) {
            return at;
        }
        int best = 0;
        double least = Double.MAX_VALUE;
        for (int i = 0; i < cells.length; i++) {
            double d = Math.hypot(frame.x(cells[i]) - frame.x(cell), frame.y(cells[i]) - frame.y(cell));
            if (d < least) {
                least = d;
                best = i;
            }
        }
        return best;
    }

    private void setIndex(int i, double mean, double sd) {
        double sum = 0;
        double squares = 0;
        for (int k = -4; k <= 4; k++) {
            double z = mean + Math.signum(k) * NODES[Math.abs(k)] * sd;
            double percent = 200 / (1 + Math.exp(-z));
            sum += WEIGHTS[Math.abs(k)] * percent;
            squares += WEIGHTS[Math.abs(k)] * percent * percent;
        }
        index[i] = sum;
        indexSd[i] = Math.sqrt(Math.max(0, squares - sum * sum));
    }

    private void setVoids(LatentField.Estimate u, double thresholdMm) {
        double most = VoidEvidence.measured(voidSeen) ? 1 : 0.5;
        for (int i = 0; i < cells.length; i++) {
            setVoid(i, u.above(i, VoidEvidence.latent(thresholdMm, coreMm[i])), most * pLoose[i], u);
        }
    }

    /** Void implies loose: the share of a void that looseness does not allow is taken away from depth alike. */
    private void setVoid(int i, double pDeep, double open, LatentField.Estimate u) {
        pVoid[i] = Math.min(pDeep, open);
        double share = pDeep > 0 ? pVoid[i] / pDeep : 0;
        double sum = 0;
        double squares = 0;
        for (int k = -4; k <= 4; k++) {
            double d = VoidEvidence.depthMm(u.mean(i) + Math.signum(k) * NODES[Math.abs(k)] * u.sd(i), coreMm[i]);
            sum += WEIGHTS[Math.abs(k)] * d;
            squares += WEIGHTS[Math.abs(k)] * d * d;
        }
        depthMm[i] = share * sum;
        depthSdMm[i] = Math.sqrt(Math.max(0, share * squares - depthMm[i] * depthMm[i]));
    }

    /** Probability of empty space at a place of the bay. */
    double voidAt(Spot spot) {
        return pVoid[slot(frame.cellOf(spot.xMm(), spot.yMm()))];
    }

    /** The water field at a cell, so many standard deviations above its mean; wet above 0. */
    double waterAt(int i, double deviations) {
        return wetHere.mean(i) + deviations * wetHere.sd(i);
    }

    /** The looseness field likewise; loose above 0. */
    double loosenessAt(int i, double deviations) {
        return looseHere.mean(i) + deviations * looseHere.sd(i);
    }

    double looseTerm1(int i) {
        return moisture[i];
    }

    double looseTerm2(int i) {
        return soaked[i];
    }

    double voidTerm1(int i) {
        return voidTerm1[i];
    }

    double voidTerm2(int i) {
        return voidTerm2[i];
    }
}
