package corewright.repair.fill;

import corewright.repair.mix.Curing;
import corewright.repair.pattern.Cavity;

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
final class FillFlow extends FillPatch {
    private static final double TOLERANCE = 1e-4;
    private static final double PEACEMAN = 0.2;

    /** Share of a mix that is gas however young. */
    private static final double LEAST_GAS = 0.002;

    /** No step is shorter, seconds: what is too much for the front passes on. */
    private static final double SHORTEST_S = 1e-3;

    /** Less of a cell is rounding. */
    private static final double SMALL = 1e-6;

    /** So much of a cell may wait in it for the next rise: what a solution leaves over and above its tolerance. */
    private static final double WAITS = 0.01;

    /** Rounds in which faces of the front are shut; more change nothing that shows. */
    private static final int SHUTTINGS = 8;

    private final Curing curing;
    private double risenUntilS;

    /** Share of the front's cells that fill in a step. */
    private final double frontShare;

    private final Pushing pushing;

    /** Pressures while mix is pushed in, and while it rises. */
    private final double[] pushed;

    private final double[] risen;
    private final double[] extra;
    private final double[] source;

    /** In full cells, by the growth of a rise, cubic millimetres a second. */
    private final double[] gained;

    FillFlow(Cavity cavity, double[] heightMm, Curing curing, double frontShare) {
        super(cavity, heightMm, curing);
        this.curing = curing;
        this.frontShare = frontShare;
        int size = cavity.size();
        pushing = new Pushing(field, TOLERANCE);
        pushed = new double[size];
        risen = new double[size];
        extra = new double[size];
        source = new double[size];
        gained = new double[size];
    }

    /** A step of time and what went in. */
    record Step(double seconds, double intoMm3) {
        static final Step BLOCKED = new Step(0, 0);
    }

    /** Pushes mix through a hole: one step, at the tool's rate or its pressure, whichever is less; the clock goes on. */
    Step inject(int hole, Pushing.Tool tool, double mostMm3, double mostS) {
        if (set(hole)) {
            return Step.BLOCKED;
        }
        begin(pushed);
        int[] patch = patch(hole);
        double rate = 0;
        for (int round = 0; round == 0 || round < SHUTTINGS && shutBackward(patch, false); round++) {
            reset(patch);
            if (viscous(patch) == 0) {
                release(patch);
                return Step.BLOCKED;
            }
            rate = rate(hole, patch, tool);
        }
        Step step = Step.BLOCKED;
        if (rate > 0) {
            flows(patch);
            double dt = Math.min(Math.min(mostS, mostMm3 / rate), Math.max(SHORTEST_S, frontTime(frontShare)));
            add(hole, rate * dt, tool.mixedAtS());
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
    private double rate(int hole, int[] patch, Pushing.Tool tool) {
        double radial =
                6 / Math.PI / Math.pow(cavity.gapMm[hole], 3) * Math.log(PEACEMAN * cavity.cell / tool.holeRadiusMm());
        double well = curing.viscosity(nowS - tool.mixedAtS()) * (radial + tool.nozzle());
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
        if (!stirs(untilS)) {
            until(untilS);
            return;
        }
        begin(risen);
        int[] patch = patches();
        for (int c : patch) {
            gained[c] = (growth(c, untilS) + Math.max(0, -room(c) * grown[c])) / seconds;
        }
        shutBackward(patch, false); // as the pressures of the rise before have it
        for (int round = 0; round == 0 || round < SHUTTINGS && shutBackward(patch, round == 1); round++) {
            reset(patch);
            viscous(patch);
            for (int c : patch) {
                source[c] += gained[c];
                double gas = Math.max(LEAST_GAS, 1 - 1 / grown[c]); // what cannot go on is squeezed in the bubbles
                extra[c] += volume[c] * gas / (GasPockets.ATMOSPHERE_PA * seconds);
            }
            field.solve(patch, extra, source, pressure, TOLERANCE);
        }
        flows(patch);
        until(untilS);
        move(patch, seconds);
        release(patch);
    }

    private boolean stirs(double untilS) {
        for (int c : cavity.cells) {
            double waits = full[c] ? -room(c) : 0;
            if ((growth(c, untilS) > SMALL * volume[c] || waits > WAITS * volume[c]) && !set(c)) {
                return true;
            }
        }
        return false;
    }

    private void reset(int[] patch) {
        for (int c : patch) {
            extra[c] = 0;
            source[c] = 0;
        }
    }

    private void release(int[] patch) {
        reset(patch);
        forget(patch);
    }

    /**
     * Shuts the front's faces at which squeezed air would push the mix back: the front stands there, and what the patch
     * gains goes elsewhere. Whether any changed.
     *
     * @param reopen also opens those at which it would not
     */
    private boolean shutBackward(int[] patch, boolean reopen) {
        boolean any = false;
        for (int c : patch) {
            for (int k = 0; pressure[c] != 0 && k < 4; k++) { // 0 where there was no mix before
                int next = c + steps[k];
                if (between(c, k) > 0 && !member[next] && takes(next)) {
                    boolean backward = pressure[c] - gas.pressurePa[next] - lift(c, next) < 0;
                    boolean isShut = (shut[c] >> k & 1) == 1;
                    if (backward != isShut && (backward || reopen)) {
                        shut[c] ^= 1 << k;
                        any = true;
                    }
                }
            }
        }
        return any;
    }

    /** Front and gravity into the equations; the sum of the front's conductances. */
    private double viscous(int[] patch) {
        double whole = 0;
        for (int c : patch) {
            for (int k = 0; k < 4; k++) {
                double t = between(c, k);
                int next = c + steps[k];
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
}
