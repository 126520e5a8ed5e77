package corewright.decision;

import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.decision.drying.DryingTime;
import corewright.decision.drying.DryingTimes;
import corewright.repair.plan.RepairOptions;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The method of each region by the rules and by what people decided, before plans are put together.
 *
 * @param regions faces in the survey's order
 * @param drying of every wet region in every way
 */
public record Methods(List<RegionDecision> regions, List<DryingTime> drying) {
    /** A shorter edge in common than a raster cell's is a corner. */
    private static final double SHARED_EDGE_MM = 25;

    public Methods {
        regions = List.copyOf(regions);
        drying = List.copyOf(drying);
    }

    /**
     * What the rules say.
     *
     * @param options of each region alone
     */
    public static Methods of(Survey survey, DamageMap damage, RepairOptions options) {
        return under(survey, damage, options);
    }

    /** The same of a survey as it might be, asked within the decision. */
    static Methods under(Survey survey, DamageMap damage, RepairOptions options) {
        List<DryingTime> drying = DryingTimes.of(survey, damage);
        List<RegionDecision> regions = new ArrayList<>();
        Overriding people = new Overriding(survey, options);
        for (FaceDamage face : damage.faces()) {
            List<Facts> facts = face.regions().stream()
                    .map(r -> facts(survey, face, r, options, drying))
                    .toList();
            for (Facts each : joined(facts)) {
                regions.add(people.of(each.region(), Rules.decide(each)));
            }
        }
        return new Methods(regions, drying);
    }

    static Facts facts(Survey survey, FaceDamage face, Region region, RepairOptions options, List<DryingTime> drying) {
        return new Facts(
                survey.settings().thresholds(),
                options,
                Evidence.of(survey, face, region),
                drying.stream().filter(t -> t.region().equals(region.id())).toList(),
                survey.settings().drying().daysAvailable(),
                survey.judgements().rules(),
                Optional.empty());
    }

    /** With what is cut out beside each: from wet or rotted core that comes out to bonded wet core that touches it, and on. */
    private static List<Facts> joined(List<Facts> facts) {
        List<Facts> all = new ArrayList<>(facts);
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int i = 0; i < all.size(); i++) {
                Facts each = all.get(i);
                if (!each.bondedWet() || each.cutBeside().isPresent()) {
                    continue;
                }
                Optional<Facts> cut = all.stream()
                        .filter(f -> f.lost() && (f.rotted() || f.region().wet())
                                || f.cutBeside().isPresent())
                        .filter(f -> Rules.decide(f).method() == Method.RECORE) // unless a person set that rule aside
                        .filter(f -> f.region().bay().equals(each.region().bay()))
                        .filter(f -> Evidence.sharedEdgeMm(f.region(), each.region()) >= SHARED_EDGE_MM)
                        .findFirst();
                if (cut.isPresent()) {
                    all.set(i, each.beside(cut.get().region().id()));
                    changed = true;
                }
            }
        }
        return all;
    }

    /** Names of the regions of a method, in order. */
    public Set<String> of(Method method) {
        return regions.stream()
                .filter(d -> d.method() == method)
                .map(RegionDecision::region)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }
}
