package corewright.repair;

import corewright.survey.Drilling;
import corewright.survey.Resin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Where the mix of a plan gets to: every shot pushed in, in working order, then the rise.
 *
 * <p>(1) A hole takes the liquid of its share, {@code pack / X} of the cavity it serves, while its cup's work time lasts;
 * one clock a cup. Later holes and vents let air out until mix stands in them. (2) The rise of all cups together, its
 * growth linear from first rise to its end, while the mix thickens up to gel. Enclosed air is squeezed up to the tool's
 * pressure, in the rise up to that
 * of the sealed cavity.
 */
final class FillSimulation {
    /** Share of the front's cells that fill in one step; half of it changes the arrival by about a hundredth. */
    private static final double FRONT_SHARE = 0.6;

    private static final int RISE_STEPS = 60;

    /** Gel is taken where the mix is so many times as thick; see {@link ReachLaw}. */
    private static final double GEL_THICKENING = 100;

    private FillSimulation() {}

    /**
     * One filling of a hole.
     *
     * @param cell of the hole
     * @param liquidMm3 to be placed
     * @param mixAtS when its cup is mixed, on the day's clock; holes of one cup share it
     */
    record Shot(int cell, double liquidMm3, double mixAtS) {}

    /**
     * What came of it, by flat index of the cavity.
     *
     * @param arrivalS on the day's clock, NaN where the mix does not get to
     * @param owner number of the shot that filled the cell, -1 where none
     * @param liquidShare filled by the liquid
     * @param filled filled after the rise
     * @param pocket number of the enclosed air at the end, -1 elsewhere
     * @param placedMm3 liquid that each shot could place
     */
    @SuppressWarnings("ArrayRecordComponent") // within one computation, never compared
    record Result(
            double[] arrivalS,
            int[] owner,
            double[] liquidShare,
            double[] filled,
            int[] pocket,
            double[] placedMm3,
            double emptyShare,
            double liquidMm3) {}

    /**
     * What is filled with what.
     *
     * @param outlets cells of vents and accesses; the shots' own holes are outlets too
     * @param heightMm by flat index
     */
    @SuppressWarnings("ArrayRecordComponent")
    record Setting(
            Cavity cavity, double[] heightMm, int[] outlets, Resin resin, Drilling drilling, double temperatureC) {
        /** Height of every cell above the survey's datum. */
        static double[] heights(Cavity cavity, Slope slope, double tiltDeg) {
            double[] height = new double[cavity.size()];
            double rise = slope.sloping() ? Math.sin(Math.toRadians(tiltDeg)) : 0;
            for (int c = 0; c < height.length; c++) {
                height[c] = rise * slope.height(cavity.centre(c));
            }
            return height;
        }
    }

    static Result run(Setting setting, List<Shot> shots) {
        return new Run(setting).of(shots);
    }

    private static final class Run {
        final Setting s;
        final FillFlow flow;
        final double factor;
        final double tauS;
        final double[] arrivalS;

        Run(Setting s) {
            this.s = s;
            flow = new FillFlow(s.cavity, s.heightMm, s.resin.densityKgM3(), FRONT_SHARE);
            flow.limitPockets(1000 * s.drilling.pressureKPa()); // until the rise takes the tool's place
            factor = s.resin.timeFactor(s.temperatureC);
            tauS = factor * s.resin.gelS() / Math.log(GEL_THICKENING);
            arrivalS = new double[s.cavity.size()];
            Arrays.fill(arrivalS, Double.NaN);
        }

        Result of(List<Shot> shots) {
            for (Shot shot : shots) {
                flow.outlet[shot.cell] = true;
            }
            for (int cell : s.outlets) {
                flow.outlet[cell] = true;
            }
            double[] placed = new double[shots.size()];
            double mixAtS = Double.NaN;
            double ageS = 0;
            for (int i = 0; i < placed.length; i++) {
                Shot shot = shots.get(i);
                ageS = shot.mixAtS == mixAtS ? ageS + Batches.HOLE_S : s.drilling.mixingS();
                mixAtS = shot.mixAtS;
                double[] clock = {ageS};
                placed[i] = push(shot, i, clock);
                ageS = clock[0];
            }
            double[] liquidShare = filled();
            rise(shots);
            return result(placed, liquidShare);
        }

        private double push(Shot shot, int number, double[] clock) {
            double left = flow.begin(shot.cell, shot.liquidMm3, number);
            double workS = factor * s.resin.workS();
            double endS = Math.max(workS, clock[0]);
            mark(shot.mixAtS + clock[0]);
            while (left > 1e-6 * shot.liquidMm3 && clock[0] < endS - 1e-9) {
                if (!flow.full[shot.cell]) { // ran dry down the slope
                    left = flow.begin(shot.cell, left, number);
                    continue;
                }
                FillFlow.Tool tool = new FillFlow.Tool(
                        1000 * s.drilling.pressureKPa(),
                        1000 * s.drilling.rateMlPerS(),
                        viscosity(clock[0]),
                        s.drilling.holeDiameterMm() / 2);
                FillFlow.Step step = flow.inject(shot.cell, tool, left, endS - clock[0]);
                if (step.intoMm3() <= 0) {
                    break;
                }
                left -= step.intoMm3();
                clock[0] += step.seconds();
                mark(shot.mixAtS + clock[0]);
            }
            return shot.liquidMm3 - Math.max(0, left);
        }

        private double viscosity(double ageS) {
            return factor * s.resin.viscosityPaS() * Math.min(GEL_THICKENING, Math.exp(ageS / tauS));
        }

        private void rise(List<Shot> shots) {
            double x = s.resin.expansion();
            double firstS = factor * s.resin.firstRiseS();
            double lastS = factor * s.resin.riseEndS();
            if (x <= 1 || lastS <= firstS) {
                return;
            }
            flow.limitPockets(1000 * Restraint.sealedKPa(s.resin));
            double step = (lastS - firstS) / RISE_STEPS;
            for (int i = 1; i <= RISE_STEPS; i++) {
                double ageS = firstS + i * step;
                flow.rise(1 + (x - 1) * i / RISE_STEPS, step, viscosity(ageS));
                for (int c : s.cavity.cells) {
                    if (Double.isNaN(arrivalS[c]) && flow.filled(c) >= 0.5 && flow.owner[c] >= 0) {
                        arrivalS[c] = shots.get(flow.owner[c]).mixAtS + ageS;
                    }
                }
            }
        }

        /** A front stands at the cell's middle. */
        private void mark(double atS) {
            for (int c : s.cavity.cells) {
                if (Double.isNaN(arrivalS[c]) && flow.filled(c) >= 0.5) {
                    arrivalS[c] = atS;
                }
            }
        }

        private double[] filled() {
            double[] share = new double[s.cavity.size()];
            for (int c : s.cavity.cells) {
                share[c] = flow.filled(c);
            }
            return share;
        }

        private Result result(double[] placed, double[] liquidShare) {
            double empty = 0;
            double whole = 0;
            double liquid = 0;
            for (int c : s.cavity.cells) {
                liquid += flow.liquid[c];
                if (s.cavity.open[c] != 0) { // a wall's cells hold nothing
                    empty += flow.volume[c] * (1 - flow.filled(c));
                    whole += flow.volume[c];
                }
            }
            return new Result(
                    arrivalS,
                    flow.owner,
                    liquidShare,
                    filled(),
                    flow.gas.pocket,
                    placed,
                    whole > 0 ? empty / whole : 0,
                    liquid);
        }
    }

    /** Air enclosed at the end, largest first. */
    static List<Pocket> pockets(Setting setting, Result result) {
        double[] volume = new double[setting.cavity.size()];
        int[] deepest = new int[setting.cavity.size()];
        Arrays.fill(deepest, -1);
        int most = -1;
        for (int c : setting.cavity.cells) {
            int p = result.pocket[c];
            double air = setting.cavity.gapMm[c] * setting.cavity.cell * setting.cavity.cell * (1 - result.filled[c]);
            if (p < 0 || air <= 0 || setting.cavity.open[c] == 0) {
                continue;
            }
            most = Math.max(most, p);
            volume[p] += air;
            deepest[p] = deepest[p] < 0 || setting.cavity.gapMm[c] > setting.cavity.gapMm[deepest[p]] ? c : deepest[p];
        }
        List<Pocket> pockets = new ArrayList<>();
        for (int p = 0; p <= most; p++) {
            if (volume[p] > 0) {
                pockets.add(new Pocket(deepest[p], volume[p]));
            }
        }
        pockets.sort((a, b) -> Double.compare(b.mm3, a.mm3));
        return pockets;
    }

    /** Enclosed air and the cell of it with the highest gap. */
    record Pocket(int cell, double mm3) {}
}
