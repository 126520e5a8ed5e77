package corewright.repair.fill;

import corewright.repair.mix.Batches;
import corewright.repair.mix.Curing;
import corewright.repair.mix.ReachLaw;
import corewright.repair.pattern.Cavity;
import corewright.repair.pattern.Slope;
import corewright.repair.plan.Restraint;
import corewright.survey.settings.Drilling;
import corewright.survey.settings.Resin;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Where the mix of a plan gets to: every shot pushed in, in working order, while the earlier ones rise.
 *
 * <p>(1) A hole takes the liquid of its share, {@code pack / X} of the cavity it serves, while its cup's work time lasts;
 * one clock a cup; what it does not take goes into the next hole of the cup. Holes and vents let air out until mix stands
 * in them. (2) Meanwhile what already stands in the cavity thickens and rises, each cup at its own age: the cups of a day
 * rise one after another, and drive the air before them. Enclosed air is squeezed up to the tool's pressure, by the rise
 * up to that of the sealed cavity.
 */
public final class FillSimulation {
    /** Share of the front's cells that fill in one step; half of it changes the arrival by about a hundredth. */
    private static final double FRONT_SHARE = 0.6;

    private static final int RISE_STEPS = 30;

    /** In which what waits in full cells goes on when a mix that does not rise is in. */
    private static final double SETTLES_S = 1;

    /** Where nothing shows at such a share of the places at which mix is due, the cavity counts as a large one. Practice. */
    private static final double ALL_MORE = 0.4;

    /** Mix is seen in a hole when it fills so much of its cell. */
    private static final double SHOWS = 0.5;

    /** Looked at while a cup rises, as shares of its rise: mix there may be pushed on, and most vents are due. Practice. */
    private static final double[] LOOKS = {0.6, 0.92};

    /** A vent that is late by less is not late. Practice. */
    private static final double LATE_S = 30;

    /** A place that does not show after its dose gets it again, so often at most. Practice. */
    private static final int RESERVE_ROUNDS = 4;

    private FillSimulation() {}

    /**
     * One filling of a hole.
     *
     * @param hole its id
     * @param cell of the hole
     * @param liquidMm3 to be placed
     * @param mixAtS when its cup is mixed, on the day's clock; holes of one cup share it
     * @param nozzle resistance of a long nozzle, see {@link ReachLaw#nozzleResistance}; 0 where a hole is drilled
     */
    public record Shot(String hole, int cell, double liquidMm3, double mixAtS, double nozzle) {}

    /**
     * What is held back for places at which no mix shows when all else is in and has risen. In order; twice where it still
     * does not show.
     *
     * @param mostMm3 liquid that is held back
     * @param cupMm3 liquid in a cup
     * @param largerBy liquid into a cavity as large as one in ten over that of the plan: what holes of later cups get where
     *     none of the places shows at which mix of the cups before is due
     */
    public record Reserve(List<Dose> doses, double mostMm3, double cupMm3, double largerBy) {
        static final Reserve NONE = new Reserve(List.of(), 0, 1, 1);

        public Reserve {
            doses = List.copyOf(doses);
        }
    }

    /**
     * Liquid at most into a place, a hole or a vent.
     *
     * @param dueS when mix is due there by the plan; NaN where it is not
     * @param watched ids of the holes for which this is the next vent: they get more where it does not show in time
     */
    public record Dose(int cell, double liquidMm3, double dueS, List<String> watched) {
        public Dose {
            watched = List.copyOf(watched);
        }
    }

    /**
     * What came of it, by flat index of the cavity.
     *
     * @param arrivalS on the day's clock, NaN where the mix does not get to
     * @param owner number of the shot that filled the cell, -1 where none
     * @param filled filled after the rise
     * @param pocket number of the enclosed air at the end, -1 elsewhere
     * @param placedMm3 liquid that each shot could place
     * @param liquidIn liquid in the cell at the end, cubic millimetres
     * @param shown whether mix showed at each place of the reserve, before any of it was poured
     * @param reserveMm3 liquid that was poured of the reserve
     */
    @SuppressWarnings("ArrayRecordComponent") // within one computation, never compared
    public record Result(
            double[] arrivalS,
            int[] owner,
            double[] filled,
            int[] pocket,
            double[] placedMm3,
            double emptyShare,
            double liquidMm3,
            double[] liquidIn,
            boolean[] shown,
            double reserveMm3) {}

    /**
     * What is filled with what.
     *
     * @param outlets cells of vents and accesses; the shots' own drilled holes are outlets too
     * @param heightMm by flat index
     */
    @SuppressWarnings("ArrayRecordComponent")
    public record Setting(
            Cavity cavity, double[] heightMm, int[] outlets, Resin resin, Drilling drilling, double temperatureC) {
        /** Height of every cell above the survey's datum. */
        public static double[] heights(Cavity cavity, Slope slope, double tiltDeg) {
            double[] height = new double[cavity.size()];
            double rise = slope.sloping() ? Math.sin(Math.toRadians(tiltDeg)) : 0;
            for (int c = 0; c < height.length; c++) {
                height[c] = rise * slope.height(cavity.centre(c));
            }
            return height;
        }
    }

    public static Result run(Setting setting, List<Shot> shots) {
        return run(setting, shots, Reserve.NONE);
    }

    public static Result run(Setting setting, List<Shot> shots, Reserve reserve) {
        return new Run(setting).of(shots, reserve);
    }

    private static final class Run {
        final Setting s;
        final FillFlow flow;
        final Curing curing;
        final double workS;
        final double riseStepS;
        final double toolPa;
        final double[] arrivalS;

        /** Liquid of what is held back. */
        private double held;

        /** Of it, into each hole. */
        private final Map<String, Double> given = new HashMap<>();

        /** When it was last looked at the vents. */
        private double looked = Double.NEGATIVE_INFINITY;

        Run(Setting s) {
            this.s = s;
            curing = Curing.of(s.resin, s.temperatureC);
            flow = new FillFlow(s.cavity, s.heightMm, curing, FRONT_SHARE);
            workS = s.resin.timeFactor(s.temperatureC) * s.resin.workS();
            riseStepS = curing.rises() ? (curing.riseEndS() - curing.firstRiseS()) / RISE_STEPS : workS;
            toolPa = 1000 * s.drilling.pressureKPa();
            arrivalS = new double[s.cavity.size()];
            Arrays.fill(arrivalS, Double.NaN);
        }

        Result of(List<Shot> shots, Reserve reserve) {
            for (Shot shot : shots) {
                flow.outlet[shot.cell] |= shot.nozzle == 0;
            }
            for (int cell : s.outlets) {
                flow.outlet[cell] = true;
            }
            double[] placed = new double[shots.size()];
            double mixAtS = Double.NaN;
            double over = 0;
            double factor = 1;
            held = reserve.mostMm3;
            int from = 0;
            for (int i = 0; i < placed.length; i++) {
                Shot shot = shots.get(i);
                boolean sameCup = i > 0 && shot.mixAtS == shots.get(i - 1).mixAtS;
                if (!sameCup) {
                    from = look(reserve, shots, from, i, shot.mixAtS);
                    mixAtS = reserve.doses.isEmpty() ? shot.mixAtS : Math.max(shot.mixAtS, flow.nowS);
                }
                over = sameCup ? over : 0;
                rise(sameCup ? flow.nowS + Batches.HOLE_S : mixAtS + s.drilling.mixingS());
                factor = sameCup ? factor : factor(reserve, shots.subList(0, i), mixAtS);
                double more = Math.min(held, (factor - 1) * shot.liquidMm3);
                held -= more;
                given.merge(shot.hole, more, Double::sum);
                Shot whole = new Shot(shot.hole, shot.cell, shot.liquidMm3 + more + over, mixAtS, shot.nozzle);
                placed[i] = push(whole, i);
                over = whole.liquidMm3 - placed[i];
            }
            look(reserve, shots, from, placed.length, Double.POSITIVE_INFINITY);
            if (curing.rises() || reserve.doses.isEmpty()) { // a mix that does not rise shows at once
                rise((Double.isNaN(mixAtS) ? 0 : mixAtS) + curing.riseEndS());
                rise(flow.nowS + riseStepS); // what waits in full cells goes on
            }
            boolean[] shown = new boolean[reserve.doses.size()];
            for (int i = 0; i < shown.length; i++) {
                shown[i] = shows(reserve.doses.get(i));
            }
            double left = held;
            for (int round = 0; round < RESERVE_ROUNDS && left > 0; round++) {
                left = pour(reserve, left);
            }
            return result(placed, shown, reserve.mostMm3 - left);
        }

        /**
         * The technician looks at the vents of the holes filled so far, at set shares of each cup's rise, up to some time.
         * A mix that does not rise shows as it goes in, and no look is needed.
         *
         * @param from the first hole of the cups that were not looked at to the end
         * @param to the number of the first shot that is not in yet
         * @return the same for the next time
         */
        private int look(Reserve reserve, List<Shot> shots, int from, int to, double untilS) {
            int next = from;
            for (int i = from; i < to && curing.rises() && !reserve.doses.isEmpty(); i++) {
                double mixAtS = shots.get(i).mixAtS;
                boolean lastOfCup = i + 1 == to || shots.get(i + 1).mixAtS != mixAtS;
                for (double share : lastOfCup ? LOOKS : new double[0]) {
                    double atS = mixAtS + curing.firstRiseS() + share * (curing.riseEndS() - curing.firstRiseS());
                    if (atS < untilS && atS > looked) {
                        rise(atS);
                        looked = atS;
                        feed(reserve, shots.subList(next, i + 1));
                    }
                }
                next = lastOfCup && mixAtS + curing.riseEndS() < untilS ? i + 1 : next;
            }
            return next;
        }

        /** More into the holes whose next vent is late, from a cup mixed for that; each up to what a large cavity takes. */
        private void feed(Reserve reserve, List<Shot> filled) {
            double mixAtS = Double.NaN;
            for (Shot shot : filled) {
                boolean late = reserve.doses.stream()
                        .anyMatch(d -> d.watched.contains(shot.hole) && d.dueS + LATE_S <= flow.nowS && !shows(d));
                double open = (reserve.largerBy - 1) * shot.liquidMm3 - given.getOrDefault(shot.hole, 0.0);
                double mm3 = Math.min(held, open);
                if (!late || mm3 <= 0 || flow.set(shot.cell)) {
                    continue;
                }
                boolean first = Double.isNaN(mixAtS);
                mixAtS = first ? flow.nowS : mixAtS;
                rise(first ? mixAtS + s.drilling.mixingS() : flow.nowS + Batches.HOLE_S);
                double in = push(new Shot(shot.hole, shot.cell, mm3, mixAtS, shot.nozzle), -1);
                given.merge(shot.hole, in, Double::sum);
                held -= in;
            }
        }

        private boolean shows(Dose place) {
            return flow.full[place.cell] || flow.filled(place.cell) >= SHOWS;
        }

        /** What a cup's holes get more than planned, by the places at which mix of the cups before is due by then. */
        private double factor(Reserve reserve, List<Shot> before, double atS) {
            int due = 0;
            int shown = 0;
            for (Dose place : reserve.doses) {
                if (place.dueS <= atS && before.stream().noneMatch(b -> b.cell == place.cell)) {
                    due++;
                    shown += shows(place) ? 1 : 0;
                }
            }
            double missing = due == 0 ? 0 : Math.min(1, (due - shown) / (ALL_MORE * due));
            return 1 + (reserve.largerBy - 1) * missing;
        }

        /** Cups of the reserve, one after another, into the places where nothing shows; what is left of it. */
        private double pour(Reserve reserve, double mostMm3) {
            double left = mostMm3;
            double inCup = 0;
            double mixAtS = flow.nowS;
            for (Dose dose : reserve.doses) {
                double mm3 = Math.min(dose.liquidMm3, left);
                if (mm3 <= 0 || shows(dose)) {
                    continue;
                }
                if (inCup < 0.5 * mm3) {
                    mixAtS = flow.nowS;
                    inCup = reserve.cupMm3;
                    rise(mixAtS + s.drilling.mixingS());
                } else {
                    rise(flow.nowS + Batches.HOLE_S);
                }
                double in = push(new Shot("", dose.cell, mm3, mixAtS, 0), -1);
                left -= in;
                inCup -= in;
            }
            if (left < mostMm3) {
                rise(mixAtS + curing.riseEndS());
                rise(flow.nowS + riseStepS);
            }
            return left;
        }

        private double push(Shot shot, int number) {
            double left = flow.begin(shot.cell, shot.liquidMm3, number, shot.mixAtS);
            double endS = Math.max(shot.mixAtS + workS, flow.nowS);
            FillFlow.Tool tool = new FillFlow.Tool(
                    toolPa, 1000 * s.drilling.rateMlPerS(), s.drilling.holeDiameterMm() / 2, shot.nozzle, shot.mixAtS);
            mark(flow.nowS);
            while (left > 1e-6 * shot.liquidMm3 && flow.nowS < endS - 1e-9) {
                if (!flow.full[shot.cell]) { // ran dry down the slope
                    left = flow.begin(shot.cell, left, number, shot.mixAtS);
                    continue;
                }
                flow.limitPockets(toolPa);
                FillFlow.Step step = flow.inject(shot.cell, tool, left, Math.min(riseStepS, endS - flow.nowS));
                if (step.intoMm3() <= 0) {
                    break;
                }
                left -= step.intoMm3();
                if (flow.nowS >= flow.risenUntilS() + riseStepS) {
                    riseNow();
                }
                mark(flow.nowS);
            }
            return shot.liquidMm3 - Math.max(0, left);
        }

        /** What stands in the cavity thickens and grows until then. */
        private void rise(double untilS) {
            double settledS = flow.nowS;
            if (!curing.rises() && flow.nowS < untilS) {
                flow.rise(Math.min(untilS, flow.nowS + SETTLES_S));
                mark(settledS);
            }
            while (flow.nowS < untilS - 1e-9) {
                flow.limitPockets(1000 * Restraint.sealedKPa(s.resin));
                flow.rise(Math.min(untilS, flow.nowS + riseStepS));
                mark(curing.rises() ? flow.nowS : settledS); // what does not rise has settled
            }
        }

        private void riseNow() {
            flow.limitPockets(1000 * Restraint.sealedKPa(s.resin));
            flow.rise(flow.nowS);
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

        private Result result(double[] placed, boolean[] shown, double reserveMm3) {
            double empty = 0;
            double whole = 0;
            double liquid = 0;
            double[] liquidIn = new double[s.cavity.size()];
            for (int c : s.cavity.cells) {
                liquid += flow.allLiquid(c);
                liquidIn[c] = flow.allLiquid(c);
                if (s.cavity.open[c] != 0) { // a wall's cells hold nothing
                    empty += flow.wholeMm3(c) * (1 - flow.filled(c));
                    whole += flow.wholeMm3(c);
                }
            }
            return new Result(
                    arrivalS,
                    flow.owner,
                    filled(),
                    flow.gas.pocket,
                    placed,
                    whole > 0 ? empty / whole : 0,
                    liquid,
                    liquidIn,
                    shown,
                    reserveMm3);
        }
    }
}
