package corewright.report.data;

import corewright.assessment.Assessment;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.RecorePlan;
import corewright.report.page.Conversions;
import corewright.report.page.Numbers;
import corewright.store.FeatureFile;
import corewright.survey.Face;
import corewright.survey.Feature.Opening;
import corewright.survey.Spot;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * exchange: regions and holes for other programs. A layer is a condition or a kind of hole; where a survey has several
 * faces, each in its own coordinates, the face's name goes before it.
 */
public final class Exchange {
    private static final double TEXT_MM = 25;
    private static final double HOLE_TEXT_MM = 8;

    /** Six letters leave room for the longest layer, {@code -WET-DELAMINATED-POSSIBLE}, in the 31 of the format. */
    private static final int PREFIX = 6;

    private final Assessment assessment;
    private final Map<String, String> prefixes = new HashMap<>();

    private Exchange(Assessment assessment) {
        this.assessment = assessment;
        Set<String> taken = new HashSet<>();
        for (FaceDamage face : assessment.damage().faces()) {
            String name = DxfFile.layer(face.face().name()).replace("-", "");
            String free = name.substring(0, Math.min(PREFIX, name.length()));
            for (int i = 2; !taken.add(free); i++) {
                String number = Integer.toString(i);
                free = name.substring(0, Math.min(PREFIX - number.length(), name.length())) + number;
            }
            boolean one = assessment.damage().faces().size() == 1;
            prefixes.put(face.face().name(), one ? "" : free + "-");
        }
    }

    public static void write(Assessment assessment, Path folder) throws IOException {
        Exchange exchange = new Exchange(assessment);
        Files.writeString(folder.resolve("regions.dxf"), exchange.regions(), StandardCharsets.US_ASCII);
        Files.writeString(folder.resolve("holes.dxf"), exchange.holes(), StandardCharsets.US_ASCII);
        exchange.table().write(folder.resolve("regions.csv"));
        FeatureFile.write(
                folder.resolve("repair.gpkg"), assessment.survey().heading().surveyed(), ExchangeLayers.of(assessment));
    }

    private String regions() {
        DxfFile dxf = new DxfFile();
        outlines(dxf);
        for (Region region : assessment.damage().regions()) {
            String layer = layer(region.face(), region.condition().word());
            dxf.rings(layer, region.likely());
            dxf.rings(layer + "-POSSIBLE", region.possible());
            dxf.text(layer, region.label().getX(), region.label().getY(), TEXT_MM, region.id());
        }
        for (FaceDamage face : assessment.damage().faces()) {
            face.undecided().forEach(u -> dxf.rings(layer(u.face(), "undecided"), u.area()));
        }
        for (RecorePlan cut : assessment.decision().recores()) {
            dxf.rings(layer(face(cut), "cuts"), cut.cut());
        }
        return dxf.text();
    }

    private String face(RecorePlan cut) {
        return assessment.damage().regions().stream()
                .filter(r -> r.id().equals(cut.region()))
                .findFirst()
                .orElseThrow()
                .face();
    }

    private String holes() {
        DxfFile dxf = new DxfFile();
        outlines(dxf);
        for (InjectionPlan plan : assessment.decision().injections()) {
            for (Hole hole : plan.holes()) {
                Spot spot = hole.spot();
                String layer = layer(spot.face(), hole.kind().name());
                double radius = hole.diameterMm() / 2;
                dxf.circle(layer, spot.xMm(), spot.yMm(), radius);
                dxf.text(layer, spot.xMm() + 2 * radius, spot.yMm() + radius, HOLE_TEXT_MM, hole.id());
            }
        }
        return dxf.text();
    }

    private void outlines(DxfFile dxf) {
        for (FaceDamage damage : assessment.damage().faces()) {
            Face face = damage.face();
            dxf.rings(layer(face.name(), "outline"), face.outline());
            face.all(Opening.class).forEach(o -> dxf.rings(layer(face.name(), "opening"), o.geometry()));
        }
    }

    private String layer(String face, String what) {
        return prefixes.getOrDefault(face, "") + what.toUpperCase(Locale.ROOT);
    }

    /** regions.csv: figures of each region and its likely extent as well-known text. */
    private CsvTable table() {
        CsvTable table = new CsvTable(
                "id,face,bay,condition,area_m2,possible_area_m2,p_wet_mean,void_volume_l,mean_void_depth_mm,"
                        + "max_void_depth_mm,label_x,label_y,wkt");
        for (Region region : assessment.damage().regions()) {
            table.add(
                    region.id(),
                    region.face(),
                    region.bay(),
                    region.condition().word(),
                    Numbers.rounded(region.likely().getArea() / Conversions.MM2_PER_M2, 4),
                    Numbers.rounded(region.possible().getArea() / Conversions.MM2_PER_M2, 4),
                    Numbers.rounded(region.pWetMean(), 3),
                    Numbers.rounded(region.voidMm3().p50() / Conversions.MM3_PER_LITRE, 3),
                    Numbers.rounded(region.meanVoidDepthMm(), 2),
                    Numbers.rounded(region.maxVoidDepthMm(), 2),
                    Numbers.rounded(region.label().getX(), 1),
                    Numbers.rounded(region.label().getY(), 1),
                    region.likely().toText());
        }
        return table;
    }
}
