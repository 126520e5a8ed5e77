package corewright.report.data;

import corewright.assessment.Assessment;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.RecorePlan;
import corewright.report.page.Conversions;
import corewright.store.FeatureFile.Column;
import corewright.store.FeatureFile.Layer;
import corewright.store.FeatureFile.Row;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.MultiPolygon;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.PolygonExtracter;

/** Regions, undecided areas and holes as tables of features. */
final class ExchangeLayers {
    private static final String AREAS = "MULTIPOLYGON";

    private ExchangeLayers() {}

    static List<Layer> of(Assessment assessment) {
        return List.of(
                regions(assessment, "regions_likely", "Damage, more probable than not", Region::likely),
                regions(assessment, "regions_possible", "Damage that cannot be ruled out", Region::possible),
                undecided(assessment),
                cuts(assessment),
                holes(assessment));
    }

    private static Layer regions(Assessment assessment, String name, String title, Function<Region, Geometry> extent) {
        List<Row> rows = assessment.damage().regions().stream()
                .map(r -> new Row(
                        areas(extent.apply(r)),
                        Arrays.asList(
                                r.id(),
                                r.face(),
                                r.condition().word(),
                                assessment.decision().on(r.id()).method().word(),
                                extent.apply(r).getArea() / Conversions.MM2_PER_M2,
                                r.pWetMean(),
                                r.voidMm3().p50() / Conversions.MM3_PER_LITRE,
                                r.maxVoidDepthMm())))
                .toList();
        List<Column> columns = columns(
                List.of("id", "face", "condition", "method"),
                List.of("area_m2", "p_wet_mean", "void_volume_l", "max_void_depth_mm"));
        return new Layer(name, title, AREAS, columns, rows);
    }

    private static Layer undecided(Assessment assessment) {
        List<Row> rows = new ArrayList<>();
        for (FaceDamage face : assessment.damage().faces()) {
            face.undecided().forEach(u -> rows.add(new Row(areas(u.area()), Arrays.asList(u.face()))));
        }
        return new Layer("undecided", "Too few readings to tell", AREAS, columns(List.of("face"), List.of()), rows);
    }

    private static Layer cuts(Assessment assessment) {
        List<Row> rows = new ArrayList<>();
        for (RecorePlan cut : assessment.decision().recores()) {
            String face = assessment.damage().regions().stream()
                    .filter(r -> r.id().equals(cut.region()))
                    .findFirst()
                    .orElseThrow()
                    .face();
            rows.add(new Row(
                    areas(cut.cut()),
                    Arrays.asList(
                            cut.region(),
                            face,
                            cut.cut().getArea() / Conversions.MM2_PER_M2,
                            cut.coreMm(),
                            cut.epoxyG())));
        }
        List<Column> columns = columns(List.of("id", "face"), List.of("area_m2", "core_mm", "epoxy_g"));
        return new Layer("cuts", "Where skin and core are taken out", AREAS, columns, rows);
    }

    private static Layer holes(Assessment assessment) {
        GeometryFactory factory = new GeometryFactory();
        List<Row> rows = new ArrayList<>();
        for (InjectionPlan plan : assessment.decision().injections()) {
            for (Hole hole : plan.holes()) {
                rows.add(new Row(
                        factory.createPoint(hole.spot().coordinate()),
                        Arrays.asList(
                                hole.id(),
                                hole.spot().face(),
                                hole.region(),
                                hole.kind().name().toLowerCase(Locale.ROOT),
                                hole.diameterMm(),
                                hole.depthStopMm())));
            }
        }
        List<Column> columns =
                columns(List.of("id", "face", "region", "kind"), List.of("diameter_mm", "depth_stop_mm"));
        return new Layer("holes", "Holes to drill", "POINT", columns, rows);
    }

    private static List<Column> columns(List<String> texts, List<String> numbers) {
        List<Column> columns = new ArrayList<>();
        texts.forEach(t -> columns.add(new Column(t, false)));
        numbers.forEach(n -> columns.add(new Column(n, true)));
        return columns;
    }

    private static MultiPolygon areas(Geometry area) {
        List<?> polygons = PolygonExtracter.getPolygons(area);
        return area.getFactory().createMultiPolygon(polygons.toArray(new Polygon[0]));
    }
}
