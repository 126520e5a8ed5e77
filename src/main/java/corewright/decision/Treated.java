package corewright.decision;

import corewright.damage.DamageMap;
import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.overlay.Overlay;
import corewright.repair.plan.RepairOptions;
import corewright.stiffness.Treatment;
import corewright.survey.settings.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the choices do to the core, for whoever asks how stiff the deck is after them. */
public final class Treated {
    private final RepairOptions plans;
    private final Settings settings;

    private final Map<String, Quantiles> cavities;

    private Treated(RepairOptions plans, Settings settings, Map<String, Quantiles> cavities) {
        this.plans = plans;
        this.settings = settings;
        this.cavities = cavities;
    }

    /** All that may be dried is dried: bonded wet core, where drying is not refused. */
    public static List<Treatment> dried(DamageMap damage, Methods methods) {
        return damage.regions().stream()
                .filter(r -> methods.regions().stream().anyMatch(d -> d.region().equals(r.id()) && dryable(r, d)))
                .<Treatment>map(r -> new Treatment.Dry(r.face(), r.likely()))
                .toList();
    }

    /** Whether a region is wet and drying is offered. */
    static boolean dryable(Region region, RegionDecision decision) {
        return region.wet() && !decision.notOffered().containsKey(Method.DRY_OUT);
    }

    /**
     * What is advised is done. What must be proven first is taken as injected: where it turns out to be cut out, the deck gets
     * stiffer.
     *
     * @param plans put together
     * @param cavities over the middle of what the readings say of them, by the leading region, where the work tells more
     */
    public static List<Treatment> advised(
            DamageMap damage,
            Methods methods,
            RepairOptions plans,
            Settings settings,
            Map<String, Quantiles> cavities) {
        return done(damage, methods, plans, settings, cavities);
    }

    /** What some methods do, asked within the decision. */
    static List<Treatment> done(
            DamageMap damage,
            Methods methods,
            RepairOptions plans,
            Settings settings,
            Map<String, Quantiles> cavities) {
        Treated treated = new Treated(plans, settings, cavities);
        List<Treatment> treatments = new ArrayList<>();
        for (Region region : damage.regions()) {
            methods.regions().stream()
                    .filter(d -> d.region().equals(region.id()))
                    .findFirst()
                    .flatMap(d -> treated.by(region, d))
                    .ifPresent(treatments::add);
        }
        return treatments;
    }

    private Optional<Treatment> by(Region region, RegionDecision decision) {
        return switch (decision.method()) {
            case DRY_OUT -> Optional.of(new Treatment.Dry(region.face(), region.likely()));
            case RECORE ->
                plans.recore(region.id())
                        .map(p ->
                                new Treatment.Renew(region.face(), Overlay.union(p.cut(), region.likely()), p.core()));
            case INJECT -> filled(region);
            case MONITOR -> decision.firstStep() == null ? Optional.empty() : filled(region);
        };
    }

    private Optional<Treatment> filled(Region region) {
        return plans.injection(region.id())
                .map(p -> new Treatment.Fill(
                        region.face(),
                        region.likely(),
                        settings.resin(p.resin()),
                        Optional.ofNullable(cavities.get(p.region()))));
    }
}
