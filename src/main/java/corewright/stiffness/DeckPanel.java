package corewright.stiffness;

import corewright.survey.EdgeSupport;
import corewright.survey.Feature;
import corewright.survey.Laminate;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Polygon;

/**
 * Skin area between supports.
 *
 * @param name {@code <face>-P1} ... by x, then y of the centroid
 * @param area its holes are openings that lie wholly inside
 * @param edges how each side of the outer ring is held, in the ring's order
 * @param openings how the edges of openings inside are held
 * @param laminate the laminate of most of it
 * @param upstand what stands along edges of openings
 */
public record DeckPanel(
        String name,
        String face,
        Polygon area,
        List<EdgeSupport> edges,
        EdgeSupport openings,
        Laminate laminate,
        Optional<Upstand> upstand) {
    /**
     * The coaming of a panel's openings.
     *
     * @param sides numbers of the outer ring's sides along which it stands, besides all openings that lie wholly inside
     */
    public record Upstand(Feature.Coaming coaming, List<Integer> sides) {
        public Upstand {
            sides = List.copyOf(sides);
        }
    }

    public DeckPanel {
        edges = List.copyOf(edges);
        if (edges.size() != area.getExteriorRing().getNumPoints() - 1) {
            throw new IllegalArgumentException(edges.size() + " edges for the panel " + name);
        }
    }
}
