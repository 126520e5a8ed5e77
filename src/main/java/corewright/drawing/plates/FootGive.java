package corewright.drawing.plates;

import corewright.sandwich.FootLoadMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/** How far a panel gives under a foot anywhere: linear between the places of its map, level beyond the last. */
public final class FootGive {
    private final TreeMap<Double, TreeMap<Double, Double>> rows = new TreeMap<>();

    public FootGive(FootLoadMap feet) {
        feet.places()
                .forEach(p -> rows.computeIfAbsent(p.y(), y -> new TreeMap<>()).put(p.x(), p.deflectionMm()));
    }

    /** Millimetres under a foot with its centre there. */
    public double at(double x, double y) {
        return between(
                rows.floorEntry(y),
                rows.ceilingEntry(y),
                y,
                row -> between(row.floorEntry(x), row.ceilingEntry(x), x, v -> v));
    }

    private static <V> double between(
            Map.@Nullable Entry<Double, V> below,
            Map.@Nullable Entry<Double, V> above,
            double at,
            ToDoubleFunction<V> value) {
        if (below == null) {
            if (above == null) {
                throw new IllegalArgumentException("no foot stands on the panel");
            }
            return value.applyAsDouble(above.getValue());
        }
        if (above == null) {
            return value.applyAsDouble(below.getValue());
        }
        double span = above.getKey() - below.getKey();
        double share = span == 0 ? 0 : (at - below.getKey()) / span;
        return (1 - share) * value.applyAsDouble(below.getValue()) + share * value.applyAsDouble(above.getValue());
    }
}
