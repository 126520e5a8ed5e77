package corewright.repair.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What can be done with each region, before anything is chosen: an injection for each loose one, a cut for each.
 *
 * @param refused loose regions that cannot be injected, each with the reason in a sentence
 */
public record RepairOptions(List<InjectionPlan> injections, List<RecorePlan> recores, Map<String, String> refused) {
    public RepairOptions {
        injections = List.copyOf(injections);
        recores = List.copyOf(recores);
        refused = Map.copyOf(refused);
    }

    /** Nothing refused. */
    public RepairOptions(List<InjectionPlan> injections, List<RecorePlan> recores) {
        this(injections, recores, Map.of());
    }

    /** The same with this plan in place of those of its regions. */
    public RepairOptions with(InjectionPlan plan) {
        List<InjectionPlan> others = new ArrayList<>(injections);
        others.removeIf(p -> plan.part(p.region()).isPresent());
        others.add(plan);
        return new RepairOptions(others, recores, refused);
    }

    /** The injection that fills a region, if it has a cavity. */
    public Optional<InjectionPlan> injection(String region) {
        return injections.stream().filter(p -> p.part(region).isPresent()).findFirst();
    }

    /** The cut of a region. */
    public Optional<RecorePlan> recore(String region) {
        return recores.stream().filter(p -> p.region().equals(region)).findFirst();
    }
}
