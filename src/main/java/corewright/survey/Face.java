package corewright.survey;

import java.util.List;
import org.locationtech.jts.geom.Polygon;

/**
 * One flattened surface being surveyed.
 *
 * @param tiltDeg 0 flat, 90 wall, 180 overhead
 * @param uphillDeg direction of the high side, degrees from +x (aft) towards +y (starboard)
 * @param outline the deck edge, without holes
 * @param edge how the outline is held
 * @param laminate name of the laminate where no laminate area says otherwise
 */
public record Face(
        String name,
        double tiltDeg,
        double uphillDeg,
        Polygon outline,
        EdgeSupport edge,
        String laminate,
        List<Feature> features) {
    public Face {
        Check.within("tiltDeg", tiltDeg, 0, 180);
        Check.finite("uphillDeg", uphillDeg);
        features = List.copyOf(features);
    }

    /** The features of one kind, in the order of the plan. */
    public <F extends Feature> List<F> all(Class<F> kind) {
        return features.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /** The same face with other things drawn on it. */
    public Face with(List<Feature> drawn) {
        return new Face(name, tiltDeg, uphillDeg, outline, edge, laminate, drawn);
    }
}
