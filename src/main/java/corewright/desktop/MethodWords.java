package corewright.desktop;

import corewright.assessment.Assessment;
import corewright.damage.Region;
import corewright.decision.Method;
import corewright.decision.RegionDecision;
import corewright.drawing.Figures;
import corewright.stiffness.PanelStiffness;
import corewright.stiffness.State;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The four methods for a region: what each gives back, which is advised, which is not offered and why. */
final class MethodWords {
    private final Assessment found;
    private final boolean behind;

    MethodWords(Assessment found, boolean behind) {
        this.found = found;
        this.behind = behind;
    }

    private Optional<RegionDecision> decision(Region region) {
        return found.decision().regions().stream()
                .filter(d -> d.region().equals(region.id()))
                .findFirst();
    }

    /** None while the decisions belong to an earlier state. */
    List<Slip.MethodKey> keys(Region region) {
        Optional<RegionDecision> decision = behind ? Optional.empty() : decision(region);
        List<Slip.MethodKey> keys = new ArrayList<>();
        decision.ifPresent(d -> {
            for (Method method : Method.values()) {
                keys.add(key(region, d, method));
            }
        });
        return keys;
    }

    private Slip.MethodKey key(Region region, RegionDecision d, Method method) {
        String why = d.notOffered().getOrDefault(method, "");
        Slip.Standing standing = d.method() == method
                ? Slip.Standing.ADVISED
                : why.isEmpty() ? Slip.Standing.OFFERED : Slip.Standing.NOT_OFFERED;
        String note = standing == Slip.Standing.NOT_OFFERED ? "not offered" : gives(region, method);
        return new Slip.MethodKey(name(method), note, standing, why);
    }

    static String name(Method method) {
        return switch (method) {
            case MONITOR -> "Monitor";
            case DRY_OUT -> "Dry out";
            case INJECT -> "Inject";
            case RECORE -> "Cut out, recore";
        };
    }

    /** Stiffness of its panel when all that can be treated so is, 100 as built. */
    private String gives(Region region, Method method) {
        State state =
                switch (method) {
                    case MONITOR, DRY_OUT -> State.AS_FOUND;
                    case INJECT -> State.AFTER_INJECTION;
                    case RECORE -> State.AFTER_RECORE;
                };
        return panel(region)
                .map(p -> Figures.fixed(100 * p.in(state).ofAsBuilt().p50(), 0) + " of 100 stiff")
                .orElse("");
    }

    /** The panel most of the region lies on. */
    private Optional<PanelStiffness> panel(Region region) {
        return found.stiffness().of(region.face()).stream()
                .filter(p -> p.panel().area().intersects(region.likely()))
                .max(Comparator.comparingDouble(
                        p -> p.panel().area().intersection(region.likely()).getArea()));
    }

    String advice(Region region) {
        if (behind) {
            return "Advice follows when the calculation is through.";
        }
        return decision(region)
                .map(d -> {
                    String first = d.firstStep() == null ? "" : " First: " + d.firstStep();
                    return name(d.method()) + " is advised: " + String.join(" ", d.reasons()) + first;
                })
                .orElse("");
    }
}
