package corewright.repair.work;

import corewright.repair.mix.Lifts;
import corewright.repair.plan.Batch;
import corewright.survey.WorkEntry;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Which lifts of a hole are in, by the log.
 *
 * @param cups of a plan, in the order of the day
 * @param log under the plan's names
 */
public record LiftsIn(List<Batch> cups, List<WorkEntry> log) {
    public LiftsIn {
        cups = List.copyOf(cups);
        log = List.copyOf(log);
    }

    /** In how many lifts a hole is filled, at least 1. */
    public int all(String hole) {
        return cups.stream()
                .filter(c -> c.holes().contains(hole))
                .mapToInt(c -> Lifts.number(c, cups))
                .max()
                .orElse(1);
    }

    /** Lifts of a hole that are in, 0 where the log does not name it; all of them where a line says no lift. */
    public int in(String hole) {
        return log.stream()
                .filter(e -> e.hole().equals(hole))
                .mapToInt(e -> Objects.requireNonNullElse(e.lift(), all(hole)))
                .max()
                .orElse(0);
    }

    /** The lift that is next for a hole, from 1; the last one once all are in. */
    public int next(String hole) {
        return Math.min(in(hole) + 1, all(hole));
    }

    /** The same for a line of the log; null where a hole has one lift, and none is written. */
    public @Nullable Integer said(String hole) {
        return all(hole) > 1 ? next(hole) : null;
    }

    /** The cup of the lift that is next for a hole. */
    public Optional<Batch> cup(String hole) {
        return cups.stream()
                .filter(c -> c.holes().contains(hole) && Lifts.number(c, cups) >= next(hole))
                .findFirst();
    }

    /** Holes that still take mix, in the order of the cups. */
    public List<String> open() {
        return cups.stream()
                .flatMap(cup -> cup.holes().stream().filter(h -> in(h) < Lifts.number(cup, cups)))
                .distinct()
                .toList();
    }
}
