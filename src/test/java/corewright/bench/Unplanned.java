package corewright.bench;

import corewright.damage.DamageMap;
import corewright.repair.plan.RepairOptions;
import corewright.survey.About;
import corewright.survey.Defect;
import corewright.survey.Spot;
import java.util.List;
import java.util.Map;

/**
 * Options as if every plan were missing by a defect. Planning takes most of a decision's time and moves no method but where none
 * could be planned: there, what would be cut out counts as injected.
 */
final class Unplanned {
    private Unplanned() {}

    static RepairOptions of(DamageMap map) {
        List<Defect> missing = map.regions().stream()
                .map(r -> new Defect(
                        RepairOptions.INJECTION,
                        new About.OfRegion(
                                r.id(),
                                new Spot(r.face(), r.label().getX(), r.label().getY())),
                        "left out"))
                .toList();
        return new RepairOptions(List.of(), List.of(), List.of(), Map.of(), missing);
    }
}
