package corewright.repair;

import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.repair.mix.ReachLaw;
import corewright.repair.plan.EmptySpace;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.RecorePlan;
import corewright.repair.plan.RepairOptions;
import corewright.repair.plan.SpaceTask;
import corewright.reuse.Memory;
import corewright.survey.Defect;
import corewright.survey.Settings;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Plans what a repair of each region would take. */
public final class RepairPlanner {
    private RepairPlanner() {}

    /**
     * An injection for each loose region and a cut for each region. A defect costs its own plan.
     *
     * @param memory gives the plans of what is as it was
     */
    public static RepairOptions plan(Survey survey, DamageMap damage, Memory memory) {
        List<InjectionPlan> injections = new ArrayList<>();
        List<RecorePlan> recores = new ArrayList<>();
        Map<String, String> refused = new LinkedHashMap<>();
        List<Defect> defects = new ArrayList<>();
        for (FaceDamage face : damage.faces()) {
            for (Region region : face.regions()) {
                if (region.condition().loose()) {
                    try {
                        InjectionPlanner.Outcome outcome = injection(survey, face, EmptySpace.of(region), memory);
                        if (outcome.plan() != null) {
                            injections.add(outcome.plan());
                        } else {
                            refused.put(region.id(), outcome.refusal());
                        }
                    } catch (RuntimeException e) {
                        defects.add(Defect.of(RepairOptions.INJECTION, region.id(), middle(region), e));
                    }
                }
                try {
                    RecorePlanner.Task task = RecorePlanner.Task.of(survey, face, region);
                    recores.add(memory.of(task, RecorePlanner::plan).named(region.id()));
                } catch (RuntimeException e) {
                    defects.add(Defect.of("the cut", region.id(), middle(region), e));
                }
            }
        }
        return new RepairOptions(injections, recores, refused, defects);
    }

    private static InjectionPlanner.Outcome injection(Survey survey, FaceDamage face, EmptySpace space, Memory memory) {
        List<String> names = space.regions().stream().map(Region::id).toList();
        return memory.of(SpaceTask.of(survey, face, space), InjectionPlanner::plan)
                .named(names);
    }

    private static Spot middle(Region region) {
        return new Spot(region.face(), region.label().getX(), region.label().getY());
    }

    /**
     * The same with one plan for each void and the rims that are filled from it, in place of a plan for each, where that
     * takes no more holes.
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
            for (EmptySpace space : EmptySpace.joined(regions, r -> rimReachMm(survey.settings(), options, r))) {
                try {
                    InjectionPlan plan = injection(survey, face, space, memory).plan();
                    all = plan == null || holes(plan) > holes(space, options) ? all : all.with(plan);
                } catch (RuntimeException e) {
                    Region lead = space.lead();
                    all = all.with(Defect.of("the plan that fills the rims", lead.id(), middle(lead), e));
                }
            }
        }
        return all;
    }

    private static int holes(InjectionPlan plan) {
        return plan.count(Hole.Kind.INJECTION);
    }

    private static int holes(EmptySpace space, RepairOptions options) {
        return space.regions().stream()
                .flatMap(r -> options.injection(r.id()).stream())
                .mapToInt(RepairPlanner::holes)
                .sum();
    }

    /** How far the mix of a void gets under a loose skin. */
    private static double rimReachMm(Settings settings, RepairOptions options, Region region) {
        return options.injection(region.id())
                .map(p -> new ReachLaw(
                        settings.resin(p.resin()),
                        settings.drilling(),
                        settings.climate().temperatureC()))
                .map(law -> law.at(settings.thresholds().looseGapMm()).mm())
                .orElse(0.0);
    }
}
