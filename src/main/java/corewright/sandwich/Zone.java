package corewright.sandwich;

import corewright.sandwich.spec.CoreMaterial;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Patch;
import java.util.ArrayList;
import java.util.List;

/**
 * What lies between the skins in one zone of a panel.
 *
 * @param bonded whether the core joins both skins; if not, what remains of it rides on the inner skin
 * @param material of the core, or of what remains
 * @param depthMm empty height under the outer skin, 0 where bonded
 */
record Zone(boolean bonded, CoreMaterial material, double depthMm) {
    /** Zone 0 is the panel as built, zone k + 1 is patch k. */
    static List<Zone> of(PanelSpec panel) {
        List<Zone> zones = new ArrayList<>();
        zones.add(new Zone(true, panel.core().material(), 0));
        for (Patch patch : panel.patches()) {
            if (patch instanceof Patch.Loose loose) {
                zones.add(new Zone(false, loose.rest().orElse(panel.core().material()), loose.depthMm()));
            } else if (patch instanceof Patch.Core core) {
                zones.add(new Zone(true, core.material(), 0));
            }
        }
        return zones;
    }
}
