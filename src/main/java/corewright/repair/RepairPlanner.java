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
import corewright.survey.Settings;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** Plans what a repair of each region would take. */
public final class RepairPlanner {
    private RepairPlanner() {}

    /** An injection for each loose region and a cut for each region. */
    public static RepairOptions plan(Survey survey, DamageMap damage) {
        List<InjectionPlan> injections = new ArrayList<>();
        List<RecorePlan> recores = new ArrayList<>();
        Map<String, String> refused = new LinkedHashMap<>();
        for (FaceDamage face : damage.faces()) {
            for (Region region : face.regions()) {
                if (region.condition().loose()) {
                    InjectionPlanner.Outcome outcome = InjectionPlanner.plan(survey, face, EmptySpace.of(region));
                    if (outcome.plan() != null) {
                        injections.add(outcome.plan());
                    } else {
                        refused.put(region.id(), outcome.refusal());
                    }
                }
                recores.add(RecorePlanner.plan(survey, face, region));
            }
        }
        return new RepairOptions(injections, recores, refused);
    }

    /**
     * The same with one plan for each void and the rims that are filled from it, in place of a plan for each, where that
     * takes no more holes.
     *
     * @param injected whether a region is to be injected at all
     */
    public static RepairOptions together(
            Survey survey, DamageMap damage, RepairOptions options, Predicate<Region> injected) {
        RepairOptions all = options;
        for (FaceDamage face : damage.faces()) {
            List<Region> regions = face.regions().stream().filter(injected).toList();
            for (EmptySpace space : EmptySpace.joined(regions, r -> rimReachMm(survey.settings(), options, r))) {
                InjectionPlan plan = InjectionPlanner.plan(survey, face, space).plan();
                all = plan == null || holes(plan) > holes(space, options) ? all : all.with(plan);
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
