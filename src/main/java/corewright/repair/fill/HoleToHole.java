package corewright.repair.fill;

import corewright.repair.mix.Batches;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * How a mix that does not rise goes in: from hole to hole, so that one front drives the air before it. A hole is filled until mix
 * shows at the first hole after it where none showed yet; where all show, it takes its share of what is left. A cup that is
 * empty or too old gives way to the next one.
 */
final class HoleToHole {
    /** A hole that does not show takes no more than so many times what holes take on the mean. Practice. */
    private static final double MOST_OF_MEAN = 2.5;

    /** So much of the mean is left for each hole that is still to come. Practice. */
    private static final double LEAST_OF_MEAN = 0.4;

    /** Less of what goes in is rounding. */
    private static final double SMALL = 1e-6;

    private final FillRun run;
    private final List<FillSimulation.Shot> shots;

    HoleToHole(FillRun run, List<FillSimulation.Shot> shots) {
        this.run = run;
        this.shots = List.copyOf(shots);
    }

    /** Of all the liquid of the shots as much through each hole as it takes: what each shot placed. */
    double[] shared() {
        double[] placed = new double[shots.size()];
        double left = shots.stream().mapToDouble(FillSimulation.Shot::liquidMm3).sum();
        double meanMm3 = left / Math.max(1, holes().size());
        for (int i = 0; i < placed.length; i++) {
            FillSimulation.Shot shot = shots.get(i);
            boolean sameCup = i > 0 && shot.mixAtS() == shots.get(i - 1).mixAtS();
            run.rise(sameCup ? run.flow.nowS + Batches.HOLE_S : shot.mixAtS() + mixingS());
            int next = next(i);
            double mm3 = next >= 0
                    ? Math.max(0, Math.min(left - LEAST_OF_MEAN * meanMm3 * after(i), MOST_OF_MEAN * meanMm3))
                    : left * shot.liquidMm3() / later(i);
            placed[i] = run.push(of(shot, mm3, shot.mixAtS()), i, () -> next >= 0 && run.shows(next));
            left -= placed[i];
        }
        return placed;
    }

    /**
     * Each hole up to its planned liquid and its dose of what is held back, as long as the next one does not show; where all show,
     * more than planned only as long as a vent does not.
     */
    double[] followed(FillSimulation.Reserve reserve, BooleanSupplier ventsShow) {
        double[] placed = new double[shots.size()];
        Pot pot = new Pot(reserve);
        for (FillSimulation.Shot hole : holes()) {
            int i = shots.indexOf(hole);
            int next = next(lastOf(hole));
            double planned = shots.stream()
                    .filter(s -> s.hole().equals(hole.hole()))
                    .mapToDouble(FillSimulation.Shot::liquidMm3)
                    .sum();
            double dose = reserve.doses().stream()
                    .filter(d -> d.cell() == hole.cell() && d.watched().isEmpty())
                    .mapToDouble(FillSimulation.Dose::liquidMm3)
                    .sum();
            if (next >= 0) {
                placed[i] = pot.into(hole, i, planned + dose, () -> run.shows(next));
            } else {
                placed[i] = pot.into(hole, i, planned, () -> false);
                placed[i] += pot.into(hole, i, planned + dose - placed[i], ventsShow);
            }
            run.rise(run.flow.nowS + Batches.HOLE_S);
        }
        return placed;
    }

    private double mixingS() {
        return run.s.drilling().mixingS();
    }

    private static FillSimulation.Shot of(FillSimulation.Shot shot, double mm3, double mixAtS) {
        return new FillSimulation.Shot(shot.hole(), shot.cell(), mm3, mixAtS, shot.nozzle());
    }

    /** The first shot of each hole. */
    private List<FillSimulation.Shot> holes() {
        List<FillSimulation.Shot> holes = new ArrayList<>();
        for (FillSimulation.Shot shot : shots) {
            if (holes.stream().noneMatch(h -> h.hole().equals(shot.hole()))) {
                holes.add(shot);
            }
        }
        return holes;
    }

    private int lastOf(FillSimulation.Shot hole) {
        int last = 0;
        for (int i = 0; i < shots.size(); i++) {
            last = shots.get(i).hole().equals(hole.hole()) ? i : last;
        }
        return last;
    }

    /** Cell of the first hole after a shot at which no mix shows; -1 where all show. A nozzle's mouth is not seen. */
    private int next(int shot) {
        return shots.subList(shot + 1, shots.size()).stream()
                .filter(s -> s.nozzle() == 0 && s.cell() != shots.get(shot).cell() && !run.shows(s.cell()))
                .mapToInt(FillSimulation.Shot::cell)
                .findFirst()
                .orElse(-1);
    }

    /** How many holes are still to come. */
    private long after(int shot) {
        return shots.subList(shot + 1, shots.size()).stream()
                .map(FillSimulation.Shot::hole)
                .filter(h -> !h.equals(shots.get(shot).hole()))
                .distinct()
                .count();
    }

    private double later(int shot) {
        return shots.subList(shot, shots.size()).stream()
                .mapToDouble(FillSimulation.Shot::liquidMm3)
                .sum();
    }

    /** Cups one after another: the planned ones, then those held back. */
    private final class Pot {
        private final double cupMm3;
        private double heldMm3;
        private int planned;
        private double mixAtS;
        private double leftMm3;

        Pot(FillSimulation.Reserve reserve) {
            cupMm3 = reserve.cupMm3();
            heldMm3 = reserve.mostMm3();
        }

        double into(FillSimulation.Shot hole, int number, double mostMm3, BooleanSupplier shows) {
            double in = 0;
            while (mostMm3 - in > SMALL * mostMm3 && !shows.getAsBoolean() && (leftMm3 > 0 || next())) {
                double part = Math.min(leftMm3, mostMm3 - in);
                double placed = run.push(of(hole, part, mixAtS), number, shows);
                in += placed;
                leftMm3 -= placed;
                if (run.old(mixAtS)) {
                    leftMm3 = 0;
                } else if (placed < part - SMALL * part && !shows.getAsBoolean()) {
                    return in; // it takes no more
                }
            }
            return in;
        }

        /** Whether another one is mixed. */
        private boolean next() {
            if (planned < shots.size()) {
                mixAtS = shots.get(planned).mixAtS();
                for (; planned < shots.size() && shots.get(planned).mixAtS() == mixAtS; planned++) {
                    leftMm3 += shots.get(planned).liquidMm3();
                }
                mixAtS = Math.max(mixAtS, run.flow.nowS);
            } else {
                leftMm3 = Math.min(heldMm3, cupMm3);
                heldMm3 -= leftMm3;
                mixAtS = run.flow.nowS;
            }
            run.rise(mixAtS + mixingS());
            return leftMm3 > 0;
        }
    }
}
