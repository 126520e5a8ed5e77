package corewright.damage;

import corewright.field.Draws;
import corewright.field.LatentField;
import corewright.field.Normal;
import corewright.field.Places;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.IntPredicate;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Equally likely extents of the damage under one bay: in each draw a cell is damaged where its water or its looseness is
 * drawn above the threshold, so that the area is that of the union. Departures from the mean are drawn on a coarse
 * lattice, as for {@link VoidDraws}; each cell keeps its own mean and standard deviation. The part of looseness that moves
 * as a whole is the very number that moves the loose outline when volumes are drawn.
 */
final class AreaDraws {
    /** More nodes cost the third power in time. */
    private static final int MOST_NODES = 350;

    /** Cells surer than this, either way, are not drawn. */
    private static final double SURE = 0.002;

    /**
     * Share of each field's variance that moves all of a bay at once: means, ranges and scatter are taken as known once
     * fitted, and where they are wrong, they are wrong all over. Chosen on simulated decks; see docs/damage.md.
     */
    private static final double TOGETHER = 0.05;

    private final BayFields fields;
    private final double cellMm2;
    private final int count;
    private final int[] slots;
    private final Lattice lattice;
    private final double sureMm2;

    private AreaDraws(BayFields fields, Frame frame, int count, IntPredicate open) {
        this.fields = fields;
        this.count = count;
        cellMm2 = frame.cellMm2();
        slots = IntStream.range(0, fields.cells.length)
                .filter(i -> fields.inside[i] && open.test(i))
                .toArray();
        lattice = new Lattice(fields, frame, slots, MOST_NODES);
        sureMm2 = cellMm2
                * IntStream.range(0, fields.cells.length)
                        .filter(i -> fields.inside[i] && !open.test(i) && damaged(fields, i) > 0.5)
                        .count();
    }

    /** Area by draw, square millimetres. */
    static List<Double> of(BayFields fields, Frame frame, VoidDraws voids, long seed) {
        AreaDraws areas = new AreaDraws(fields, frame, voids.count(), i -> open(damaged(fields, i)));
        return areas.draw(voids, new Random(seed)).boxed().toList();
    }

    /** Condition by draw and cell of the bay, as {@link Condition#ordinal}. */
    static byte[][] conditions(BayFields fields, Frame frame, VoidDraws voids, long seed) {
        AreaDraws areas = new AreaDraws(
                fields,
                frame,
                voids.count(),
                i -> open(fields.pWet[i]) || open(fields.pLoose[i]) || open(fields.pVoid[i]));
        return areas.conditions(voids, new Random(seed));
    }

    /**
     * A cell is empty where its looseness is drawn so high that it is as seldom as {@code pVoid} says, so that void lies within
     * loose in every draw and its share of the draws is the map's.
     */
    private byte[][] conditions(VoidDraws voids, Random random) {
        byte[][] all = new byte[count][fields.cells.length];
        for (int i = 0; i < fields.cells.length; i++) {
            byte sure = condition(fields.pWet[i] > 0.5, fields.pLoose[i] > 0.5, fields.pVoid[i] > 0.5);
            for (byte[] draw : all) {
                draw[i] = sure;
            }
        }
        if (lattice.nodes > 0) {
            double[][] wet = departures(fields.wet, lattice.places(), random);
            double[][] loose = departures(fields.loose, lattice.places(fields::looseTerm1, fields::looseTerm2), random);
            double[] emptyFrom = Arrays.stream(slots)
                    .mapToDouble(i -> -quantile(fields.pVoid[i]))
                    .toArray();
            double own = Math.sqrt(1 - TOGETHER);
            double common = Math.sqrt(TOGETHER);
            for (int d = 0; d < count; d++) {
                double wetStep = common * random.nextGaussian();
                double looseStep = common * -quantile(voids.uniform(d));
                for (int k = 0; k < slots.length; k++) {
                    double deviations = own * loose[d][lattice.nodeOf[k]] + looseStep;
                    all[d][slots[k]] = condition(
                            fields.waterAt(slots[k], own * wet[d][lattice.nodeOf[k]] + wetStep) > 0,
                            fields.loosenessAt(slots[k], deviations) > 0,
                            deviations > emptyFrom[k]);
                }
            }
        }
        return all;
    }

    private static byte condition(boolean wet, boolean loose, boolean empty) {
        Condition condition = empty
                ? Condition.VOID
                : loose
                        ? (wet ? Condition.WET_DELAMINATED : Condition.DELAMINATED)
                        : wet ? Condition.WET : Condition.SOUND;
        return (byte) condition.ordinal();
    }

    private static double damaged(BayFields fields, int i) {
        return Math.max(fields.pWet[i], fields.pLoose[i]);
    }

    private static boolean open(double p) {
        return p > SURE && p < 1 - SURE;
    }

    private DoubleStream draw(VoidDraws voids, Random random) {
        double[] area = new double[count];
        Arrays.fill(area, sureMm2);
        if (lattice.nodes > 0) {
            double[][] wet = departures(fields.wet, lattice.places(), random);
            double[][] loose = departures(fields.loose, lattice.places(fields::looseTerm1, fields::looseTerm2), random);
            double own = Math.sqrt(1 - TOGETHER);
            double common = Math.sqrt(TOGETHER);
            for (int d = 0; d < count; d++) {
                double wetStep = common * random.nextGaussian();
                double looseStep = common * -quantile(voids.uniform(d));
                for (int k = 0; k < slots.length; k++) {
                    boolean damaged = fields.waterAt(slots[k], own * wet[d][lattice.nodeOf[k]] + wetStep) > 0
                            || fields.loosenessAt(slots[k], own * loose[d][lattice.nodeOf[k]] + looseStep) > 0;
                    area[d] += damaged ? cellMm2 : 0;
                }
            }
        }
        return Arrays.stream(area);
    }

    /** Departures from the mean in standard deviations, draw by node. */
    private double[][] departures(LatentField field, Places at, Random random) {
        Draws draws = field.draws(at, count, 1, random);
        LatentField.Estimate estimate = field.at(at);
        double[][] z = new double[count][lattice.nodes];
        for (int d = 0; d < count; d++) {
            for (int node = 0; node < lattice.nodes; node++) {
                double sd = estimate.sd(node);
                z[d][node] = sd > 0 ? (draws.at(d, node) - estimate.mean(node)) / sd : 0;
            }
        }
        return z;
    }

    /** The standard normal quantile, by halving: to 1e-9, more than a draw can use. */
    private static double quantile(double p) {
        double low = -8;
        double high = 8;
        while (high - low > 1e-9) {
            double middle = (low + high) / 2;
            if (Normal.below(middle) < p) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
