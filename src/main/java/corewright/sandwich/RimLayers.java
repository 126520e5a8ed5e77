package corewright.sandwich;

import corewright.sandwich.spec.PanelSpec;
import java.util.List;

/**
 * Where the core has a second layer. Next to the rim of a void the loose skin's edge moment dies out within some
 * millimetres of the core's depth, so a core that is straight through its depth hands too much of it to the other skin. A
 * surface in the core's middle, within one core thickness of the rim, sets this right; farther away it changes nothing.
 * Where much core remains under a loose skin, one layer agrees better with solid elements (docs/stiffness.md).
 */
final class RimLayers {
    /** From this part of the core's thickness on, a void counts as a full one. */
    private static final double NEARLY_EMPTY = 0.75;

    /** Cells whose core has two layers. */
    final boolean[] split;

    /** Nodes at which the core's middle moves freely. */
    final boolean[] free;

    /** One layer everywhere. */
    RimLayers(Mesh mesh) {
        split = new boolean[mesh.cells.length];
        free = new boolean[mesh.nodes()];
    }

    RimLayers(PanelSpec panel, Mesh mesh, List<Zone> zones) {
        split = new boolean[mesh.cells.length];
        free = new boolean[mesh.nodes()];
        double core = panel.core().thicknessMm();
        List<int[]> rims = mesh.rims.stream()
                .filter(rim -> zones.get(rim[2]).depthMm() >= NEARLY_EMPTY * core)
                .toList();
        boolean[] near = new boolean[mesh.nodes()];
        for (int v = 0; v < mesh.nodes(); v++) {
            for (int[] rim : rims) {
                double d = Math.min(mesh.distance(v, rim[0]), mesh.distance(v, rim[1]));
                near[v] |= d <= core * (1 + 1e-6);
            }
        }
        for (int c = 0; c < mesh.cells.length; c++) {
            for (int v : mesh.cells[c]) {
                if (near[v] && zones.get(mesh.zone[c]).bonded()) {
                    split[c] = true;
                    free[v] = true;
                }
            }
        }
    }

    /** Whether the core has one layer everywhere. */
    boolean none() {
        for (boolean two : split) {
            if (two) {
                return false;
            }
        }
        return true;
    }
}
