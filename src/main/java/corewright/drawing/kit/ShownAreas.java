package corewright.drawing.kit;

import corewright.damage.Condition;
import corewright.damage.FaceDamage;
import java.util.EnumMap;
import java.util.Map;

/**
 * Core of a face by its condition, so that a row is the sum of what its regions' labels show and the whole the sum of its rows.
 *
 * @param mm2 of each condition, square millimetres; what there is nothing of is left out, but for what is sound
 */
public record ShownAreas(Map<Condition, Double> mm2) {
    public ShownAreas {
        mm2 = new EnumMap<>(mm2);
    }

    /** @param measure whose figures are shown */
    public static ShownAreas of(FaceDamage damage, Measure measure) {
        Map<Condition, Double> rows = new EnumMap<>(Condition.class);
        damage.regions()
                .forEach(r ->
                        rows.merge(r.condition(), measure.shownArea(r.likely().getArea()), Double::sum));
        rows.values().removeIf(mm2 -> mm2 <= 0);
        rows.put(Condition.SOUND, measure.shownArea(damage.areaMm2(Condition.SOUND)));
        return new ShownAreas(rows);
    }

    /** The core of the whole face. */
    public double allMm2() {
        return mm2.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    /** None, where there is nothing of it. */
    public double mm2(Condition condition) {
        return mm2.getOrDefault(condition, 0.0);
    }
}
