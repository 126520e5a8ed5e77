package corewright.sandwich.spec;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Polygon;

/**
 * A sandwich panel. Lengths in millimetres; z points inward, from the outer skin to the inner one.
 *
 * @param outline its holes are openings
 * @param edges the support of each side of the outline in its order, or one for all
 * @param openings the edges of all openings
 */
public record PanelSpec(
        Polygon outline,
        List<Support> edges,
        Openings openings,
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

    /** With openings held, no coaming. */
    public PanelSpec(
            Polygon outline,
            List<Support> edges,
            Support openings,
            Skin outer,
            Skin inner,
            Core core,
            List<Patch> patches) {
        this(outline, edges, new Openings(openings, Optional.empty()), outer, inner, core, patches);
    }

    /** With free openings. */
    public PanelSpec(Polygon outline, List<Support> edges, Skin outer, Skin inner, Core core, List<Patch> patches) {
        this(outline, edges, Support.FREE, outer, inner, core, patches);
    }

    /**
     * How the edges of openings are held.
     *
     * @param coaming a beam along them; it may stand on a free edge or a held one
     * @param sides numbers of the outline's sides that the coaming runs along too: edges of openings that the outline cuts
     */
    public record Openings(Support support, Optional<Coaming> coaming, List<Integer> sides) {
        public Openings {
            sides = List.copyOf(sides);
        }

        /** Of openings that lie wholly inside. */
        public Openings(Support support, Optional<Coaming> coaming) {
            this(support, coaming, List.of());
        }

        /** Free edges stiffened by a beam. */
        public static Openings with(Coaming coaming) {
            return new Openings(Support.FREE, Optional.of(coaming));
        }
    }

    /** An upstand along the edge of an opening, joined to the outer skin, upright. */
    public record Coaming(double heightMm, double thicknessMm, double eMPa) {
        public Coaming {
            Require.positive("heightMm", heightMm);
            Require.positive("thicknessMm", thicknessMm);
            Require.positive("eMPa", eMPa);
        }
    }

    /** The same panel with other patches. */
    public PanelSpec with(List<Patch> others) {
        return new PanelSpec(outline, edges, openings, outer, inner, core, others);
    }

    public Support edge(int side) {
        return edges.size() == 1 ? edges.get(0) : edges.get(side);
    }

    /** A core as built. */
    public record Core(double thicknessMm, CoreMaterial material) {
        public Core {
            Require.positive("thicknessMm", thicknessMm);
        }
    }
}
