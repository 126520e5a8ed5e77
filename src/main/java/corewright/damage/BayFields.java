package corewright.damage;

import corewright.field.LatentField;
import corewright.field.LatentPrior;
import corewright.field.Places;
import corewright.field.Site;
import corewright.survey.Settings;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The three hidden fields of one bay, from that bay's readings alone: water, then looseness with water as a drift, then
 * void depth with looseness as a drift. Values stand on {@link #cells}, which reach a little beyond the bay.
 */
final class BayFields {
    /** Abscissae of the five-point... nine-point Gauss-Hermite rule for a standard normal, non-negative half. */
    private static final double[] NODES = {0, 1.023255663789133, 2.076847978677830, 3.205429002856470, 4.512745863399783
    };

    /** Weights to {@link #NODES}; Abramowitz and Stegun, table 25.10, scaled to unit sum. */
    private static final double[] WEIGHTS = {
        0.406349206349206, 0.244097502894939, 0.049916406765218, 0.002789141321232, 0.0000223458440077466
    };

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
    final LatentField wet;
    final LatentField loose;
    final LatentField empty;

    private final Frame frame;
    private final double[] voidTerm1;
    private final double[] voidTerm2;

    /** Core thickness under a cell, millimetres. */
    interface Cores {
        double atCell(int cell);
    }

    /** Readings of one bay, one list a field. */
    record Seen(List<Observation> wet, List<Observation> loose, List<Observation> empty) {}

    /** @param earlier the same bay with other readings, whose ranges, sills and drifts are kept; null to fit them */
    BayFields(Bay bay, Frame frame, Seen seen, Settings settings, Cores cores, @Nullable BayFields earlier) {
        this.bay = bay;
        this.frame = frame;
        wetSeen = seen.wet;
        looseSeen = seen.loose;
        voidSeen = seen.empty;
        cells = frame.cellsAround(bay.area());
        inside = insideFlags(frame, bay, cells);
        coreMm = new double[cells.length];
        for (int i = 0; i < cells.length; i++) {
            coreMm[i] = cores.atCell(cells[i]);
        }
        int few = settings.numerics().fewReadings();

        wet = fit(Priors.WET, few, earlier == null ? null : earlier.wet, wetSeen);
        LatentField.Estimate z = wet.at(cellPlaces());
        pWet = new double[cells.length];
        index = new double[cells.length];
        indexSd = new double[cells.length];
        double[] moisture = new double[cells.length];
        for (int i = 0; i < cells.length; i++) {
            pWet[i] = z.above(i, 0);
            moisture[i] = Priors.moistureTerm(z.mean(i));
            setIndex(i, z.mean(i), z.sd(i));
        }

        LatentField.Estimate zAtTaps = wet.at(places(looseSeen));
        double[] moistureAtTaps = new double[looseSeen.size()];
        for (int i = 0; i < moistureAtTaps.length; i++) {
            moistureAtTaps[i] = Priors.moistureTerm(zAtTaps.mean(i));
        }
        loose = fit(Priors.LOOSE, few, earlier == null ? null : earlier.loose, looseSeen, moistureAtTaps);
        LatentField.Estimate f = loose.at(cellPlaces(moisture));
        pLoose = new double[cells.length];
        for (int i = 0; i < cells.length; i++) {
            pLoose[i] = f.above(i, 0);
        }

        double[] insideMm =
                DistanceInside.of(frame, cells, pLoose, settings.thresholds().likely());
        voidTerm1 = new double[cells.length];
        voidTerm2 = new double[cells.length];
        for (int i = 0; i < cells.length; i++) {
            voidTerm1[i] = Priors.loosenessTerm(f.mean(i));
            voidTerm2[i] = Priors.insideTerm(insideMm[i]);
        }
        empty = fit(
                Priors.VOID,
                few,
                earlier == null ? null : earlier.empty,
                voidSeen,
                nearest(voidTerm1),
                nearest(voidTerm2));
        LatentField.Estimate u = empty.at(cellPlaces(voidTerm1, voidTerm2));
        pVoid = new double[cells.length];
        depthMm = new double[cells.length];
        depthSdMm = new double[cells.length];
        setVoids(u, settings.thresholds().voidDepthMm());
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
            LatentPrior prior, int few, @Nullable LatentField earlier, List<Observation> seen, double[]... terms) {
        List<Site> sites = seen.stream().map(Observation::site).toList();
        Places places = places(seen, terms);
        return earlier != null
                ? earlier.with(places, sites)
                : LatentField.fit(seen.size() < few ? prior.held() : prior, places, sites);
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

    /** A drift term at the void readings: that of the nearest cell. */
    private double[] nearest(double[] ofCells) {
        return voidSeen.stream()
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
        for (int i = 0; i < cells.length; i++) {
            setVoid(i, u.above(i, VoidEvidence.latent(thresholdMm, coreMm[i])), u.mean(i), u.sd(i));
        }
    }

    /** Void implies loose: the share of a void that looseness does not allow is taken away from depth alike. */
    private void setVoid(int i, double pDeep, double mean, double sd) {
        double open = voidSeen.isEmpty() || !VoidEvidence.measured(voidSeen) ? 0.5 * pLoose[i] : pLoose[i];
        pVoid[i] = Math.min(pDeep, open);
        double share = pDeep > 0 ? pVoid[i] / pDeep : 0;
        double sum = 0;
        double squares = 0;
        for (int k = -4; k <= 4; k++) {
            double d = VoidEvidence.depthMm(mean + Math.signum(k) * NODES[Math.abs(k)] * sd, coreMm[i]);
            sum += WEIGHTS[Math.abs(k)] * d;
            squares += WEIGHTS[Math.abs(k)] * d * d;
        }
        depthMm[i] = share * sum;
        depthSdMm[i] = Math.sqrt(Math.max(0, share * squares - depthMm[i] * depthMm[i]));
    }

    double voidTerm1(int i) {
        return voidTerm1[i];
    }

    double voidTerm2(int i) {
        return voidTerm2[i];
    }
}
