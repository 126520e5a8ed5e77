package corewright.desktop.slip;

import corewright.assessment.Assessment;
import corewright.damage.Region;
import corewright.decision.Method;
import corewright.decision.Option;
import corewright.decision.RegionDecision;
import corewright.drawing.kit.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The four methods for a region: what each gives back, which is advised, which is not offered and why. */
final class MethodWords {
    private final Assessment found;
    private final boolean old;

    MethodWords(Assessment found, boolean old) {
        this.found = found;
        this.old = old;
    }

    private Optional<RegionDecision> decision(Region region) {
        return found.decision().regions().stream()
                .filter(d -> d.region().equals(region.id()))
                .findFirst();
    }

    /** None while the decisions belong to an earlier state. */
    List<Slip.MethodKey> keys(Region region) {
        Optional<RegionDecision> decision = old ? Optional.empty() : decision(region);
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
        return new Slip.MethodKey(method, name(method), note, standing, why);
    }

    static String name(Method method) {
        return switch (method) {
            case MONITOR -> "Monitor";
            case DRY_OUT -> "Dry out";
            case INJECT -> "Inject";
            case RECORE -> "Cut out, recore";
        };
    }

    /** As the step Repair has it: of the panel that the option names when this region alone is treated so. */
    private String gives(Region region, Method method) {
        return options(region)
                .filter(o -> o.method().equals(method.word()))
                .findFirst()
                .flatMap(Option::stiffness)
                .map(q -> Figures.fixed(100 * q.p50(), 0) + " of 100 stiff")
                .orElse("");
    }

    private Stream<Option> options(Region region) {
        return found.decision().weighing().options().stream()
                .filter(o -> o.region().equals(region.id()));
    }

    /** Whose stiffness the methods' figures are; empty where none was calculated. */
    private String stiffOf(Region region) {
        return options(region)
                .map(Option::panel)
                .filter(p -> !p.isEmpty())
                .findFirst()
                .map(p -> " Stiff: " + p + " at its softest when " + region.id() + " alone is treated so.")
                .orElse("");
    }

    String advice(Region region) {
        if (old) {
            return "Advice follows when the calculation is through.";
        }
        return decision(region)
                .map(d -> {
                    String first = d.firstStep() == null ? "" : " First: " + d.firstStep();
                    String safety =
                            found.safety(r -> r.id().equals(region.id())).brief();
                    String caution = safety.isEmpty() ? "" : " Caution: " + safety + ".";
                    return name(d.method()) + " is advised: " + String.join(" ", d.reasons()) + first + caution
                            + stiffOf(region);
                })
                .orElse("");
    }
}
