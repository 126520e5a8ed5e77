package corewright.repair.fill;

import corewright.repair.mix.Batches;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.function.Function;

/** Runs a simulated fill: shot after shot, and what the technician does where nothing shows. */
public final class SimulatedFill {
    private SimulatedFill() {}

    public static FillSimulation.Result run(FillSimulation.Setting setting, List<FillSimulation.Shot> shots) {
        return run(setting, shots, FillSimulation.Reserve.NONE);
    }

    public static FillSimulation.Result run(
            FillSimulation.Setting setting, List<FillSimulation.Shot> shots, FillSimulation.Reserve reserve) {
        FillRun run = opened(setting, shots);
        LargeSpace large = new LargeSpace(run, reserve);
        Placed placed = placed(run, large, shots, reserve);
        boolean[] shown = large.shown(shots, placed.lastMixAtS);
        large.pour(reserve.doses(), placed.lastMixAtS);
        return run.result(placed.mm3, shown, large.pouredMm3());
    }

    /**
     * Of a mix that rises: without any dose, and then with those that this asks for; the doses come when all has risen, so that both are
     * one fill up to there.
     *
     * @param doses by how it went without
     */
    static List<FillSimulation.Result> run(
            FillSimulation.Setting setting,
            List<FillSimulation.Shot> shots,
            FillSimulation.Reserve watching,
            Function<FillSimulation.Result, List<FillSimulation.Dose>> doses) {
        FillRun run = opened(setting, shots);
        LargeSpace large = new LargeSpace(run, watching);
        Placed placed = placed(run, large, shots, watching);
        boolean[] shown = large.shown(shots, placed.lastMixAtS);
        FillSimulation.Result without = run.result(placed.mm3, shown, large.pouredMm3());
        large.pour(doses.apply(without), placed.lastMixAtS);
        return List.of(without, run.result(placed.mm3, shown, large.pouredMm3()));
    }

    /** What each shot could place, and when the last cup was mixed. */
    @SuppressWarnings("ArrayRecordComponent")
    private record Placed(double[] mm3, double lastMixAtS) {}

    private static Placed placed(
            FillRun run, LargeSpace large, List<FillSimulation.Shot> shots, FillSimulation.Reserve reserve) {
        if (!run.curing.rises() && !reserve.doses().isEmpty()) {
            double[] followed = large.followed(shots);
            return new Placed(followed, run.flow.nowS);
        }
        double[] placed = new double[shots.size()];
        double mixAtS = 0;
        double over = 0;
        for (int i = 0; i < placed.length; i++) {
            FillSimulation.Shot shot = shots.get(i);
            boolean sameCup = i > 0 && shot.mixAtS() == shots.get(i - 1).mixAtS();
            if (!sameCup) {
                mixAtS = large.cup(shots.subList(0, i), shot.mixAtS());
            }
            run.rise(
                    sameCup
                            ? run.flow.nowS + Batches.HOLE_S
                            : mixAtS + run.s.drilling().mixingS());
            double liquid = shot.liquidMm3() + large.more(shot) + (sameCup ? over : 0);
            placed[i] = run.push(new FillSimulation.Shot(shot.hole(), shot.cell(), liquid, mixAtS, shot.nozzle()), i);
            over = liquid - placed[i];
        }
        return new Placed(placed, mixAtS);
    }

    /** Of a mix that does not rise: as much through each hole as it takes until mix shows at the next. */
    static FillSimulation.Result shared(FillSimulation.Setting setting, List<FillSimulation.Shot> shots) {
        FillRun run = opened(setting, shots);
        double[] placed = new HoleToHole(run, shots).shared();
        run.riseToEnd(run.flow.nowS);
        return run.result(placed, new boolean[0], 0);
    }

    private static FillRun opened(FillSimulation.Setting setting, List<FillSimulation.Shot> shots) {
        FillRun run = new FillRun(setting);
        openings(setting, shots).stream().forEach(run::open);
        return run;
    }

    /** Cells at which air gets out: holes that are drilled, vents, accesses. */
    static BitSet openings(FillSimulation.Setting setting, List<FillSimulation.Shot> shots) {
        BitSet open = new BitSet();
        shots.stream().filter(s -> s.nozzle() == 0).forEach(s -> open.set(s.cell()));
        Arrays.stream(setting.outlets()).forEach(open::set);
        return open;
    }
}
