package corewright.sandwich;

import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Require;
import org.locationtech.jts.geom.Envelope;

/**
 * Largest sides of elements.
 *
 * @param generalMm away from rims of loose areas
 * @param rimMm near them
 */
public record MeshSize(double generalMm, double rimMm) {
    /** Twenty-five millimetres leave 0.6 % of error in an intact panel of 0.9 x 0.6 m (against 3-D solids). */
    private static final double GENERAL_MM = 25;

    /** At least so many elements across a panel: 24 leave what 25 mm leave in a panel of 0.6 m. */
    private static final int ACROSS = 24;

    public MeshSize {
        Require.positive("generalMm", generalMm);
        Require.positive("rimMm", rimMm);
        rimMm = Math.min(generalMm, rimMm);
    }

    /**
     * Size at rims as part of the core's thickness: at 1 the skin under a void is within 2 to 3 % of solid elements, at
     * 0.7 within 1 %, at 2 it may be 10 % off.
     */
    private static final double RIM_OF_CORE = 0.75;

    /** The given size, and at rims no more than three quarters of the core's thickness. */
    public static MeshSize of(PanelSpec panel, double generalMm) {
        return new MeshSize(generalMm, Math.max(RIM_OF_CORE * panel.core().thicknessMm(), affordableMm(panel)));
    }

    /** No smaller, lest a large panel has more than some 15 000 nodes. */
    public static double affordableMm(PanelSpec panel) {
        return Math.sqrt(panel.outline().getEnvelopeInternal().getArea() / 15_000);
    }

    /** The same size everywhere. */
    public static MeshSize uniform(double mm) {
        return new MeshSize(mm, mm);
    }

    /**
     * Chosen by itself: 25 mm, or less in a small panel; at rims three quarters of the core's thickness. Large panels get what keeps them
     * below some 15 000 nodes.
     */
    public static MeshSize automatic(PanelSpec panel) {
        Envelope box = panel.outline().getEnvelopeInternal();
        double across = Math.min(box.getWidth(), box.getHeight()) / ACROSS;
        return of(panel, Math.max(Math.min(GENERAL_MM, across), affordableMm(panel)));
    }
}
