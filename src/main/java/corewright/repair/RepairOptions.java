package corewright.repair;

import java.util.List;
import java.util.Optional;

/** What can be done with each region, before anything is chosen: an injection for each loose one, a cut for each. */
public record RepairOptions(List<InjectionPlan> injections, List<RecorePlan> recores) {
    public RepairOptions {
        injections = List.copyOf(injections);
        recores = List.copyOf(recores);
    }

    /** The injection of a region, if it has a cavity. */
    public Optional<InjectionPlan> injection(String region) {
        return injections.stream().filter(p -> p.region().equals(region)).findFirst();
    }

    /** The cut of a region. */
    public Optional<RecorePlan> recore(String region) {
        return recores.stream().filter(p -> p.region().equals(region)).findFirst();
    }
}
