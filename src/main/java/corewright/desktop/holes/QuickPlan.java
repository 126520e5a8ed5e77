package corewright.desktop.holes;

import corewright.assessment.Assessment;
import corewright.desktop.state.Complaints;
import corewright.desktop.state.Jobs;
import corewright.desktop.state.Workbench;
import corewright.repair.RepairPlanner;
import corewright.repair.plan.InjectionPlan;
import corewright.reuse.Memory;
import corewright.survey.Part;
import corewright.survey.Survey;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The plan of the one space whose holes were touched, before the whole chain has followed. Where the survey differs from the last
 * assessment in nothing but holes, the chain will come to the same.
 */
final class QuickPlan {
    private final Workbench bench;
    private final Runnable tell;
    private final Memory memory = new Memory();
    private @Nullable Survey asked;
    private @Nullable InjectionPlan made;
    private Jobs.Job making = () -> {};

    QuickPlan(Workbench bench, Runnable tell) {
        this.bench = bench;
        this.tell = tell;
    }

    /** The plan for the survey as it is; empty until it is made. */
    Optional<InjectionPlan> plan() {
        return asked == bench.survey().orElse(null) ? Optional.ofNullable(made) : Optional.empty();
    }

    /**
     * Has the space of a plan planned anew for the survey as it is.
     *
     * @param base what was found last
     * @param before the plan it came to
     */
    void follow(Assessment base, InjectionPlan before) {
        Survey now = bench.survey().orElse(null);
        if (now == null || now == asked || !holesOnly(base.survey(), now)) {
            return;
        }
        asked = now;
        made = null;
        making.cancel();
        making = bench.jobs()
                .run(
                        () -> RepairPlanner.again(now, base.damage(), before, memory),
                        plan -> {
                            if (asked == now) {
                                made = plan.orElse(null);
                                tell.run();
                            }
                        },
                        e -> bench.say("The holes could not be planned at once: " + Complaints.sentence(e)));
    }

    private static boolean holesOnly(Survey before, Survey now) {
        return Part.HOLES.with(before, now.judgements().holes()).equals(now);
    }
}
