package corewright.decision;

import corewright.damage.DamageMap;
import corewright.damage.Region;
import corewright.repair.plan.Batch;
import corewright.repair.plan.Cautions;
import corewright.repair.plan.InjectionPlan;
import corewright.survey.settings.Resin;
import corewright.survey.settings.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The chosen injections one after another: a region begins when the pot before is empty, and where it touches one that
 * was filled before, not until that one has stopped rising.
 */
final class Day {
    private Day() {}

    static List<InjectionPlan> oneAfterAnother(List<InjectionPlan> plans, DamageMap damage, Settings settings) {
        Map<String, Region> regions =
                damage.regions().stream().collect(Collectors.toMap(Region::id, Function.identity()));
        List<InjectionPlan> placed = new ArrayList<>();
        int number = 1;
        double freeS = 0;
        for (InjectionPlan plan : plans) {
            double startS = freeS;
            List<String> said = new ArrayList<>();
            for (InjectionPlan before : placed) {
                if (touch(before, plan, regions)) {
                    startS = Math.max(startS, risenS(before, settings));
                    said.add(plan.region() + " opens into " + before.region() + ", which is filled before: tap it again"
                            + " before drilling, and leave out a hole at which that mix shows.");
                }
            }
            Cautions.ventsBeside(plan, plans).ifPresent(said::add);
            List<Batch> moved = new ArrayList<>();
            for (Batch batch : plan.batches()) {
                moved.add(batch.movedTo(number++, startS));
                freeS = Math.max(freeS, batch.workUntilS() + startS);
            }
            placed.add(plan.onTheDay(moved, said));
        }
        return placed;
    }

    private static boolean touch(InjectionPlan a, InjectionPlan b, Map<String, Region> regions) {
        return a.parts().stream().anyMatch(p -> b.parts().stream()
                .anyMatch(q -> touch(regions.get(p.region()), regions.get(q.region()))));
    }

    private static boolean touch(@Nullable Region a, @Nullable Region b) {
        return a != null && b != null && a.face().equals(b.face()) && Evidence.touches(a, b);
    }

    /** When the last cup of a region has stopped rising; a mix that does not rise is done when it is in. */
    private static double risenS(InjectionPlan plan, Settings settings) {
        Resin resin = settings.resin(plan.resin());
        double endS = resin.expansion() > 1 ? resin.riseEndS() : resin.workS();
        double last = plan.batches().stream().mapToDouble(Batch::mixAtS).max().orElse(0);
        return last + endS * resin.timeFactor(settings.climate().temperatureC());
    }
}
