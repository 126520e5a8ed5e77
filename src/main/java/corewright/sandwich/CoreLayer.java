package corewright.sandwich;

import corewright.sandwich.spec.PanelSpec;
import java.util.List;

/**
 * One layer of core between two surfaces.
 *
 * @param outer the surface on its outer side
 * @param armOuterMm from that surface's middle to the layer's middle, likewise for the inner one
 */
record CoreLayer(int outer, int inner, double thicknessMm, double armOuterMm, double armInnerMm) {
    /** The whole core with two surfaces; two halves about the surface in its middle with three. */
    static List<CoreLayer> of(PanelSpec panel, int surfaces) {
        double c = panel.core().thicknessMm();
        double to = panel.outer().thicknessMm();
        double ti = panel.inner().thicknessMm();
        if (surfaces == 2) {
            return List.of(new CoreLayer(CellStiffness.OUTER, CellStiffness.INNER, c, (to + c) / 2, (ti + c) / 2));
        }
        double half = c / 2;
        return List.of(
                new CoreLayer(CellStiffness.OUTER, CellStiffness.MIDDLE, half, (to + half) / 2, half / 2),
                new CoreLayer(CellStiffness.MIDDLE, CellStiffness.INNER, half, half / 2, (ti + half) / 2));
    }
}
