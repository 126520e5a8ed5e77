package corewright.cli;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.contour.Band;
import corewright.report.data.GeoJson;
import java.util.List;

/** Bands as a GeoJSON FeatureCollection in the grid's own coordinates. */
final class BandsGeoJson {
    private BandsGeoJson() {}

    static ObjectNode of(List<Band> bands) {
        ObjectNode root = new ObjectMapper().createObjectNode().put("type", "FeatureCollection");
        ArrayNode features = root.putArray("features");
        for (Band band : bands) {
            ObjectNode feature = features.addObject().put("type", "Feature");
            levels(feature.putObject("properties"), band);
            GeoJson.geometry(feature, band.area());
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
}
