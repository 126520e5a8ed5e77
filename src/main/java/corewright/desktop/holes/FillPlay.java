package corewright.desktop.holes;

import corewright.assessment.Assessment;
import corewright.contour.Raster;
import corewright.desktop.state.Complaints;
import corewright.desktop.state.Workbench;
import corewright.repair.fill.DrawnCavities.Size;
import corewright.repair.plan.InjectionPlan;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The fill of the most likely cavity, and of one as small or as large as one in ten, worked out when it is asked for. */
public final class FillPlay {
    private final Workbench bench;
    private final Runnable tell;
    private final Map<Size, FillPlayed> played = new EnumMap<>(Size.class);
    private Size size = Size.MIDDLE;
    private @Nullable Assessment found;
    private @Nullable InjectionPlan plan;

    FillPlay(Workbench bench, Runnable tell) {
        this.bench = bench;
        this.tell = tell;
    }

    /** Another plan is played from now on. */
    void follow(@Nullable Assessment now, @Nullable InjectionPlan other) {
        found = now;
        plan = other;
        size = Size.MIDDLE;
        played.clear();
    }

    /** Plays a cavity of this size. */
    public void play(Size other) {
        size = other;
        Assessment in = found;
        InjectionPlan of = plan;
        if (in != null && of != null && other != Size.MIDDLE && !played.containsKey(other)) {
            bench.jobs()
                    .run(
                            () -> FillPlayed.of(in, of, other),
                            made -> {
                                if (of == plan) {
                                    played.put(other, made);
                                    tell.run();
                                }
                            },
                            e -> bench.say("This fill cannot be played: " + Complaints.sentence(e)));
        }
        tell.run();
    }

    public Size size() {
        return size;
    }

    /** When the mix comes where, seconds after the first cup; empty until it is worked out. */
    public Optional<Raster> arrivalS() {
        return size == Size.MIDDLE
                ? Optional.ofNullable(plan).flatMap(p -> p.fill().arrivalS())
                : Optional.ofNullable(played.get(size)).map(FillPlayed::arrivalS);
    }

    /** Share of that cavity that stays empty. */
    public double emptyShare() {
        FillPlayed other = played.get(size);
        InjectionPlan of = plan;
        return other != null ? other.emptyShare() : of == null ? 0 : of.fill().emptyShare();
    }
}
