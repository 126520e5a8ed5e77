package corewright.report.data;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.assessment.Assessment;
import corewright.damage.Bay;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.damage.Undecided;
import corewright.repair.plan.RecorePlan;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * regions.geojson: the likely and the possible extent of every region, every cut and what is undecided, in survey
 * millimetres.
 *
 * <p>The coordinates are the deck's own, not longitude and latitude.
 */
public final class RegionsGeoJson {
    private RegionsGeoJson() {}

    public static String text(Assessment assessment) {
        ObjectNode root = JsonFile.MAPPER.createObjectNode().put("type", "FeatureCollection");
        ArrayNode features = root.putArray("features");
        for (Region region : assessment.damage().regions()) {
            region(features, region, "likely", region.likely());
            region(features, region, "possible", region.possible());
        }
        for (RecorePlan cut : assessment.decision().recores()) {
            region(features, cutOut(assessment, cut), "cut", cut.cut());
        }
        int number = 0;
        for (FaceDamage face : assessment.damage().faces()) {
            for (Undecided undecided : face.undecided()) {
                undecided(features, "U" + ++number, face, undecided);
            }
        }
        return JsonFile.text(root);
    }

    private static Region cutOut(Assessment assessment, RecorePlan cut) {
        return assessment.damage().regions().stream()
                .filter(r -> r.id().equals(cut.region()))
                .findFirst()
                .orElseThrow();
    }

    private static void region(ArrayNode features, Region region, String extent, Geometry area) {
        ObjectNode properties = feature(features, region.id() + "-" + extent, area);
        properties
                .put("id", region.id())
                .put("face", region.face())
                .put("bay", region.bay())
                .put("condition", region.condition().word())
                .put("extent", extent);
        JsonFile.put(properties, "p_wet_mean", region.pWetMean());
    }

    private static void undecided(ArrayNode features, String id, FaceDamage face, Undecided undecided) {
        ObjectNode properties = feature(features, id, undecided.area());
        properties
                .put("id", id)
                .put("face", undecided.face())
                .put("bay", bay(face, undecided.area()))
                .putNull("condition")
                .put("extent", "undecided");
        JsonFile.put(properties, "p_wet_mean", undecided.pWetMean());
        properties.put("why", undecided.why());
    }

    private static String bay(FaceDamage face, Polygon area) {
        Geometry inside = area.getInteriorPoint();
        return face.bays().stream()
                .filter(b -> b.area().covers(inside))
                .map(Bay::name)
                .findFirst()
                .orElse("");
    }

    /** Adds a feature and hands back its empty properties. */
    private static ObjectNode feature(ArrayNode features, String id, Geometry area) {
        ObjectNode feature = features.addObject().put("type", "Feature").put("id", id);
        ObjectNode properties = feature.putObject("properties");
        GeoJson.geometry(feature, area);
        return properties;
    }
}
