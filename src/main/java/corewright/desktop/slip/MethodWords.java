package corewright.desktop.slip;

import corewright.assessment.Assessment;
import corewright.damage.Region;
import corewright.decision.Method;
import corewright.decision.RegionDecision;
import corewright.drawing.kit.Figures;
import corewright.overlay.Overlay;
import corewright.sandwich.FootLoadMap;
import corewright.stiffness.PanelStiffness;
import corewright.stiffness.State;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/** The four methods for a region: what each gives back, which is advised, which is not offered and why. */
final class MethodWords {
    private static final GeometryFactory FACTORY = new GeometryFactory();

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

    /** Stiffness under a foot at the region's softest place when all that can be treated so is, 100 as built. */
    private String gives(Region region, Method method) {
        State state =
                switch (method) {
                    case MONITOR, DRY_OUT -> State.AS_FOUND;
                    case INJECT -> State.AFTER_INJECTION;
                    case RECORE -> State.AFTER_RECORE;
                };
        return panel(region)
                .map(p -> Figures.fixed(100 * ofAsBuilt(p, state, softest(p, region)), 0) + " of 100 stiff")
                .orElse("");
    }

    /** The panel most of the region lies on. */
    private Optional<PanelStiffness> panel(Region region) {
        return found.stiffness().of(region.face()).stream()
                .filter(p -> p.panel().area().intersects(region.likely()))
                .filter(p -> !p.in(State.AS_FOUND).feet().places().isEmpty())
                .max(Comparator.comparingDouble(p ->
                        Overlay.intersection(p.panel().area(), region.likely()).getArea()));
    }

    /** The foot's place over the region that gives most as found, as on the owner's page; the nearest where none lies over it. */
    private static FootLoadMap.Place softest(PanelStiffness panel, Region region) {
        Comparator<FootLoadMap.Place> byDistance = Comparator.comparingDouble(
                p -> region.likely().distance(FACTORY.createPoint(new Coordinate(p.x(), p.y()))));
        Comparator<FootLoadMap.Place> softestFirst =
                Comparator.comparingDouble(FootLoadMap.Place::deflectionMm).reversed();
        return panel.in(State.AS_FOUND).feet().places().stream()
                .min(byDistance.thenComparing(softestFirst))
                .orElseThrow();
    }

    /** As built over the state's deflection at a place; the panel's own figure where one of them has no foot there. */
    private static double ofAsBuilt(PanelStiffness panel, State state, FootLoadMap.Place at) {
        return deflection(panel, State.AS_BUILT, at)
                .flatMap(built -> deflection(panel, state, at).map(now -> built / now))
                .orElse(panel.in(state).ofAsBuilt().p50());
    }

    private static Optional<Double> deflection(PanelStiffness panel, State state, FootLoadMap.Place at) {
        return panel.in(state).feet().places().stream()
                .filter(p -> p.x() == at.x() && p.y() == at.y())
                .map(FootLoadMap.Place::deflectionMm)
                .findFirst();
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
                    return name(d.method()) + " is advised: " + String.join(" ", d.reasons()) + first + caution;
                })
                .orElse("");
    }
}
