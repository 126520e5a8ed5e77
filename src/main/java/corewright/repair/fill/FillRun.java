package corewright.repair.fill;

import corewright.repair.mix.Curing;
import corewright.repair.plan.Restraint;
import java.util.Arrays;
import java.util.function.BooleanSupplier;

/** One simulated fill on its way: shots go in, what stands in the cavity rises. */
final class FillRun {
    /** Share of the front's cells that fill in one step; half of it changes the arrival by about a hundredth. */
    private static final double FRONT_SHARE = 0.6;

    private static final int RISE_STEPS = 30;

    /** Mix is seen in a hole when it fills so much of its cell. */
    private static final double SHOWS = 0.5;

    /** In which what waits in full cells goes on when a mix that does not rise is in. */
    private static final double SETTLES_S = 1;

    final FillSimulation.Setting s;
    final FillFlow flow;
    final Curing curing;
    private final double workS;
    private final double riseStepS;
    private final double toolPa;
    private final double[] arrivalS;

    FillRun(FillSimulation.Setting s) {
        this.s = s;
        curing = Curing.of(s.resin(), s.temperatureC());
        flow = new FillFlow(s.cavity(), s.heightMm(), curing, FRONT_SHARE);
        workS = s.resin().timeFactor(s.temperatureC()) * s.resin().workS();
        riseStepS = curing.rises() ? (curing.riseEndS() - curing.firstRiseS()) / RISE_STEPS : workS;
        toolPa = 1000 * s.drilling().pressureKPa();
        arrivalS = new double[s.cavity().size()];
        Arrays.fill(arrivalS, Double.NaN);
    }

    /** A hole of a shot, or a vent or access, lets air out. */
    void open(int cell) {
        flow.outlet[cell] = true;
    }

    /** Whether mix is seen in a hole. */
    boolean shows(int cell) {
        return flow.full[cell] || flow.filled(cell) >= SHOWS;
    }

    /** Whether the work time of a mix is over. */
    boolean old(double mixAtS) {
        return flow.nowS >= mixAtS + workS - 1e-9;
    }

    double push(FillSimulation.Shot shot, int number) {
        return push(shot, number, () -> false);
    }

    /** What a shot places, while its work time lasts and until enough is in. */
    double push(FillSimulation.Shot shot, int number, BooleanSupplier enough) {
        double left = flow.begin(shot.cell(), shot.liquidMm3(), number, shot.mixAtS());
        double endS = Math.max(shot.mixAtS() + workS, flow.nowS);
        Pushing.Tool tool = new Pushing.Tool(
                toolPa,
                1000 * s.drilling().rateMlPerS(),
                s.drilling().holeDiameterMm() / 2,
                shot.nozzle(),
                shot.mixAtS());
        mark(flow.nowS);
        while (left > 1e-6 * shot.liquidMm3() && flow.nowS < endS - 1e-9 && !enough.getAsBoolean()) {
            if (!flow.full[shot.cell()]) { // ran dry down the slope
                left = flow.begin(shot.cell(), left, number, shot.mixAtS());
                continue;
            }
            flow.limitPockets(toolPa);
            FillFlow.Step step = flow.inject(shot.cell(), tool, left, Math.min(riseStepS, endS - flow.nowS));
            if (step.intoMm3() <= 0) {
                break;
            }
            left -= step.intoMm3();
            if (!curing.rises()
                    || flow.nowS >= flow.risenUntilS() + riseStepS) { // a liquid does not wait in full cells
                riseNow();
            }
            mark(flow.nowS);
        }
        return shot.liquidMm3() - Math.max(0, left);
    }

    /** What stands in the cavity thickens and grows until then. */
    void rise(double untilS) {
        double settledS = flow.nowS;
        if (!curing.rises() && flow.nowS < untilS) {
            flow.rise(Math.min(untilS, flow.nowS + SETTLES_S));
            mark(settledS);
        }
        while (flow.nowS < untilS - 1e-9) {
            flow.limitPockets(1000 * Restraint.sealedKPa(s.resin()));
            flow.rise(Math.min(untilS, flow.nowS + riseStepS));
            mark(curing.rises() ? flow.nowS : settledS); // what does not rise has settled
        }
    }

    /** Until a cup has risen, and what waits in full cells has gone on. */
    void riseToEnd(double mixAtS) {
        rise(mixAtS + curing.riseEndS());
        rise(flow.nowS + riseStepS);
    }

    private void riseNow() {
        flow.limitPockets(1000 * Restraint.sealedKPa(s.resin()));
        flow.rise(flow.nowS);
    }

    /** A front stands at the cell's middle. */
    private void mark(double atS) {
        for (int c : s.cavity().cells) {
            if (Double.isNaN(arrivalS[c]) && flow.wet[c] && flow.filled(c) >= 0.5) {
                arrivalS[c] = atS;
            }
        }
    }

    private double[] filled() {
        double[] share = new double[s.cavity().size()];
        for (int c : s.cavity().cells) {
            share[c] = flow.filled(c);
        }
        return share;
    }

    /** As it is now; the run may go on. */
    FillSimulation.Result result(double[] placed, boolean[] shown, double reserveMm3) {
        double empty = 0;
        double whole = 0;
        double liquid = 0;
        double[] liquidIn = new double[s.cavity().size()];
        for (int c : s.cavity().cells) {
            liquid += flow.allLiquid(c);
            liquidIn[c] = flow.allLiquid(c);
            if (s.cavity().open[c] != 0) { // a wall's cells hold nothing
                empty += flow.wholeMm3(c) * (1 - flow.filled(c));
                whole += flow.wholeMm3(c);
            }
        }
        return new FillSimulation.Result(
                arrivalS.clone(),
                flow.owner.clone(),
                filled(),
                flow.gas.pocket.clone(),
                placed,
                whole > 0 ? empty / whole : 0,
                liquid,
                liquidIn,
                shown,
                reserveMm3,
                flow.gas.ways.copy());
    }
}
