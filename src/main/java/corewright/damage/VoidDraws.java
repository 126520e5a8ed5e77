package corewright.damage;

import corewright.field.Draws;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/**
 * Equally likely cavities under one bay, conditional on all readings: void depth drawn at nodes of a coarse lattice, and
 * one uniform number a draw that moves the loose outline in and out as a whole.
 */
final class VoidDraws {
    /** Cells less likely void than this add nothing. */
    private static final double NEGLIGIBLE = 0.01;

    /** More nodes cost the third power in time; the lattice is coarsened until they are fewer. */
    private static final int MOST_NODES = 500;

    /**
     * Departures from the mean are widened by this: range and sill are taken as known once fitted. With {@link #TOGETHER}
     * chosen on simulated decks so that seven to nine of ten true volumes fall between P10 and P90.
     */
    private static final double WIDEN = 1.5;

    /**
     * Standard deviations by which a draw is moved as a whole: where the priors of rough means and drifts are wrong, they
     * are wrong all over a bay, and such an error does not average out over its cavities.
     */
    private static final double TOGETHER = 0.5;

    private final BayFields fields;
    private final double cellMm2;
    /** Slots (positions in the bay's cells) that may be void. */
    private final int[] slots;

    private final Lattice lattice;
    /** Empty share of the core, draw by node. */
    private final double[][] share;

    private final double[] uniform;

    /** @param seed of this bay alone, so that another bay's readings change nothing here */
    VoidDraws(BayFields fields, Frame frame, int count, long seed) {
        this.fields = fields;
        cellMm2 = frame.cellMm2();
        slots = possible(fields);
        lattice = new Lattice(fields, frame, slots, MOST_NODES);
        Random random = new Random(seed);
        uniform = random.doubles(count).toArray();
        Draws draws = fields.empty
                .draws(lattice.places(fields::voidTerm1, fields::voidTerm2), count, WIDEN, random)
                .together(TOGETHER, random);
        share = new double[count][lattice.nodes];
        for (int d = 0; d < count; d++) {
            for (int node = 0; node < lattice.nodes; node++) {
                share[d][node] = VoidEvidence.depthMm(draws.at(d, node), 1);
            }
        }
    }

    private static int[] possible(BayFields fields) {
        int[] slots = new int[fields.cells.length];
        int count = 0;
        for (int i = 0; i < slots.length; i++) {
            if (fields.inside[i] && fields.pVoid[i] > NEGLIGIBLE) {
                slots[count++] = i;
            }
        }
        return Arrays.copyOf(slots, count);
    }

    /** The number that moves the loose outline in a draw: cells likelier loose than this are loose. */
    double uniform(int draw) {
        return uniform[draw];
    }

    int count() {
        return share.length;
    }

    /**
     * Empty space by draw in parts of the bay.
     *
     * @param partOf part of each of the bay's cells, or -1
     * @return cubic millimetres, part by draw
     */
    double[][] volumesMm3(int[] partOf, int parts) {
        double[][] volumes = new double[parts][share.length];
        for (int d = 0; d < share.length; d++) {
            for (int k = 0; k < slots.length; k++) {
                int slot = slots[k];
                if (partOf[slot] >= 0 && fields.pLoose[slot] > uniform[d]) {
                    volumes[partOf[slot]][d] += share[d][lattice.nodeOf[k]] * fields.coreMm[slot] * cellMm2;
                }
            }
        }
        return volumes;
    }

    /**
     * What a probe would tell of the bay's volume.
     *
     * @param slot cell, as a position in the bay's cells
     * @param litres by which the standard deviation of the volume falls
     */
    record ProbeGain(int slot, double litres, double shareOfVariance) {}

    /** Variance of a depth read at a drill bit, square millimetres. */
    private static final double PROBE_VARIANCE = 0.25;

    /**
     * The places whose depth explains most of the volume, one after the other: each takes its regression out of all depths
     * and of the volume before the next is chosen.
     */
    List<ProbeGain> probeGains(int most) {
        int count = share.length;
        int[] slotOf = lattice.middleSlots();
        double[] volume = new double[count];
        double[][] depth = new double[lattice.nodes][count];
        double[][] total = volumesMm3(new int[fields.cells.length], 1);
        System.arraycopy(total[0], 0, volume, 0, count);
        for (int node = 0; node < depth.length; node++) {
            int slot = slotOf[node];
            for (int d = 0; d < count; d++) {
                boolean loose = fields.pLoose[slot] > uniform[d];
                depth[node][d] = loose ? share[d][node] * fields.coreMm[slot] : 0;
            }
            centre(depth[node]);
        }
        centre(volume);
        double atFirst = dot(volume, volume) / count;
        List<ProbeGain> gains = new ArrayList<>();
        while (gains.size() < most && atFirst > 0) {
            double before = dot(volume, volume) / count;
            int best = -1;
            double largest = 0;
            for (int node = 0; node < depth.length; node++) {
                double covariance = dot(depth[node], volume) / count;
                double variance = dot(depth[node], depth[node]) / count + PROBE_VARIANCE;
                double explained = covariance * covariance / variance;
                if (explained > largest) {
                    largest = explained;
                    best = node;
                }
            }
            if (best < 0) {
                break;
            }
            double after = Math.max(0, before - largest);
            gains.add(new ProbeGain(slotOf[best], (Math.sqrt(before) - Math.sqrt(after)) / 1e6, largest / atFirst));
            takeOut(depth, volume, depth[best].clone());
        }
        return gains;
    }

    private static void takeOut(double[][] depth, double[] volume, double[] known) {
        double variance = dot(known, known) + PROBE_VARIANCE * known.length;
        regress(volume, known, variance);
        for (double[] other : depth) {
            regress(other, known, variance);
        }
    }

    private static void regress(double[] target, double[] known, double variance) {
        double slope = dot(target, known) / variance;
        for (int d = 0; d < target.length; d++) {
            target[d] -= slope * known[d];
        }
    }

    private static void centre(double[] values) {
        double mean = Arrays.stream(values).average().orElse(0);
        for (int d = 0; d < values.length; d++) {
            values[d] -= mean;
        }
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
