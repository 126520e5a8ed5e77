package corewright.cli;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.contour.Band;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/**
 * Bands as a GeoJSON FeatureCollection in the grid's own coordinates, at full double precision.
 *
 * <p>RFC 7946, 3.1.6: outer rings counter-clockwise, holes clockwise.
 */
final class BandsGeoJson {
    private BandsGeoJson() {}

    static ObjectNode of(List<Band> bands) {
        ObjectNode root = new ObjectMapper().createObjectNode().put("type", "FeatureCollection");
        ArrayNode features = root.putArray("features");
        for (Band band : bands) {
            ObjectNode feature = features.addObject().put("type", "Feature");
            levels(feature.putObject("properties"), band);
            ObjectNode geometry = feature.putObject("geometry");
            if (band.area() instanceof Polygon polygon) {
                geometry.put("type", "Polygon");
                polygon(geometry.putArray("coordinates"), polygon);
            } else {
                geometry.put("type", "MultiPolygon");
                ArrayNode parts = geometry.putArray("coordinates");
                for (int i = 0; i < band.area().getNumGeometries(); i++) {
                    polygon(parts.addArray(), (Polygon) band.area().getGeometryN(i));
                }
            }
        }
        return root;
    }

    /** {@code lower} and {@code upper}, null where the band is open. */
    static void levels(ObjectNode node, Band band) {
        put(node, "lower", band.lower());
        put(node, "upper", band.upper());
    }

    private static void put(ObjectNode node, String name, double level) {
        if (Double.isInfinite(level)) {
            node.putNull(name);
        } else {
            node.put(name, level);
        }
    }

    private static void polygon(ArrayNode rings, Polygon polygon) {
        ring(rings.addArray(), polygon.getExteriorRing(), true);
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            ring(rings.addArray(), polygon.getInteriorRingN(i), false);
        }
    }

    private static void ring(ArrayNode places, LinearRing ring, boolean counterClockwise) {
        LinearRing turned = Orientation.isCCW(ring.getCoordinateSequence()) == counterClockwise ? ring : ring.reverse();
        for (Coordinate place : turned.getCoordinates()) {
            places.addArray().add(place.x).add(place.y);
        }
    }
}
