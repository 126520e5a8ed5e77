package corewright.repair.pattern;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Distance inside a cavity, counted in shares of the reach: Dijkstra over the cavity's 16 steps.
 *
 * <p>A step of length s costs {@code s max(1/R_hole, mean of 1/R over the step's ends)}: most pressure is lost close to
 * the hole, so the gap at the hole limits the whole way, and a thin place on the way limits it further. A cell is covered
 * where the cost is at most 1.
 *
 * <p>The 16 steps make a straight way up to 2.7 per cent too long. Where a way is no longer than the shortest in the open,
 * nothing stood in it, and its cost is put right by straight length over stepped length; ways round corners keep theirs,
 * so errors are on the safe side.
 */
public final class Travel {
    private final Cavity cavity;
    private final double[] slowness;
    /** Longest stepped over straight length in the open. */
    private static final double WORST_STEPPING = 1.0275;

    private final double[] cost;
    /** Length of the way, millimetres. */
    private final double[] way;

    private final int[] owner;
    private final double[] stepMm = new double[Cavity.STEPS.length];
    private final int[] offset = new int[Cavity.STEPS.length];
    /** By source: cells within one reach of it and that reach, once they were asked for; patterns come back to the same places often. */
    private final int[] @Nullable [] covered;

    private final double[] coveredMm;
    private final int[] touched;
    private int touchedCount;

    private double[] heapCost = new double[1024];
    private int[] heapCell = new int[1024];
    private int heapSize;

    /**
     * @param reachMm reach by the gap of each cell, length of the cavity's arrays
     */
    public Travel(Cavity cavity, double[] reachMm) {
        this.cavity = cavity;
        slowness = new double[cavity.size()];
        for (int c : cavity.cells) {
            slowness[c] = 1 / reachMm[c];
        }
        cost = new double[cavity.size()];
        way = new double[cavity.size()];
        owner = new int[cavity.size()];
        touched = new int[cavity.size()];
        covered = new int[cavity.size()][];
        coveredMm = new double[cavity.size()];
        Arrays.fill(cost, Double.POSITIVE_INFINITY);
        Arrays.fill(owner, -1);
        for (int k = 0; k < stepMm.length; k++) {
            stepMm[k] = cavity.stepMm(k);
            offset[k] = cavity.stepOffset(k);
        }
    }

    /** The cells within one reach of a source, in the order they are reached; not to be changed. */
    int[] coveredFrom(int source, double reachMm) {
        int[] known = covered[source];
        if (known == null || coveredMm[source] != reachMm) {
            known = within(source, reachMm);
            covered[source] = known;
            coveredMm[source] = reachMm;
        }
        return known;
    }

    private int[] within(int source, double reachMm) {
        int[] settled = settle(source, reachMm);
        int n = 0;
        for (int cell : settled) {
            if (straightened(source, cell) <= 1 + 1e-12) {
                settled[n++] = cell;
            }
        }
        return Arrays.copyOf(settled, n);
    }

    private int[] settle(int source, double reachMm) {
        clear();
        start(source, 0);
        double[] inverse = {1 / reachMm};
        int[] settled = new int[256];
        int n = 0;
        while (heapSize > 0) {
            double key = heapCost[0];
            int cell = pop();
            if (key > cost[cell]) {
                continue;
            }
            if (n == settled.length) {
                settled = Arrays.copyOf(settled, 2 * n);
            }
            settled[n++] = cell;
            relax(cell, inverse, WORST_STEPPING);
        }
        return Arrays.copyOf(settled, n);
    }

    /** Cost of a cell that the last run reached from this source. */
    private double straightened(int source, int cell) {
        int rows = Math.abs(cell / cavity.columns - source / cavity.columns);
        int columns = Math.abs(cell % cavity.columns - source % cavity.columns);
        double stepped = cavity.cell * stepped(Math.max(rows, columns), Math.min(rows, columns));
        boolean open = stepped > 0 && way[cell] <= stepped * (1 + 1e-9);
        return open ? cost[cell] * cavity.cell * Math.hypot(rows, columns) / stepped : cost[cell];
    }

    /** Shortest stepped length in the open, cells: rook and knight, or knight and bishop steps. */
    private static double stepped(int longer, int shorter) {
        return 2 * shorter <= longer
                ? shorter * Math.sqrt(5) + (longer - 2 * shorter)
                : (longer - shorter) * Math.sqrt(5) + (2 * shorter - longer) * Math.sqrt(2);
    }

    /** Distance of every cell from the nearest source, and which source that is; infinite and -1 where none leads. */
    public Field from(int[] sources, double[] reachMm) {
        clear();
        double[] inverse = new double[sources.length];
        for (int s = 0; s < sources.length; s++) {
            inverse[s] = 1 / reachMm[s];
            start(sources[s], s);
        }
        while (heapSize > 0) {
            double key = heapCost[0];
            int cell = pop();
            if (key <= cost[cell]) {
                relax(cell, inverse, Double.POSITIVE_INFINITY);
            }
        }
        Field field = new Field(cost.clone(), owner.clone());
        for (int s = 0; s < sources.length; s++) {
            for (int cell : settle(sources[s], reachMm[s])) {
                double straight = straightened(sources[s], cell);
                if (straight < field.cost[cell]) {
                    field.cost[cell] = straight;
                    field.owner[cell] = s;
                }
            }
        }
        return field;
    }

    /** What {@link #from} found, by flat index. */
    public static final class Field {
        public final double[] cost;
        public final int[] owner;

        Field(double[] cost, int[] owner) {
            this.cost = cost;
            this.owner = owner;
        }
    }

    private void clear() {
        for (int i = 0; i < touchedCount; i++) {
            cost[touched[i]] = Double.POSITIVE_INFINITY;
            owner[touched[i]] = -1;
        }
        touchedCount = 0;
        heapSize = 0;
    }

    private void start(int source, int number) {
        if (cost[source] > 0) {
            reach(source, 0, 0, number);
        }
    }

    private void reach(int cell, double at, double lengthMm, int by) {
        if (owner[cell] < 0) {
            touched[touchedCount++] = cell;
        }
        cost[cell] = at;
        way[cell] = lengthMm;
        owner[cell] = by;
        push(at, cell);
    }

    private void relax(int cell, double[] inverse, double limit) {
        int steps = cavity.open[cell];
        double here = cost[cell];
        double gone = way[cell];
        double slow = slowness[cell];
        int by = owner[cell];
        double hole = inverse[by];
        while (steps != 0) {
            int k = Integer.numberOfTrailingZeros(steps);
            steps &= steps - 1;
            int next = cell + offset[k];
            double there = here + stepMm[k] * Math.max(hole, 0.5 * (slow + slowness[next]));
            if (there <= limit && there < cost[next] - 1e-12) {
                reach(next, there, gone + stepMm[k], by);
            }
        }
    }

    private void push(double key, int cell) {
        if (heapSize == heapCost.length) {
            heapCost = Arrays.copyOf(heapCost, 2 * heapSize);
            heapCell = Arrays.copyOf(heapCell, 2 * heapSize);
        }
        int i = heapSize++;
        while (i > 0 && heapCost[(i - 1) / 2] > key) {
            heapCost[i] = heapCost[(i - 1) / 2];
            heapCell[i] = heapCell[(i - 1) / 2];
            i = (i - 1) / 2;
        }
        heapCost[i] = key;
        heapCell[i] = cell;
    }

    private int pop() {
        int top = heapCell[0];
        double key = heapCost[--heapSize];
        int cell = heapCell[heapSize];
        int i = 0;
        while (2 * i + 1 < heapSize) {
            int child = 2 * i + 1;
            if (child + 1 < heapSize && heapCost[child + 1] < heapCost[child]) {
                child++;
            }
            if (heapCost[child] >= key) {
                break;
            }
            heapCost[i] = heapCost[child];
            heapCell[i] = heapCell[child];
            i = child;
        }
        heapCost[i] = key;
        heapCell[i] = cell;
        return top;
    }
}
