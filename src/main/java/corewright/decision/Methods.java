package corewright.decision;

import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.repair.plan.RepairOptions;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The method of each region by the rules, before plans are put together.
 *
 * @param regions faces in the survey's order
 */
public record Methods(List<RegionDecision> regions) {
    public Methods {
        regions = List.copyOf(regions);
    }

    /**
     * What the rules say.
     *
     * @param options of each region alone
     */
    public static Methods of(Survey survey, DamageMap damage, RepairOptions options) {
        List<RegionDecision> regions = new ArrayList<>();
        for (FaceDamage face : damage.faces()) {
            for (Region region : face.regions()) {
                Evidence evidence = Evidence.of(survey, face, region);
                regions.add(Rules.decide(survey.settings().thresholds(), options, evidence));
            }
        }
        return new Methods(regions);
    }

    /** Names of the regions of a method, in order. */
    public Set<String> of(Method method) {
        return regions.stream()
                .filter(d -> d.method() == method)
                .map(RegionDecision::region)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }
}
