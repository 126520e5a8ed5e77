package corewright.decision;

import corewright.damage.DamageMap;
import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.overlay.Overlay;
import corewright.repair.plan.RepairOptions;
import corewright.stiffness.PanelStiffness;
import corewright.stiffness.State;
import corewright.stiffness.Stiffness;
import corewright.stiffness.StiffnessMap;
import corewright.stiffness.Treatment;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What each choice gives back of the worst panel's stiffness, over the one as built. */
final class PanelGain {
    private final Survey survey;
    private final DamageMap damage;
    private final RepairOptions options;
    private final Optional<PanelStiffness> worst;

    PanelGain(Survey survey, DamageMap damage, StiffnessMap stiffness, RepairOptions options) {
        this.survey = survey;
        this.damage = damage;
        this.options = options;
        worst = stiffness.worst();
    }

    Optional<Quantiles> left() {
        return worst.map(p -> p.in(State.AS_FOUND).ofAsBuilt());
    }

    Optional<Quantiles> dried() {
        return with(onFace().filter(Region::wet)
                .<Treatment>map(r -> new Treatment.Dry(r.likely()))
                .toList());
    }

    Optional<Quantiles> renewed() {
        return worst.map(p -> p.in(State.AFTER_RECORE).ofAsBuilt());
    }

    /** What must be proven first is taken as injected: where it turns out to be cut out, the deck gets stiffer. */
    Optional<Quantiles> advised(List<RegionDecision> decisions) {
        List<Treatment> treatments = new ArrayList<>();
        onFace().forEach(region -> decisions.stream()
                .filter(d -> d.region().equals(region.id()))
                .findFirst()
                .flatMap(d -> treatment(region, d))
                .ifPresent(treatments::add));
        return with(treatments);
    }

    private java.util.stream.Stream<Region> onFace() {
        return worst.stream().flatMap(p -> damage.face(p.panel().face()).regions().stream());
    }

    private Optional<Treatment> treatment(Region region, RegionDecision decision) {
        return switch (decision.method()) {
            case DRY_OUT -> Optional.of(new Treatment.Dry(region.likely()));
            case RECORE ->
                options.recore(region.id())
                        .map(p -> new Treatment.Renew(Overlay.union(p.cut(), region.likely()), p.core()));
            case INJECT -> filled(region);
            case MONITOR -> decision.firstStep() == null ? Optional.empty() : filled(region);
        };
    }

    private Optional<Treatment> filled(Region region) {
        return options.injection(region.id())
                .map(p -> new Treatment.Fill(region.likely(), survey.settings().resin(p.resin())));
    }

    private Optional<Quantiles> with(List<Treatment> treatments) {
        return treatments.isEmpty() ? left() : worst.map(p -> Stiffness.treated(survey, damage, p, treatments));
    }
}
