package corewright.decision;

import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.RecorePlan;
import corewright.survey.Finding;
import java.util.List;

/**
 * What is advised for the whole survey.
 *
 * @param injections plans of the regions to be injected, batches numbered through the day
 * @param recores plans of the regions to be opened
 * @param choices from least to most done, one of them advised
 * @param weighing what stands behind it
 */
public record Decision(
        List<RegionDecision> regions,
        List<InjectionPlan> injections,
        List<RecorePlan> recores,
        List<Choice> choices,
        List<BuyingItem> buying,
        List<Finding> findings,
        Weighing weighing) {
    public Decision {
        regions = List.copyOf(regions);
        injections = List.copyOf(injections);
        recores = List.copyOf(recores);
        choices = List.copyOf(choices);
        buying = List.copyOf(buying);
        findings = List.copyOf(findings);
    }

    /** Nothing weighed. */
    public Decision(
            List<RegionDecision> regions,
            List<InjectionPlan> injections,
            List<RecorePlan> recores,
            List<Choice> choices,
            List<BuyingItem> buying,
            List<Finding> findings) {
        this(regions, injections, recores, choices, buying, findings, Weighing.NONE);
    }

    /** The decision on a region. */
    public RegionDecision on(String region) {
        return regions.stream()
                .filter(d -> d.region().equals(region))
                .findFirst()
                .orElseThrow();
    }
}
