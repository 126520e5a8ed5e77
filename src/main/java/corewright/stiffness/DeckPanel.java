package corewright.stiffness;

import corewright.survey.EdgeSupport;
import corewright.survey.Laminate;
import java.util.List;
import org.locationtech.jts.geom.Polygon;

/**
 * Skin area between supports.
 *
 * @param name {@code <face>-P1} ... by x, then y of the centroid
 * @param area its holes are openings that lie wholly inside
 * @param edges how each side of the outer ring is held, in the ring's order
 * @param openings how the edges of openings inside are held
 * @param laminate the laminate of most of it
 */
public record DeckPanel(
        String name, String face, Polygon area, List<EdgeSupport> edges, EdgeSupport openings, Laminate laminate) {
    public DeckPanel {
        edges = List.copyOf(edges);
        if (edges.size() != area.getExteriorRing().getNumPoints() - 1) {
            throw new IllegalArgumentException(edges.size() + " edges for the panel " + name);
        }
    }
}
