package corewright.sandwich;

import java.util.List;
import org.locationtech.jts.geom.Polygon;

/**
 * A sandwich panel. Lengths in millimetres; z points inward, from the outer skin to the inner one.
 *
 * @param outline its holes are openings
 * @param edges the support of each side of the outline in its order, or one for all
 * @param openings the support of all edges of openings
 */
public record PanelSpec(
        Polygon outline,
        List<Support> edges,
        Support openings,
        Skin outer,
        Skin inner,
        Core core,
        List<Patch> patches) {
    public PanelSpec {
        edges = List.copyOf(edges);
        patches = List.copyOf(patches);
        int sides = outline.getExteriorRing().getNumPoints() - 1;
        if (outline.isEmpty() || !outline.isValid()) {
            throw new IllegalArgumentException("the outline is not a valid polygon");
        }
        if (edges.size() != 1 && edges.size() != sides) {
            throw new IllegalArgumentException(edges.size() + " edges for " + sides + " sides");
        }
        for (Patch patch : patches) {
            if (patch instanceof Patch.Loose loose) {
                Require.within("depthMm", loose.depthMm(), 0, core.thicknessMm());
            }
        }
    }

    /** With free openings. */
    public PanelSpec(Polygon outline, List<Support> edges, Skin outer, Skin inner, Core core, List<Patch> patches) {
        this(outline, edges, Support.FREE, outer, inner, core, patches);
    }

    /** The same panel with other patches. */
    public PanelSpec with(List<Patch> others) {
        return new PanelSpec(outline, edges, openings, outer, inner, core, others);
    }

    Support edge(int side) {
        return edges.size() == 1 ? edges.get(0) : edges.get(side);
    }

    /** A core as built. */
    public record Core(double thicknessMm, CoreMaterial material) {
        public Core {
            Require.positive("thicknessMm", thicknessMm);
        }
    }
}
