package corewright.repair.plan;

import corewright.survey.Defect;
import corewright.survey.Spot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What can be done with each region, before anything is chosen: an injection for each loose one, a cut for each.
 *
 * @param prospects injections that are not planned yet
 * @param refused loose regions that cannot be injected, each with the reason in a sentence
 * @param defects plans that are missing by a defect of this program
 */
public record RepairOptions(
        List<InjectionPlan> injections,
        List<Prospect> prospects,
        List<RecorePlan> recores,
        Map<String, String> refused,
        List<Defect> defects) {
    /** What is missing where no injection could be planned by a defect. */
    public static final String INJECTION = "the injection plan";

    public RepairOptions {
        injections = List.copyOf(injections);
        prospects = List.copyOf(prospects);
        recores = List.copyOf(recores);
        refused = Map.copyOf(refused);
        defects = List.copyOf(defects);
    }

    /** Nothing refused. */
    public RepairOptions(List<InjectionPlan> injections, List<RecorePlan> recores) {
        this(injections, List.of(), recores, Map.of(), List.of());
    }

    /** The same with this plan in place of those of its regions. */
    public RepairOptions with(InjectionPlan plan) {
        List<InjectionPlan> others = new ArrayList<>(injections);
        others.removeIf(p -> plan.part(p.region()).isPresent());
        others.add(plan);
        List<Prospect> open = new ArrayList<>(prospects);
        open.removeIf(p -> plan.part(p.region()).isPresent());
        return new RepairOptions(others, open, recores, refused, defects);
    }

    /** The same with something missing. */
    public RepairOptions with(Defect defect) {
        List<Defect> all = new ArrayList<>(defects);
        all.add(defect);
        return new RepairOptions(injections, prospects, recores, refused, all);
    }

    /**
     * The same, nothing being left to plan.
     *
     * @param order of the regions
     */
    public RepairOptions settled(List<String> order) {
        List<InjectionPlan> sorted = injections.stream()
                .sorted(Comparator.comparingInt(p -> order.indexOf(p.region())))
                .toList();
        return new RepairOptions(sorted, List.of(), recores, refused, defects);
    }

    /** The injection that fills a region, if it has a cavity. */
    public Optional<InjectionPlan> injection(String region) {
        return injections.stream().filter(p -> p.part(region).isPresent()).findFirst();
    }

    /** The injection of a region that is not planned yet. */
    public Optional<Prospect> prospect(String region) {
        return prospects.stream().filter(p -> p.region().equals(region)).findFirst();
    }

    /** Name of the mix that a region is injected with. */
    public Optional<String> mix(String region) {
        return injection(region).map(InjectionPlan::resin).or(() -> prospect(region)
                .map(Prospect::resin));
    }

    /** Where the injection holes of a region are, planned or not. */
    public List<Spot> injectionHoles(String region) {
        return injection(region)
                .map(p -> p.holes().stream()
                        .filter(h -> h.kind() == Hole.Kind.INJECTION)
                        .map(Hole::spot)
                        .toList())
                .or(() -> prospect(region).map(Prospect::holes))
                .orElse(List.of());
    }

    /** Whether a region has an injection, planned or not. */
    public boolean fillable(String region) {
        return injection(region).isPresent() || prospect(region).isPresent();
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
