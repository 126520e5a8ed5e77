package corewright.comparison;

import corewright.damage.Condition;
import java.util.Set;
import org.locationtech.jts.geom.Polygon;

/**
 * A place that is damaged in the second survey and was not in the first.
 *
 * @param id N1, N2 ... over the whole comparison
 * @param regions ids of the second survey's regions in it
 * @param fate proven new, not proven, not read before, or not to be compared
 */
public record NewPlace(
        String id,
        Polygon area,
        Set<String> regions,
        Set<Condition> conditions,
        RegionChange.Fate fate,
        Change figure) {
    public NewPlace {
        regions = Set.copyOf(regions);
        conditions = Set.copyOf(conditions);
    }

    NewPlace named(String name) {
        Change f = figure;
        return new NewPlace(
                name,
                area,
                regions,
                conditions,
                fate,
                new Change(f.face(), name, f.quantity(), f.before(), f.after(), f.limits(), f.promised(), f.why()));
    }
}
