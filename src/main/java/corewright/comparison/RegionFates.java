package corewright.comparison;

import corewright.comparison.RegionChange.Fate;
import corewright.damage.Condition;
import corewright.damage.Region;
import corewright.decision.Method;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What became of a region: what was promised of it, and what the later readings find in its place. */
final class RegionFates {
    /** With less of it left a region counts as mended: what is left is told all the same. Our own choice. */
    private static final double MENDED_TO = 0.1;

    private RegionFates() {}

    /** @param method what was advised; null where no plan was made */
    static RegionChange of(FaceFigures figures, Region region, @Nullable Method method) {
        List<Change> changes = new ArrayList<>();
        for (Quantity quantity : quantities(region.condition(), method)) {
            Change change = figures.of(region.id(), quantity, region.likely()).change();
            changes.add(promises(method, quantity) ? change.promising(0) : change);
        }
        double left = FaceFigures.mapped(figures.after, Quantity.DAMAGED, region.likely());
        return new RegionChange(region, method, fate(figures, region, changes.get(0)), changes, left);
    }

    private static Fate fate(FaceFigures figures, Region region, Change first) {
        if (!figures.readAgain(first.quantity(), region.likely())) {
            return Fate.NOT_READ;
        }
        if (first.limits() == null) {
            return Fate.NOT_COMPARABLE;
        }
        if (!first.fell()) {
            return Fate.NOT_PROVEN;
        }
        return first.after() <= MENDED_TO * first.before() ? Fate.MENDED : Fate.PARTLY;
    }

    /** The first is what the method is there to take away. */
    private static List<Quantity> quantities(Condition condition, @Nullable Method method) {
        List<Quantity> all = new ArrayList<>();
        boolean wet = condition == Condition.WET || condition == Condition.WET_DELAMINATED;
        if (condition.loose() && method == Method.INJECT) {
            all.add(Quantity.LOOSE);
        } else if (wet && method == Method.DRY_OUT) {
            all.add(Quantity.WATER);
        }
        all.add(Quantity.DAMAGED);
        if (condition.loose() && !all.contains(Quantity.LOOSE)) {
            all.add(Quantity.LOOSE);
        }
        if (wet && !all.contains(Quantity.WATER)) {
            all.add(Quantity.WATER);
        }
        if (condition == Condition.VOID) {
            all.add(Quantity.VOID_VOLUME);
        }
        return all;
    }

    private static boolean promises(@Nullable Method method, Quantity quantity) {
        if (method == null || method == Method.MONITOR) {
            return false;
        }
        return switch (quantity) {
            case WATER -> method != Method.INJECT;
            case LOOSE, VOID, VOID_VOLUME -> method != Method.DRY_OUT;
            case DAMAGED -> method == Method.RECORE;
            default -> false;
        };
    }
}
