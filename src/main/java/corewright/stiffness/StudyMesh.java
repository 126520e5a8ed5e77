package corewright.stiffness;

import corewright.sandwich.MeshSize;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Patch;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * Element sizes for panels of a survey. Deflections with contact and von Karman's strain need less than linear ones: on the
 * panels of docs/stiffness.md 40 mm with 30 at rims is within 2.5 % of solids, 50 mm everywhere within 3 %, where the linear figure of the
 * latter is 7 % off.
 */
final class StudyMesh {
    private static final double GENERAL_MM = 40;
    private static final double RIM_MM = 35;
    private static final double COARSE_MM = 50;

    /** Elements across a panel, across a loose area, and the same on the coarse mesh. */
    private static final double ACROSS = 18;

    private static final double ACROSS_LOOSE = 10;
    private static final double COARSE_ACROSS = 14;
    private static final double COARSE_ACROSS_LOOSE = 7;

    /** Smallest size at rims, in core thicknesses. */
    private static final double OF_CORE = 1.5;

    private StudyMesh() {}

    /** For the figures that are told. */
    static MeshSize fine(PanelSpec panel) {
        return size(panel, Math.min(GENERAL_MM, across(panel) / ACROSS), RIM_MM, ACROSS_LOOSE);
    }

    /** For ratios. */
    static MeshSize coarse(PanelSpec panel) {
        return size(panel, Math.min(COARSE_MM, across(panel) / COARSE_ACROSS), COARSE_MM, COARSE_ACROSS_LOOSE);
    }

    private static MeshSize size(PanelSpec panel, double generalMm, double rimMm, double acrossLoose) {
        double general = Math.max(generalMm, MeshSize.affordableMm(panel));
        double smallest = OF_CORE * panel.core().thicknessMm();
        double rim = Math.max(smallest, Math.min(rimMm, narrowestLoose(panel) / acrossLoose));
        return new MeshSize(Math.max(general, smallest), rim);
    }

    private static double across(PanelSpec panel) {
        Envelope box = panel.outline().getEnvelopeInternal();
        return Math.min(box.getWidth(), box.getHeight());
    }

    /** Four times area over circumference: the side of a square, the diameter of a disc. */
    private static double narrowestLoose(PanelSpec panel) {
        double least = Double.POSITIVE_INFINITY;
        for (Patch patch : panel.patches()) {
            if (patch instanceof Patch.Loose) {
                Geometry area = patch.area();
                for (int k = 0; k < area.getNumGeometries(); k++) {
                    if (area.getGeometryN(k) instanceof Polygon part) {
                        least = Math.min(least, 4 * part.getArea() / part.getLength());
                    }
                }
            }
        }
        return least;
    }
}
