package corewright.comparison;

import corewright.assessment.Assessment;
import corewright.damage.Quantiles;
import corewright.sandwich.FootLoadMap;
import corewright.stiffness.PanelStiffness;
import corewright.stiffness.State;
import corewright.stiffness.StateStiffness;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Polygon;

/** Stiffness of the panels that both surveys have, at the place that was softest in the earlier one. */
final class Panels {
    /** From the distance of P10 and P90 of a normal to that of its one and 199 in 200: 2.576 / 1.282. */
    private static final double WIDEN = 2.576 / 1.282;

    /** A foot of the other survey's grid is the same place within this. */
    private static final double SAME_MM = 60;

    private Panels() {}

    static List<Change> of(FaceFigures figures, Assessment before, Assessment after) {
        List<Change> changes = new ArrayList<>();
        String face = figures.before.face().name();
        for (PanelStiffness was : before.stiffness().of(face)) {
            after.stiffness().of(face).stream()
                    .filter(p -> same(was.panel().area(), p.panel().area()))
                    .findFirst()
                    .flatMap(is -> change(figures, was, is))
                    .ifPresent(changes::add);
        }
        return changes;
    }

    private static boolean same(Polygon one, Polygon other) {
        return one.buffer(SAME_MM / 2).covers(other)
                && other.buffer(SAME_MM / 2).covers(one);
    }

    private static Optional<Change> change(FaceFigures figures, PanelStiffness was, PanelStiffness is) {
        StateStiffness asWas = was.in(State.AS_FOUND);
        StateStiffness asIs = is.in(State.AS_FOUND);
        Optional<FootLoadMap.Place> there = asIs.feet().places().stream()
                .min(Comparator.comparingDouble(p -> away(p, was)))
                .filter(p -> away(p, was) <= SAME_MM);
        if (there.isEmpty()) {
            return Optional.empty();
        }
        double before = asWas.stiffnessNPerMm();
        double after = asIs.feet().stiffnessNPerMm(there.get());
        double difference = after - before;
        double low = Math.hypot(below(asIs.ofAsBuilt(), after), above(asWas.ofAsBuilt(), before));
        double high = Math.hypot(above(asIs.ofAsBuilt(), after), below(asWas.ofAsBuilt(), before));
        Limits limits = new Limits(difference - low, difference + high);
        String name = was.panel().name();
        Change area = figures.of(name, Quantity.DAMAGED, was.panel().area()).change();
        String why = area.why();
        Change change = why.isEmpty()
                ? new Change(was.panel().face(), name, Quantity.STIFFNESS, before, after, limits, Double.NaN, "")
                : Change.open(was.panel().face(), name, Quantity.STIFFNESS, before, after, why);
        if (why.isEmpty() && !(difference > 0 ? area.fell() : area.rose())) {
            change = change.doubted("It follows from the map, whose change on this panel is not proven.");
        }
        return Optional.of(
                was.states().containsKey(State.AFTER_PLAN)
                        ? change.promising(was.in(State.AFTER_PLAN).stiffnessNPerMm())
                        : change);
    }

    private static double away(FootLoadMap.Place place, PanelStiffness panel) {
        return Math.hypot(
                place.x() - panel.softest().xMm(), place.y() - panel.softest().yMm());
    }

    /** How much less a stiffness may be, from the share's range about its middle. */
    private static double below(Quantiles ofAsBuilt, double stiffness) {
        return WIDEN * stiffness * (ofAsBuilt.p50() - ofAsBuilt.p10()) / ofAsBuilt.p50();
    }

    private static double above(Quantiles ofAsBuilt, double stiffness) {
        return WIDEN * stiffness * (ofAsBuilt.p90() - ofAsBuilt.p50()) / ofAsBuilt.p50();
    }
}
