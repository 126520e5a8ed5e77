package corewright.repair.fill;

import corewright.repair.mix.Batches;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What is done about a space that is larger than planned, by what shows and what does not.
 *
 * <p>A mix that rises: while a cup rises one looks at the vents; where one is late, the holes for which it is the next get
 * more from a cup mixed for that, and holes of later cups get more the fewer of the due places show. When all has risen,
 * each place at which nothing shows gets its dose. A mix that does not rise goes in by {@link HoleToHole}; then each vent that
 * does not show gets its dose.
 */
final class LargeSpace {
    /** Where nothing shows at such a share of the places at which mix is due, the cavity counts as a large one. Practice. */
    private static final double ALL_MORE = 0.4;

    /** Looked at while a cup rises, as shares of its rise: mix there may be pushed on, and most vents are due. Practice. */
    private static final double[] LOOKS = {0.6, 0.92};

    /** A vent that is late by less is not late. Practice. */
    private static final double LATE_S = 30;

    /** A place that does not show after its dose gets it again, so often at most. Practice. */
    private static final int ROUNDS = 4;

    private final FillRun run;
    private final FillFlow flow;
    private final FillSimulation.Reserve reserve;
    private final boolean rises;

    /** Liquid of what is held back. */
    private double held;

    /** Of it, into each hole. */
    private final Map<String, Double> given = new HashMap<>();

    /** When it was last looked at the vents. */
    private double looked = Double.NEGATIVE_INFINITY;

    /** The first shot of the cups that were not looked at to the end. */
    private int from;

    /** Of what a large space takes more, by the places at which nothing showed; what was once found large is not small again. */
    private double missing;

    /** What holes of this cup get over what is planned. */
    private double factor = 1;

    LargeSpace(FillRun run, FillSimulation.Reserve reserve) {
        this.run = run;
        this.reserve = reserve;
        flow = run.flow;
        rises = run.curing.rises();
        held = reserve.mostMm3();
    }

    double pouredMm3() {
        return reserve.mostMm3() - held;
    }

    /**
     * What is done before a cup.
     *
     * @param before shots that are in
     * @param mixAtS when it is to be mixed
     * @return when it is mixed
     */
    double cup(List<FillSimulation.Shot> before, double mixAtS) {
        look(before, mixAtS);
        double atS = reserve.doses().isEmpty() ? mixAtS : Math.max(mixAtS, flow.nowS);
        factor = rises ? factor(before, atS) : 1;
        return atS;
    }

    /** More into a hole of this cup. */
    double more(FillSimulation.Shot shot) {
        double more = Math.min(held, (factor - 1) * shot.liquidMm3());
        held -= more;
        given.merge(shot.hole(), more, Double::sum);
        return more;
    }

    /** A mix that does not rise: from hole to hole. */
    double[] followed(List<FillSimulation.Shot> shots) {
        double planned =
                shots.stream().mapToDouble(FillSimulation.Shot::liquidMm3).sum();
        double[] placed = new HoleToHole(run, shots)
                .followed(reserve, () -> reserve.doses().stream().allMatch(d -> Double.isNaN(d.dueS()) || shows(d)));
        held -= Math.max(0, Arrays.stream(placed).sum() - planned);
        return placed;
    }

    /**
     * Whether mix shows at each place when all cups are in and have risen.
     *
     * @param mixAtS of the last one
     */
    boolean[] shown(List<FillSimulation.Shot> shots, double mixAtS) {
        look(shots, Double.POSITIVE_INFINITY);
        if (rises) {
            run.riseToEnd(mixAtS);
        }
        boolean[] shown = new boolean[reserve.doses().size()];
        for (int i = 0; i < shown.length; i++) {
            shown[i] = shows(reserve.doses().get(i));
        }
        return shown;
    }

    /**
     * What is held back into the places at which nothing shows then.
     *
     * @param mixAtS of the last cup
     */
    void pour(List<FillSimulation.Dose> doses, double mixAtS) {
        double lastS = mixAtS;
        for (int round = 0; round < ROUNDS && held > 0; round++) {
            lastS = unshown(doses, lastS);
        }
        if (!rises) {
            run.riseToEnd(lastS);
        }
    }

    /**
     * The technician looks at the vents of the holes filled so far, at set shares of each cup's rise, up to some time.
     * A mix that does not rise shows as it goes in, and no look is needed.
     */
    private void look(List<FillSimulation.Shot> shots, double untilS) {
        int next = from;
        for (int i = from; i < shots.size() && rises && !reserve.doses().isEmpty(); i++) {
            double mixAtS = shots.get(i).mixAtS();
            boolean lastOfCup = i + 1 == shots.size() || shots.get(i + 1).mixAtS() != mixAtS;
            double firstS = mixAtS + run.curing.firstRiseS();
            double endS = mixAtS + run.curing.riseEndS();
            for (double share : lastOfCup ? LOOKS : new double[0]) {
                double atS = firstS + share * (endS - firstS);
                if (atS < untilS && atS > looked) {
                    run.rise(atS);
                    looked = atS;
                    feed(shots.subList(next, i + 1));
                }
            }
            next = lastOfCup && endS < untilS ? i + 1 : next;
        }
        from = next;
    }

    /** More into the holes whose next vent is late, from a cup mixed for that; each up to what a large cavity takes. */
    private void feed(List<FillSimulation.Shot> filled) {
        Cup cup = new Cup();
        for (FillSimulation.Shot shot : filled) {
            boolean late = reserve.doses().stream()
                    .anyMatch(d -> d.watched().contains(shot.hole()) && d.dueS() + LATE_S <= flow.nowS && !shows(d));
            double open = (reserve.largerBy() - 1) * shot.liquidMm3() - given.getOrDefault(shot.hole(), 0.0);
            double mm3 = Math.min(held, open);
            if (late && mm3 > 0 && !flow.set(shot.cell())) {
                given.merge(shot.hole(), cup.into(shot.hole(), shot.cell(), mm3, shot.nozzle()), Double::sum);
            }
        }
    }

    private boolean shows(FillSimulation.Dose place) {
        return run.shows(place.cell());
    }

    /** What a cup's holes get more than planned, by the places at which mix of the cups before is due by then. */
    private double factor(List<FillSimulation.Shot> before, double atS) {
        int due = 0;
        int shown = 0;
        for (FillSimulation.Dose place : reserve.doses()) {
            if (place.dueS() <= atS && before.stream().noneMatch(b -> b.cell() == place.cell())) {
                due++;
                shown += shows(place) ? 1 : 0;
            }
        }
        missing = Math.max(missing, due == 0 ? 0 : Math.min(1, (due - shown) / (ALL_MORE * due)));
        return 1 + (reserve.largerBy() - 1) * missing;
    }

    /** Doses into the places where nothing shows; when the last cup of it was mixed. */
    private double unshown(List<FillSimulation.Dose> doses, double lastS) {
        Cup cup = new Cup();
        for (FillSimulation.Dose dose : doses) {
            double mm3 = Math.min(dose.liquidMm3(), held);
            if (mm3 > 0 && !shows(dose)) {
                cup.into("", dose.cell(), mm3, 0);
            }
        }
        if (cup.used() && rises) {
            run.riseToEnd(cup.mixAtS);
        }
        return cup.used() ? cup.mixAtS : lastS;
    }

    /** A cup of what is held back; when it is empty the next one is mixed. */
    private final class Cup {
        private double mixAtS = Double.NaN;
        private double leftMm3;

        boolean used() {
            return !Double.isNaN(mixAtS);
        }

        /** What goes in at a place. */
        double into(String hole, int cell, double mm3, double nozzle) {
            if (leftMm3 < 0.5 * mm3) {
                mixAtS = flow.nowS;
                leftMm3 = reserve.cupMm3();
                run.rise(mixAtS + run.s.drilling().mixingS());
            } else {
                run.rise(flow.nowS + Batches.HOLE_S);
            }
            double in = run.push(new FillSimulation.Shot(hole, cell, mm3, mixAtS, nozzle), -1);
            held -= in;
            leftMm3 -= in;
            return in;
        }
    }
}
