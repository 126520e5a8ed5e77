package corewright.report.data;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** Areas as GeoJSON, at full double precision. RFC 7946, 3.1.6: outer rings counter-clockwise, holes clockwise. */
public final class GeoJson {
    private GeoJson() {}

    /** Adds a feature's geometry; polygons only. */
    public static void geometry(ObjectNode feature, Geometry area) {
        ObjectNode geometry = feature.putObject("geometry");
        if (area instanceof Polygon polygon) {
            geometry.put("type", "Polygon");
            rings(geometry.putArray("coordinates"), polygon);
        } else {
            geometry.put("type", "MultiPolygon");
            ArrayNode parts = geometry.putArray("coordinates");
            for (int i = 0; i < area.getNumGeometries(); i++) {
                if (area.getGeometryN(i) instanceof Polygon polygon) {
                    rings(parts.addArray(), polygon);
                }
            }
        }
    }

    private static void rings(ArrayNode rings, Polygon polygon) {
        if (!polygon.isEmpty()) {
            ring(rings.addArray(), polygon.getExteriorRing(), true);
            for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
                ring(rings.addArray(), polygon.getInteriorRingN(i), false);
            }
        }
    }

    private static void ring(ArrayNode places, LinearRing ring, boolean counterClockwise) {
        boolean turn = Orientation.isCCW(ring.getCoordinateSequence()) != counterClockwise;
        int n = ring.getNumPoints();
        for (int i = 0; i < n; i++) {
            var place = ring.getCoordinateN(turn ? n - 1 - i : i);
            places.addArray().add(place.x).add(place.y);
        }
    }
}
