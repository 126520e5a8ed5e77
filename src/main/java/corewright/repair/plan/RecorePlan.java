package corewright.repair.plan;

import java.util.List;
import org.locationtech.jts.geom.Geometry;

/**
 * How one region would be opened and given a new core.
 *
 * @param cut the cut through the outer skin: the likely extent and a margin, inside the bay, corners rounded
 * @param coreMm thickness of the new core
 * @param core name of the core material
 * @param epoxyG mixed epoxy for wetting out, bedding and filling
 * @param cautions what can hurt or spoil
 */
public record RecorePlan(
        String region, Geometry cut, double coreMm, String core, double epoxyG, List<String> cautions) {
    public RecorePlan {
        cautions = List.copyOf(cautions);
    }

    /** The same for the region of that name. */
    public RecorePlan named(String other) {
        return new RecorePlan(other, cut, coreMm, core, epoxyG, cautions);
    }
}
