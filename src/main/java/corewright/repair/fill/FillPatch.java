package corewright.repair.fill;

import corewright.repair.mix.Curing;
import corewright.repair.pattern.Cavity;
import java.util.Arrays;

/**
 * The full cells that move together in one step, what flows between them and through the front, and how mix moves on by that.
 */
class FillPatch extends FillCells {
    private static final int FACES = 4;

    /** A full cell that holds less than this share is no longer full. */
    private static final double RUN_DRY = 0.98;

    /** By flat index, of this step. */
    double[] pressure;

    final boolean[] member;

    /** Faces of a cell's four that are shut in this step, a bit each. */
    final int[] shut;

    /** By face, four a cell: what flows out through it; and into a cell of the front by flat index. */
    private final double[] out;

    private final double[] frontFlow;

    /** By flat index: faces through which mix is still to come in this step. */
    private final int[] upstream;

    private final boolean[] done;
    private final CellQueue ready = new CellQueue();
    private final CellQueue over = new CellQueue();
    private final CellQueue front = new CellQueue();

    FillPatch(Cavity cavity, double[] heightMm, Curing curing) {
        super(cavity, heightMm, curing);
        int size = cavity.size();
        pressure = new double[size];
        member = new boolean[size];
        shut = new int[size];
        out = new double[FACES * size];
        frontFlow = new double[size];
        upstream = new int[size];
        done = new boolean[size];
    }

    /** The full cells joined to one, ascending. */
    int[] patch(int start) {
        return members(grow(start, new int[cavity.cells.length], 0));
    }

    /** All members, ascending. */
    private int[] members(int many) {
        int[] cells = new int[many];
        int n = 0;
        for (int c : cavity.cells) {
            if (member[c]) {
                cells[n++] = c;
            }
        }
        return cells;
    }

    /** All full cells in patches that have a way to go on, ascending. */
    int[] patches() {
        int[] queue = new int[cavity.cells.length];
        int n = 0;
        for (int c : cavity.cells) {
            if (full[c] && !member[c] && !set(c)) {
                int to = grow(c, queue, n);
                boolean way = false;
                for (int i = n; i < to && !way; i++) {
                    way = toFront(queue[i]) > 0;
                }
                n = way ? to : n; // a closed patch stands still; its cells stay marked until the end
            }
        }
        for (int c : cavity.cells) {
            member[c] = false;
        }
        for (int i = 0; i < n; i++) {
            member[queue[i]] = true;
        }
        return members(n);
    }

    private int grow(int start, int[] queue, int from) {
        int n = from;
        queue[n++] = start;
        member[start] = true;
        for (int i = from; i < n; i++) {
            for (int k = 0; k < 4; k++) {
                int next = queue[i] + steps[k];
                if (full[next] && !member[next] && between(queue[i], k) > 0 && !set(next)) {
                    member[next] = true;
                    queue[n++] = next;
                }
            }
        }
        return n;
    }

    /** Conductance from a cell to the front. */
    private double toFront(int cell) {
        double sum = 0;
        for (int k = 0; k < 4; k++) {
            int next = cell + steps[k];
            sum += between(cell, k) > 0 && takes(next) ? toFront(cell, k, next) : 0;
        }
        return sum;
    }

    /** What flows through the faces at the pressures of the step. */
    void flows(int[] patch) {
        front.clear();
        for (int c : patch) {
            done[c] = false;
            for (int k = 0; k < FACES; k++) {
                int next = c + steps[k];
                double flow = outflow(c, k, next);
                out[FACES * c + k] = flow;
                if (flow > 0 && member[next]) {
                    upstream[next]++;
                } else if (flow > 0) {
                    if (frontFlow[next] == 0) {
                        front.add(next);
                    }
                    frontFlow[next] += flow;
                }
            }
        }
    }

    private double outflow(int c, int k, int next) {
        double t = between(c, k);
        if (t == 0) {
            return 0;
        }
        if (member[next]) {
            return Math.max(0, t * (pressure[c] - pressure[next] - lift(c, next)));
        }
        return takes(next) && (shut[c] >> k & 1) == 0
                ? Math.max(0, toFront(c, k, next) * (pressure[c] - gas.pressurePa[next] - lift(c, next)))
                : 0;
    }

    /** The time in which a share of the front's cells would fill. */
    double frontTime(double share) {
        double[] times = new double[front.size()];
        for (int i = 0; i < times.length; i++) {
            int c = front.at(i);
            times[i] = room(c) * grown[c] / frontFlow[c];
        }
        Arrays.sort(times);
        return times.length == 0 ? Double.POSITIVE_INFINITY : times[(int) (share * (times.length - 1))];
    }

    /**
     * Mix moves on downstream, cell after cell: what is in a full cell mixes with what comes, and of what is more than the
     * cell holds as much goes on as its faces let through. So nothing is lost however long the step.
     */
    void move(int[] patch, double seconds) {
        ready.clear();
        for (int c : patch) {
            if (upstream[c] == 0) {
                ready.add(c);
            }
        }
        for (int i = 0; i < patch.length || !ready.isEmpty(); ) {
            int c = ready.isEmpty()
                    ? patch[i++]
                    : ready.poll(); // the former where mixes of unlike weight turn in a circle
            if (!done[c]) {
                done[c] = true;
                passDown(c, seconds);
            }
        }
        passOn(over);
    }

    /** Nothing of a step is left for the next. */
    void forget(int[] patch) {
        for (int c : patch) {
            member[c] = false;
            shut[c] = 0;
            upstream[c] = 0;
        }
        for (int i = 0; i < front.size(); i++) {
            frontFlow[front.at(i)] = 0;
        }
        front.clear();
    }

    private void passDown(int c, double seconds) {
        double sum = 0;
        for (int k = 0; k < FACES; k++) {
            sum += out[FACES * c + k];
        }
        double surplus = Math.min(Math.max(0, -room(c)), sum * seconds / grown[c]);
        full[c] &= liquid[c] * grown[c] >= RUN_DRY * volume[c];
        liquid[c] -= sum > 0 ? surplus : 0;
        for (int k = 0; k < FACES; k++) {
            int next = c + steps[k];
            double share = out[FACES * c + k] / sum;
            if (share > 0) {
                add(next, surplus * share, bornS(c));
                owner[next] = owner[next] < 0 ? owner[c] : owner[next];
                if (brims(next) && (!full[next] || !member[next])) {
                    fill(next);
                    over.add(next);
                }
                if (member[next] && --upstream[next] == 0) {
                    ready.add(next);
                }
            }
        }
    }
}
