package corewright.repair.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;

/**
 * From low to high; on a flat face from the end far from the main vent towards it. Among the holes that are nearly as low
 * as the lowest one left, the nearest to the last is next.
 */
public final class WorkingOrder {
    /** Holes within this share of a reach count as equally low. Practice. */
    private static final double LEVEL_SHARE = 0.5;

    private WorkingOrder() {}

    /**
     * Positions in {@code holes}, in working order.
     *
     * @param mainVent null where there is none
     */
    public static List<Integer> of(List<Coordinate> holes, Slope slope, @Nullable Coordinate mainVent, double reachMm) {
        ToDoubleFunction<Coordinate> level =
                slope.sloping() || mainVent == null ? slope::height : at -> -at.distance(mainVent);
        List<Integer> left = new ArrayList<>();
        for (int i = 0; i < holes.size(); i++) {
            left.add(i);
        }
        List<Integer> order = new ArrayList<>();
        Coordinate last = null;
        while (!left.isEmpty()) {
            double lowest = left.stream()
                    .mapToDouble(i -> level.applyAsDouble(holes.get(i)))
                    .min()
                    .orElseThrow();
            int next = -1;
            double least = Double.POSITIVE_INFINITY;
            for (int i : left) {
                double above = level.applyAsDouble(holes.get(i)) - lowest;
                double way = last == null ? above : last.distance(holes.get(i));
                if (above <= LEVEL_SHARE * reachMm && way < least) {
                    least = way;
                    next = i;
                }
            }
            order.add(next);
            left.remove(Integer.valueOf(next));
            last = holes.get(next);
        }
        return order;
    }
}
