package corewright.desktop.work;

import corewright.assessment.Assessment;
import corewright.desktop.state.Workbench;
import corewright.repair.plan.Hole;
import corewright.survey.Subject;
import java.util.List;

/** The gravest that the log says of some holes. A calculation that has its map alone says nothing of it: until it does, a stop stands. */
final class LogCaution {
    private final Workbench bench;
    private String last = "";

    LogCaution(Workbench bench) {
        this.bench = bench;
    }

    /** What it is, and what to do; empty where there is nothing. */
    String of(List<Hole> holes) {
        bench.found().filter(a -> a.ages().freshRest() || a.ages().oldRest()).ifPresent(a -> last = of(a, holes));
        return last;
    }

    private static String of(Assessment found, List<Hole> holes) {
        return found.findings().stream()
                .filter(f -> f.subject() == Subject.WORK_LOG)
                .filter(f -> holes.stream().anyMatch(h -> f.about().id().equals(h.id())))
                .reduce((a, b) -> b)
                .map(f -> f.message() + " " + f.effect())
                .orElse("");
    }
}
