package corewright.repair;

import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.repair.mix.ReachLaw;
import corewright.repair.plan.EmptySpace;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.Prospect;
import corewright.repair.plan.RecorePlan;
import corewright.repair.plan.RepairOptions;
import corewright.repair.plan.SpaceTask;
import corewright.repair.work.FrozenSpace;
import corewright.reuse.Memory;
import corewright.survey.About;
import corewright.survey.Defect;
import corewright.survey.MovedHole;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.settings.Resin;
import corewright.survey.settings.Settings;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Plans what a repair of each region would take. */
public final class RepairPlanner {
    private RepairPlanner() {}

    /**
     * An injection for each loose region and a cut for each region. Of those that may be filled together only the prospect is found:
     * {@link #together} plans what becomes of them. A defect costs its own plan.
     *
     * @param memory gives the plans of what is as it was
     */
    public static RepairOptions plan(Survey survey, DamageMap damage, Memory memory) {
        List<Alone> alone = damage.faces().stream()
                .flatMap(f -> f.regions().stream().map(r -> new Alone(survey, f, r, memory)))
                .toList();
        Set<String> waiting = waiting(survey, damage);
        alone.parallelStream().forEach(a -> a.all(waiting.contains(a.region.id()))); // each writes its own fields only
        Map<String, String> refused = new LinkedHashMap<>();
        alone.forEach(a -> a.refusal().ifPresent(why -> refused.put(a.region.id(), why)));
        return new RepairOptions(
                alone.stream().flatMap(a -> Stream.ofNullable(a.injection)).toList(),
                alone.stream().flatMap(a -> Stream.ofNullable(a.prospect)).toList(),
                alone.stream().flatMap(a -> Stream.ofNullable(a.recore)).toList(),
                refused,
                alone.stream().flatMap(a -> a.defects.stream()).toList());
    }

    /** Names of the regions that may be filled together; none once work began by a plan, which holds them as they are. */
    private static Set<String> waiting(Survey survey, DamageMap damage) {
        Set<String> waiting = new HashSet<>();
        for (FaceDamage face : survey.repairPlan().isNone() ? damage.faces() : List.<FaceDamage>of()) {
            List<Region> loose =
                    face.regions().stream().filter(r -> r.condition().loose()).toList();
            EmptySpace.joined(loose, r -> rimReachMm(survey.settings(), mix(survey, face, r)))
                    .forEach(s -> s.regions().forEach(r -> waiting.add(r.id())));
        }
        return waiting;
    }

    private static Optional<Resin> mix(Survey survey, FaceDamage face, Region region) {
        return InjectionPlanner.mix(SpaceTask.of(survey, face, EmptySpace.of(region)));
    }

    /** What one region alone would take. */
    private static final class Alone {
        private final Survey survey;
        private final FaceDamage face;
        private final Region region;
        private final Memory memory;
        private final List<Defect> defects = new ArrayList<>();
        private @Nullable InjectionPlan injection;
        private @Nullable Prospect prospect;
        private @Nullable RecorePlan recore;
        private String refused = "";

        Alone(Survey survey, FaceDamage face, Region region, Memory memory) {
            this.survey = survey;
            this.face = face;
            this.region = region;
            this.memory = memory;
        }

        /** @param waits with the prospect of an injection alone */
        void all(boolean waits) {
            if (region.condition().loose()) {
                guarded(RepairOptions.INJECTION, waits ? this::outline : this::inject);
            }
            guarded("the cut", this::cut);
        }

        private void outline() {
            SpaceTask task = SpaceTask.of(survey, face, EmptySpace.of(region));
            InjectionPlanner.Outline found = memory.of(new InjectionPlanner.Outlined(task), InjectionPlanner::outline);
            prospect = found.prospect() == null ? null : found.prospect().named(region.id());
            refused = found.refusal();
        }

        private void inject() {
            InjectionPlanner.Outcome outcome = RepairPlanner.injection(survey, face, EmptySpace.of(region), memory);
            injection = outcome.plan();
            refused = outcome.refusal();
        }

        private void cut() {
            RecorePlanner.Task task = RecorePlanner.Task.of(survey, face, region);
            recore = memory.of(task, RecorePlanner::plan).named(region.id());
        }

        /** The injection alone, in place of its prospect. */
        RepairOptions injected(RepairOptions options) {
            RepairOptions all = injection == null ? options : options.with(injection);
            for (Defect defect : defects) {
                all = all.with(defect);
            }
            return all;
        }

        private void guarded(String what, Runnable work) {
            try {
                work.run();
            } catch (RuntimeException e) {
                defects.add(Defect.of(what, new About.OfRegion(region.id(), middle(region)), e));
            }
        }

        Optional<String> refusal() {
            return refused.isEmpty() ? Optional.empty() : Optional.of(refused);
        }
    }

    /**
     * The plan of one space again, for a survey in which its holes were touched and the map is as it was; empty where none can be
     * made. It is what {@link #plan} and {@link #together} come to for that space.
     *
     * @param before the plan of the space
     */
    public static Optional<InjectionPlan> again(Survey survey, DamageMap damage, InjectionPlan before, Memory memory) {
        EmptySpace space = EmptySpace.of(damage, before);
        return Optional.ofNullable(
                injection(survey, damage.face(space.face()), space, memory).plan());
    }

    private static InjectionPlanner.Outcome injection(Survey survey, FaceDamage face, EmptySpace space, Memory memory) {
        SpaceTask task = SpaceTask.of(survey, face, space);
        if (survey.repairPlan().isNone()) {
            return injection(task, space, List.of(), memory);
        }
        FrozenSpace frozen = FrozenSpace.of(survey, face.regions(), space);
        InjectionPlanner.Outcome first =
                injection(task, space, frozen.heldBefore(), memory).named(frozen::named);
        if (frozen.isEmpty() || first.plan() == null || frozen.stands(first.plan())) {
            return first;
        }
        List<MovedHole> held = frozen.begun() ? frozen.all() : List.of();
        return injection(task, space, held, memory).named(frozen::revised);
    }

    /** @param held injection holes that stay where they are */
    private static InjectionPlanner.Outcome injection(
            SpaceTask task, EmptySpace space, List<MovedHole> held, Memory memory) {
        List<String> names = space.regions().stream().map(Region::id).toList();
        return memory.of(task.holding(held), InjectionPlanner::plan).named(names);
    }

    private static Spot middle(Region region) {
        return new Spot(region.face(), region.label().getX(), region.label().getY());
    }

    /**
     * The same with one plan for each void and the rims that are filled from it, in place of a plan for each, where that
     * takes no more holes; what has only a prospect then is planned alone.
     *
     * @param injected the regions that are to be injected at all
     * @param memory gives the plans of what is as it was
     */
    public static RepairOptions together(
            Survey survey, DamageMap damage, RepairOptions options, Set<String> injected, Memory memory) {
        RepairOptions all = options;
        for (FaceDamage face : damage.faces()) {
            List<Region> regions = face.regions().stream()
                    .filter(r -> injected.contains(r.id()))
                    .toList();
            List<EmptySpace> spaces = EmptySpace.joined(
                    regions,
                    r -> rimReachMm(survey.settings(), options.mix(r.id()).map(survey.settings()::resin)));
            List<UnaryOperator<RepairOptions>> found = spaces.parallelStream()
                    .map(s -> joined(survey, face, s, options, memory))
                    .toList();
            for (UnaryOperator<RepairOptions> with : found) {
                all = with.apply(all);
            }
        }
        return leftAlone(survey, damage, all, memory);
    }

    private static RepairOptions leftAlone(Survey survey, DamageMap damage, RepairOptions options, Memory memory) {
        List<Alone> left = damage.faces().stream()
                .flatMap(f -> f.regions().stream()
                        .filter(r -> options.prospect(r.id()).isPresent())
                        .map(r -> new Alone(survey, f, r, memory)))
                .toList();
        left.parallelStream().forEach(a -> a.guarded(RepairOptions.INJECTION, a::inject));
        RepairOptions all = options;
        for (Alone each : left) {
            all = each.injected(all);
        }
        return all.settled(damage.regions().stream().map(Region::id).toList());
    }

    /** What a space that is filled as one makes of the options. */
    private static UnaryOperator<RepairOptions> joined(
            Survey survey, FaceDamage face, EmptySpace space, RepairOptions options, Memory memory) {
        try {
            if (standsApart(survey, face, space, options)) {
                return all -> all;
            }
            InjectionPlan plan = injection(survey, face, space, memory).plan();
            if (plan == null) {
                return all -> all;
            }
            boolean joined = holes(plan) <= holes(space, options) || standsJoined(survey, face, space, plan);
            return joined ? all -> all.with(plan) : all -> all;
        } catch (RuntimeException e) {
            Region lead = space.lead();
            Defect defect = Defect.of("the plan that fills the rims", new About.OfRegion(lead.id(), middle(lead)), e);
            return all -> all.with(defect);
        }
    }

    /** Whether the frozen plan fills the regions of a space apart, and each still as it was: then it stays so. */
    private static boolean standsApart(Survey survey, FaceDamage face, EmptySpace space, RepairOptions options) {
        List<String> led =
                survey.repairPlan().cups().stream().map(c -> c.region()).toList();
        return space.regions().stream().filter(r -> led.contains(r.id())).count() > 1
                && space.regions().stream().allMatch(r -> options.injection(r.id())
                        .filter(p -> FrozenSpace.of(survey, face.regions(), EmptySpace.of(r))
                                .same(p))
                        .isPresent());
    }

    /** Whether the frozen plan fills a space as one, and it still is as it was. */
    private static boolean standsJoined(Survey survey, FaceDamage face, EmptySpace space, InjectionPlan plan) {
        return survey.repairPlan().cups().stream().anyMatch(c -> c.region().equals(plan.region()))
                && FrozenSpace.of(survey, face.regions(), space).same(plan);
    }

    private static int holes(InjectionPlan plan) {
        return plan.count(Hole.Kind.INJECTION);
    }

    private static int holes(EmptySpace space, RepairOptions options) {
        return space.regions().stream()
                .mapToInt(r -> options.injectionHoles(r.id()).size())
                .sum();
    }

    /** How far a mix gets under a loose skin. */
    private static double rimReachMm(Settings settings, Optional<Resin> mix) {
        return mix.map(resin -> new ReachLaw(
                        resin, settings.drilling(), settings.climate().temperatureC()))
                .map(law -> law.at(settings.thresholds().looseGapMm()).mm())
                .orElse(0.0);
    }
}
