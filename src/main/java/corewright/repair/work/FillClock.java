package corewright.repair.work;

import corewright.repair.plan.Batch;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.survey.SurfaceTemperature;
import corewright.survey.Survey;
import corewright.survey.WorkEntry;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * When the simulated fill of one space began, on the clock of the log, as far as one place is concerned. Work goes slower than
 * planned, stops for the night and is done again: a place is as old as the last mix of the hole nearest to it.
 */
final class FillClock {
    private final List<WorkEntry> log;
    private final InjectionPlan plan;
    private final double mixingS;

    FillClock(Survey survey, InjectionPlan plan) {
        this.plan = plan;
        mixingS = survey.settings().drilling().mixingS();
        List<String> filling =
                plan.holes().stream().filter(Hole::fills).map(Hole::id).toList();
        log = survey.log().stream().filter(e -> filling.contains(e.hole())).toList();
    }

    /** By the nearest hole; where that has taken nothing yet by the first cup of the log, without a log by the plan. */
    double startS(SurfaceTemperature reading) {
        return plan.holes().stream()
                .filter(Hole::fills)
                .min(Comparator.comparingDouble(
                        h -> h.spot().coordinate().distance(reading.spot().coordinate())))
                .flatMap(hole -> lastMixS(hole, reading.afterS()).map(s -> s - plannedS(hole)))
                .orElseGet(() -> log.stream()
                        .mapToDouble(e -> Math.max(0, e.afterS() - mixingS))
                        .min()
                        .orElseGet(this::firstCupS));
    }

    private Optional<Double> lastMixS(Hole hole, double untilS) {
        return log.stream()
                .filter(e -> e.hole().equals(hole.id()) && e.grams() > 0 && e.afterS() <= untilS)
                .map(e -> Math.max(0, e.afterS() - mixingS))
                .max(Comparator.naturalOrder());
    }

    /** When the hole's first cup is mixed, after the first of all. */
    private double plannedS(Hole hole) {
        return plan.batches().stream()
                        .filter(b -> b.holes().contains(hole.id()))
                        .mapToDouble(Batch::mixAtS)
                        .min()
                        .orElseGet(this::firstCupS)
                - firstCupS();
    }

    private double firstCupS() {
        return plan.batches().stream().mapToDouble(Batch::mixAtS).min().orElse(0);
    }
}
