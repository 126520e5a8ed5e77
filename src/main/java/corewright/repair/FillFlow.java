package corewright.repair;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;

/**
 * Quasi-static filling of a cavity on its raster: full cells carry the pressure field, the front moves with the flow
 * through its faces, air follows {@link GasPockets}.
 *
 * <p>Each step: (1) areas of air and their pressures; (2) pressure in the full cells joined to the source, with gravity;
 * (3) the time in which a share of the front's cells would fill; (4) volumes by the flows, what is too much for a cell
 * passed on at once to neighbours with room. Cells do not run dry again except by what flows on from them. A hole in a cell is
 * tied to the cell's pressure by the radial law from 0.2 cells (Peaceman, SPE J. 18 (1978) 183).
 */
final class FillFlow extends FillCells {
    private static final double TOLERANCE = 1e-4;
    private static final double PEACEMAN = 0.2;

    /** A full cell that holds less than this share is no longer full. */
    private static final double RUN_DRY = 0.98;

    /** Share of the front's cells that fill in a step. */
    private final double frontShare;

    private final double[] pressure;
    private final double[] extra;
    private final double[] source;
    private final double[] flow;
    private final boolean[] member;

    FillFlow(Cavity cavity, double[] heightMm, double densityKgM3, double frontShare) {
        super(cavity, heightMm, densityKgM3);
        this.frontShare = frontShare;
        int size = cavity.size();
        pressure = new double[size];
        extra = new double[size];
        source = new double[size];
        flow = new double[size];
        member = new boolean[size];
    }

    /**
     * What a tool can do and the mix's state.
     *
     * @param viscosityPaS now
     * @param holeRadiusMm of the hole
     */
    record Tool(double pressurePa, double rateMm3S, double viscosityPaS, double holeRadiusMm) {}

    /** A step of time and what went in. */
    record Step(double seconds, double intoMm3) {
        static final Step BLOCKED = new Step(0, 0);
    }

    /** Fills the hole's own cell at once; what of it is then left to place. */
    double begin(int cell, double liquidMm3, int number) {
        double room = Math.max(0, volume[cell] / expansion - liquid[cell]);
        double taken = Math.min(room, liquidMm3);
        liquid[cell] += taken;
        owner[cell] = owner[cell] < 0 ? number : owner[cell];
        if (taken == room) {
            fill(cell);
        }
        return liquidMm3 - taken;
    }

    /** Pushes mix through a hole: one step, at the tool's rate or its pressure, whichever is less. */
    Step inject(int hole, Tool tool, double mostMm3, double mostS) {
        air();
        int[] patch = patch(hole);
        double share = viscous(tool.viscosityPaS, patch);
        if (share == 0) {
            release(patch);
            return Step.BLOCKED;
        }
        double mu = tool.viscosityPaS;
        double well = 6
                * mu
                / Math.PI
                / Math.pow(cavity.gapMm[hole], 3)
                * Math.log(PEACEMAN * cavity.cell / tool.holeRadiusMm);
        double rate = tool.rateMm3S;
        if (Double.isFinite(rate)) {
            source[hole] += rate * mu;
            field.solve(patch, extra, source, pressure, TOLERANCE);
        }
        if (!Double.isFinite(rate) || pressure[hole] + well * rate > tool.pressurePa) {
            source[hole] -= Double.isFinite(rate) ? rate * mu : 0;
            rate = atPressure(hole, patch, mu, well, tool.pressurePa);
        }
        Step step = Step.BLOCKED;
        if (rate > 0) {
            double dt = Math.min(mostS, Math.min(mostMm3 / rate, frontTime(patch, mu)));
            liquid[hole] += rate * dt / expansion;
            move(patch, mu, dt);
            step = new Step(dt, rate * dt);
        }
        release(patch);
        return step;
    }

    /** The rate at which the hole's pressure is the tool's; the field then holds that state. */
    private double atPressure(int hole, int[] patch, double mu, double well, double toolPa) {
        double unit = 1000; // mm3/s, any
        for (int c : patch) {
            pressure[c] = 0;
        }
        field.solve(patch, extra, source, pressure, TOLERANCE);
        double still = pressure[hole];
        double[] base = new double[patch.length];
        for (int i = 0; i < patch.length; i++) {
            base[i] = pressure[patch[i]];
        }
        source[hole] += unit * mu;
        field.solve(patch, extra, source, pressure, TOLERANCE);
        double perUnit = pressure[hole] - still + well * unit;
        double factor = Math.max(0, (toolPa - still) / perUnit);
        for (int i = 0; i < patch.length; i++) {
            pressure[patch[i]] = base[i] + factor * (pressure[patch[i]] - base[i]);
        }
        return factor * unit;
    }

    /** One step of the rise: the mix everywhere grows from one expansion to the next in {@code seconds}. */
    void rise(double next, double seconds, double viscosityPaS) {
        double growth = (next - expansion) / seconds;
        air();
        int[] patch = patches();
        viscous(viscosityPaS, patch);
        for (int c : patch) {
            double surplus = Math.max(0, liquid[c] * expansion - volume[c]) / seconds;
            source[c] += (liquid[c] * growth + surplus) * viscosityPaS;
        }
        field.solve(patch, extra, source, pressure, TOLERANCE);
        expansion = next;
        move(patch, viscosityPaS, seconds);
        release(patch);
        for (int c : cavity.cells) {
            if (!full[c] && liquid[c] * expansion >= volume[c]) {
                fill(c);
            }
        }
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
            if (full[c] && !member[c]) {
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
                if (full[next] && !member[next] && between(queue[i], k) > 0) {
                    member[next] = true;
                    queue[n++] = next;
                }
            }
        }
        return n;
    }

    private void release(int[] patch) {
        for (int c : patch) {
            member[c] = false;
            extra[c] = 0;
            source[c] = 0;
        }
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
    private double viscous(double mu, int[] patch) {
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
                } else if (takes(next)) {
                    double f = toFront(c, k, next);
                    extra[c] += f;
                    source[c] += f * (gas.pressurePa[next] + lift);
                    whole += f;
                }
            }
        }
        return mu > 0 ? whole : 0;
    }

    private double frontTime(int[] patch, double mu) {
        Arrays.fill(flow, 0);
        double[] times = new double[4 * patch.length];
        int n = 0;
        int[] cells = new int[times.length];
        for (int c : patch) {
            for (int k = 0; k < 4; k++) {
                int next = c + cavity.stepOffset(k);
                double into = outflow(c, k, next, mu);
                if (into > 0 && !member[next]) {
                    if (flow[next] == 0) {
                        cells[n++] = next;
                    }
                    flow[next] += into;
                }
            }
        }
        for (int i = 0; i < n; i++) {
            times[i] = (volume[cells[i]] - liquid[cells[i]] * expansion) / flow[cells[i]];
        }
        Arrays.sort(times, 0, n);
        return n == 0 ? Double.POSITIVE_INFINITY : Math.max(1e-6, times[(int) (frontShare * (n - 1))]);
    }

    private double outflow(int c, int k, int next, double mu) {
        double t = between(c, k);
        if (t == 0) {
            return 0;
        }
        if (member[next]) {
            return t * (pressure[c] - pressure[next] - lift(c, next)) / mu;
        }
        return takes(next)
                ? Math.max(0, toFront(c, k, next) * (pressure[c] - gas.pressurePa[next] - lift(c, next)) / mu)
                : 0;
    }

    private void move(int[] patch, double mu, double seconds) {
        Arrays.fill(flow, 0);
        for (int c : patch) {
            for (int k = 0; k < 4; k++) {
                int next = c + cavity.stepOffset(k);
                double out = outflow(c, k, next, mu) * seconds / expansion;
                flow[c] -= out;
                if (!member[next] && out > 0) {
                    flow[next] += out;
                    owner[next] = owner[next] < 0 ? owner[c] : owner[next];
                }
            }
        }
        Deque<Integer> over = new ArrayDeque<>();
        for (int c : cavity.cells) {
            if (flow[c] == 0) {
                continue;
            }
            liquid[c] = Math.max(0, liquid[c] + flow[c]);
            full[c] &= liquid[c] * expansion >= RUN_DRY * volume[c];
            if (!full[c] && liquid[c] * expansion >= volume[c] * (1 - 1e-6)) {
                fill(c);
                over.add(c);
            }
        }
        passOn(over);
    }
}
