package corewright.repair.plan;

import corewright.survey.Defect;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What can be done with each region, before anything is chosen: an injection for each loose one, a cut for each.
 *
 * @param refused loose regions that cannot be injected, each with the reason in a sentence
 * @param defects plans that are missing by a defect of this program
 */
public record RepairOptions(
        List<InjectionPlan> injections, List<RecorePlan> recores, Map<String, String> refused, List<Defect> defects) {
    /** What is missing where no injection could be planned by a defect. */
    public static final String INJECTION = "the injection plan";

    public RepairOptions {
        injections = List.copyOf(injections);
        recores = List.copyOf(recores);
        refused = Map.copyOf(refused);
        defects = List.copyOf(defects);
    }

    /** Nothing refused. */
    public RepairOptions(List<InjectionPlan> injections, List<RecorePlan> recores) {
        this(injections, recores, Map.of(), List.of());
    }

    /** The same with this plan in place of those of its regions. */
    public RepairOptions with(InjectionPlan plan) {
        List<InjectionPlan> others = new ArrayList<>(injections);
        others.removeIf(p -> plan.part(p.region()).isPresent());
        others.add(plan);
        return new RepairOptions(others, recores, refused, defects);
    }

    /** The same with something missing. */
    public RepairOptions with(Defect defect) {
        List<Defect> all = new ArrayList<>(defects);
        all.add(defect);
        return new RepairOptions(injections, recores, refused, all);
    }

    /** The injection that fills a region, if it has a cavity. */
    public Optional<InjectionPlan> injection(String region) {
        return injections.stream().filter(p -> p.part(region).isPresent()).findFirst();
    }

    /** Why a region has no injection plan by a defect of this program; empty where that is not why. */
    public Optional<Defect> failed(String region) {
        return defects.stream()
                .filter(d -> d.about().id().equals(region) && d.what().equals(INJECTION))
                .findFirst();
    }

    /** The cut of a region. */
    public Optional<RecorePlan> recore(String region) {
        return recores.stream().filter(p -> p.region().equals(region)).findFirst();
    }
}
