package corewright.repair.fill;

import corewright.repair.mix.Curing;
import corewright.repair.pattern.Cavity;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;

/**
 * Quasi-static filling of a cavity on its raster: full cells carry the pressure field, the front moves with the flow
 * through its faces, air follows {@link GasPockets}.
 *
 * <p>Each step: (1) areas of air and their pressures; (2) pressure in the full cells joined to the source, with gravity and the viscosity of each
 * cell's mix;
 * (3) the time in which a share of the front's cells would fill; (4) volumes by the flows, what is too much for a cell
 * passed on at once to neighbours with room. Cells do not run dry again except by what flows on from them. A hole in a cell is
 * tied to the cell's pressure by the radial law from 0.2 cells (Peaceman, SPE J. 18 (1978) 183).
 */
final class FillFlow extends FillCells {
    private static final double TOLERANCE = 1e-4;
    private static final double PEACEMAN = 0.2;

    /** A full cell that holds less than this share is no longer full. */
    private static final double RUN_DRY = 0.98;

    /** Share of a mix that is gas however young. */
    private static final double LEAST_GAS = 0.002;

    /** No step is shorter, seconds: what is too much for the front passes on. */
    private static final double SHORTEST_S = 1e-3;

    /** Less of a cell is rounding. */
    private static final double SMALL = 1e-6;

    /** Rounds in which faces of the front are shut; more change nothing that shows. */
    private static final int SHUTTINGS = 8;

    private final Curing curing;
    private double risenUntilS;

    /** Share of the front's cells that fill in a step. */
    private final double frontShare;

    private final Pushing pushing;

    /** Of this step; while mix is pushed in, and while it rises. */
    private double[] pressure;

    private final double[] pushed;
    private final double[] risen;
    private final double[] extra;
    private final double[] source;
    private final double[] frontFlow;
    private final boolean[] member;

    /** Faces of a cell's four that are shut in this step, a bit each. */
    private final int[] shut;

    FillFlow(Cavity cavity, double[] heightMm, Curing curing, double frontShare) {
        super(cavity, heightMm, curing);
        this.curing = curing;
        this.frontShare = frontShare;
        int size = cavity.size();
        pushing = new Pushing(field, TOLERANCE);
        pushed = new double[size];
        risen = new double[size];
        pressure = pushed;
        extra = new double[size];
        source = new double[size];
        frontFlow = new double[size];
        member = new boolean[size];
        shut = new int[size];
    }

    /**
     * What a tool can do, and when its mix was mixed.
     *
     * @param holeRadiusMm of the hole
     * @param nozzle what stands before the hole: pressure over viscosity and flow, 1/mm3
     */
    record Tool(double pressurePa, double rateMm3S, double holeRadiusMm, double nozzle, double mixedAtS) {}

    /** A step of time and what went in. */
    record Step(double seconds, double intoMm3) {
        static final Step BLOCKED = new Step(0, 0);
    }

    /** Pushes mix through a hole: one step, at the tool's rate or its pressure, whichever is less; the clock goes on. */
    Step inject(int hole, Tool tool, double mostMm3, double mostS) {
        if (set(hole)) {
            return Step.BLOCKED;
        }
        begin(pushed);
        int[] patch = patch(hole);
        double rate = 0;
        for (int round = 0; round == 0 || round < SHUTTINGS && shutBackward(patch); round++) {
            reset(patch);
            if (viscous(patch) == 0) {
                release(patch);
                return Step.BLOCKED;
            }
            rate = rate(hole, patch, tool);
        }
        Step step = Step.BLOCKED;
        if (rate > 0) {
            double dt = Math.min(Math.min(mostS, mostMm3 / rate), Math.max(SHORTEST_S, frontTime(patch)));
            add(hole, rate * dt, tool.mixedAtS);
            move(patch, dt);
            until(nowS + dt);
            step = new Step(dt, rate * dt);
        }
        release(patch);
        return step;
    }

    private void begin(double[] field) {
        pressure = field;
        air();
        conduct();
    }

    /** What goes in at the tool's rate, or at its pressure where that is less; the field then holds that state. */
    private double rate(int hole, int[] patch, Tool tool) {
        double radial =
                6 / Math.PI / Math.pow(cavity.gapMm[hole], 3) * Math.log(PEACEMAN * cavity.cell / tool.holeRadiusMm);
        double well = curing.viscosity(nowS - tool.mixedAtS) * (radial + tool.nozzle);
        return pushing.rate(hole, patch, tool, well, extra, source, pressure);
    }

    /** The time until which all growth has found its room. */
    double risenUntilS() {
        return risenUntilS;
    }

    /** The clock goes on; what has grown since the last rise finds its room, in one step. */
    void rise(double untilS) {
        double seconds = Math.max(1e-3, untilS - risenUntilS);
        risenUntilS = untilS;
        if (Arrays.stream(cavity.cells).noneMatch(c -> stirs(c, untilS))) {
            until(untilS);
            return;
        }
        begin(risen);
        int[] patch = patches();
        for (int round = 0; round == 0 || round < SHUTTINGS && shutBackward(patch); round++) {
            reset(patch);
            viscous(patch);
            for (int c : patch) {
                source[c] += (growth(c, untilS) + Math.max(0, -room(c) * grown[c])) / seconds;
                double gas = Math.max(LEAST_GAS, 1 - 1 / grown[c]); // what cannot go on is squeezed in the bubbles
                extra[c] += volume[c] * gas / (GasPockets.ATMOSPHERE_PA * seconds);
            }
            field.solve(patch, extra, source, pressure, TOLERANCE);
        }
        until(untilS);
        move(patch, seconds);
        release(patch);
    }

    private boolean stirs(int c, double untilS) {
        if (set(c)) {
            return false;
        }
        double more = growth(c, untilS) + (full[c] ? Math.max(0, -room(c)) : 0);
        return more > SMALL * volume[c];
    }

    /** The full cells joined to one, ascending. */
    private int[] patch(int start) {
        int[] queue = new int[cavity.cells.length];
        int n = grow(start, queue, 0);
        int[] cells = Arrays.copyOf(queue, n);
        Arrays.sort(cells);
        return cells;
    }

    /** All full cells in patches that have a way to go on, ascending. */
    private int[] patches() {
        int[] queue = new int[cavity.cells.length];
        int n = 0;
        for (int c : cavity.cells) {
            if (full[c] && !member[c] && !set(c)) {
                int to = grow(c, queue, n);
                boolean way = false;
                for (int i = n; i < to && !way; i++) {
                    way = front(queue[i]) > 0;
                }
                n = way ? to : n; // a closed patch stands still; its cells stay marked until the end
            }
        }
        int[] cells = Arrays.copyOf(queue, n);
        for (int c : cavity.cells) {
            member[c] = false;
        }
        for (int c : cells) {
            member[c] = true;
        }
        Arrays.sort(cells);
        return cells;
    }

    private int grow(int start, int[] queue, int from) {
        int n = from;
        queue[n++] = start;
        member[start] = true;
        for (int i = from; i < n; i++) {
            for (int k = 0; k < 4; k++) {
                int next = queue[i] + cavity.stepOffset(k);
                if (full[next] && !member[next] && between(queue[i], k) > 0 && !set(next)) {
                    member[next] = true;
                    queue[n++] = next;
                }
            }
        }
        return n;
    }

    private void reset(int[] patch) {
        for (int c : patch) {
            extra[c] = 0;
            source[c] = 0;
        }
    }

    private void release(int[] patch) {
        reset(patch);
        for (int c : patch) {
            member[c] = false;
            shut[c] = 0;
        }
    }

    /**
     * Shuts the front's faces at which squeezed air would push the mix back: the front stands there, and what the patch
     * gains goes elsewhere. Whether any was open.
     */
    private boolean shutBackward(int[] patch) {
        boolean any = false;
        for (int c : patch) {
            for (int k = 0; k < 4; k++) {
                int next = c + cavity.stepOffset(k);
                boolean open = between(c, k) > 0 && !member[next] && takes(next) && (shut[c] >> k & 1) == 0;
                if (open && pressure[c] - gas.pressurePa[next] - lift(c, next) < 0) {
                    shut[c] |= 1 << k;
                    any = true;
                }
            }
        }
        return any;
    }

    private double front(int cell) {
        double sum = 0;
        for (int k = 0; k < 4; k++) {
            int next = cell + cavity.stepOffset(k);
            sum += between(cell, k) > 0 && takes(next) ? toFront(cell, k, next) : 0;
        }
        return sum;
    }

    /** Front and gravity into the equations; the sum of the front's conductances. */
    private double viscous(int[] patch) {
        double whole = 0;
        for (int c : patch) {
            for (int k = 0; k < 4; k++) {
                double t = between(c, k);
                int next = c + cavity.stepOffset(k);
                if (t == 0) {
                    continue;
                }
                double lift = lift(c, next);
                if (member[next]) {
                    source[c] += t * lift;
                } else if (takes(next) && (shut[c] >> k & 1) == 0) {
                    double f = toFront(c, k, next);
                    extra[c] += f;
                    source[c] += f * (gas.pressurePa[next] + lift);
                    whole += f;
                }
            }
        }
        return whole;
    }

    private double frontTime(int[] patch) {
        Arrays.fill(frontFlow, 0);
        double[] times = new double[4 * patch.length];
        int n = 0;
        int[] cells = new int[times.length];
        for (int c : patch) {
            for (int k = 0; k < 4; k++) {
                int next = c + cavity.stepOffset(k);
                double out = outflow(c, k, next);
                if (out > 0 && !member[next]) {
                    if (frontFlow[next] == 0) {
                        cells[n++] = next;
                    }
                    frontFlow[next] += out;
                }
            }
        }
        for (int i = 0; i < n; i++) {
            times[i] = room(cells[i]) * grown[cells[i]] / frontFlow[cells[i]];
        }
        Arrays.sort(times, 0, n);
        return n == 0 ? Double.POSITIVE_INFINITY : times[(int) (frontShare * (n - 1))];
    }

    private double outflow(int c, int k, int next) {
        double t = between(c, k);
        if (t == 0) {
            return 0;
        }
        if (member[next]) {
            return t * (pressure[c] - pressure[next] - lift(c, next));
        }
        return takes(next) && (shut[c] >> k & 1) == 0
                ? Math.max(0, toFront(c, k, next) * (pressure[c] - gas.pressurePa[next] - lift(c, next)))
                : 0;
    }

    /**
     * Mix moves on downstream, cell after cell: what is in a full cell mixes with what comes, and of what is more than the
     * cell holds as much goes on as its faces let through. So nothing is lost however long the step.
     */
    private void move(int[] patch, double seconds) {
        int[] upstream = new int[cavity.size()];
        for (int c : patch) {
            for (int k = 0; k < 4; k++) {
                int next = c + cavity.stepOffset(k);
                upstream[next] += outflow(c, k, next) > 0 ? 1 : 0;
            }
        }
        Deque<Integer> ready = new ArrayDeque<>();
        for (int c : patch) {
            if (upstream[c] == 0) {
                ready.add(c);
            }
        }
        boolean[] done = new boolean[cavity.size()];
        Deque<Integer> over = new ArrayDeque<>();
        for (int i = 0; i < patch.length || !ready.isEmpty(); ) {
            int c = ready.isEmpty()
                    ? patch[i++]
                    : ready.poll(); // the former where mixes of unlike weight turn in a circle
            if (!done[c]) {
                done[c] = true;
                passDown(c, seconds, upstream, ready, over);
            }
        }
        passOn(over);
    }

    private void passDown(int c, double seconds, int[] upstream, Deque<Integer> ready, Deque<Integer> over) {
        double[] out = new double[4];
        double sum = 0;
        for (int k = 0; k < 4; k++) {
            out[k] = Math.max(0, outflow(c, k, c + cavity.stepOffset(k)));
            sum += out[k];
        }
        double surplus = Math.min(Math.max(0, -room(c)), sum * seconds / grown[c]);
        full[c] &= liquid[c] * grown[c] >= RUN_DRY * volume[c];
        liquid[c] -= sum > 0 ? surplus : 0;
        for (int k = 0; k < 4; k++) {
            int next = c + cavity.stepOffset(k);
            if (out[k] > 0) {
                add(next, surplus * out[k] / sum, bornS(c));
                owner[next] = owner[next] < 0 ? owner[c] : owner[next];
                if (!full[next] && brims(next)) {
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
