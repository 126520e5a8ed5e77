package corewright.drawing;

import corewright.Assessments;
import corewright.assessment.Assessment;
import corewright.contour.Raster;
import corewright.damage.Bay;
import corewright.damage.Condition;
import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.damage.NextReading;
import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.damage.Surfaces;
import corewright.damage.Undecided;
import corewright.decision.Decision;
import corewright.decision.Method;
import corewright.decision.RegionDecision;
import corewright.repair.plan.Fill;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.Outlook;
import corewright.repair.plan.RecorePlan;
import corewright.repair.plan.RepairOptions;
import corewright.stiffness.StiffnessMap;
import corewright.survey.About;
import corewright.survey.EdgeSupport;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Finding;
import corewright.survey.FrozenPlan;
import corewright.survey.Heading;
import corewright.survey.Judgements;
import corewright.survey.Laminate;
import corewright.survey.Materials;
import corewright.survey.Meter;
import corewright.survey.Moisture;
import corewright.survey.Origin;
import corewright.survey.Plug;
import corewright.survey.Probe;
import corewright.survey.Readings;
import corewright.survey.Side;
import corewright.survey.Sound;
import corewright.survey.Spot;
import corewright.survey.Subject;
import corewright.survey.Survey;
import corewright.survey.Tap;
import corewright.survey.settings.Settings;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/** Assessments made by hand: the invented boat Ronja, and plain faces of any shape with any number of regions. */
public final class DrawingFixture {
    public static final String FACE = "foredeck";

    private static final GeometryFactory GEOMETRY = new GeometryFactory();
    private static final Origin HERE = new Origin("by-hand", 1);

    private DrawingFixture() {}

    /** The foredeck of the boat Ronja, 3.6 x 2.76 m, as on our own mock-up plate. */
    public static Assessment foredeck() {
        List<Region> regions = new ArrayList<>();
        List<Geometry> possible = new ArrayList<>();
        Geometry possibleVoid = GEOMETRY.createPolygon();
        List<Undecided> undecided = new ArrayList<>();
        List<String[]> readings = new ArrayList<>();
        Polygon outline = GEOMETRY.createPolygon();
        for (String[] f : rows()) {
            switch (f[0]) {
                case "outline" -> outline = polygon(f[2]);
                case "possible" -> {
                    if (f[1].equals("void")) {
                        possibleVoid = wkt(f[2]);
                    } else {
                        possible.add(wkt(f[2]));
                    }
                }
                case "undecided" ->
                    undecided.add(
                            new Undecided(FACE, polygon(f[2]), 0.5, "Two readings disagree and no tap was taken."));
                case "reading" -> readings.add(f);
                default -> {
                    String[] name = f[1].split(" ", -1);
                    regions.add(region(name[0], Condition.valueOf(name[1]), polygon(f[2])));
                }
            }
        }
        Geometry all = UnaryUnionOp.union(possible);
        List<Region> grown = new ArrayList<>();
        for (Region r : regions) {
            Geometry larger = r.condition() == Condition.VOID ? possibleVoid : containing(all, r);
            grown.add(with(r, larger.union(r.likely())));
        }
        Face face = new Face(FACE, 3, 180, outline, EdgeSupport.SIMPLE, "deck", features());
        return assessment(face, grown, undecided, readings);
    }

    /** The same face with other readings and findings. */
    public static Assessment with(Assessment a, Readings readings, List<Finding> findings) {
        FaceDamage d = a.damage().face(FACE);
        FaceDamage told = new FaceDamage(
                d.face(),
                d.bays(),
                d.surfaces(),
                d.regions(),
                d.sound(),
                d.undecided(),
                d.damagedMm2(),
                d.voidMm3(),
                d.next(),
                findings,
                d.notes());
        return Assessments.of(
                a.survey().with(readings),
                new DamageMap(List.of(told), a.damage().voidMm3(), a.damage().damagedMm2()),
                a.stiffness(),
                a.plans(),
                a.decision(),
                findings,
                a.next());
    }

    private static Geometry containing(Geometry all, Region r) {
        Geometry found = r.likely();
        for (int i = 0; i < all.getNumGeometries(); i++) {
            if (all.getGeometryN(i).intersects(r.likely())) {
                found = found.union(all.getGeometryN(i));
            }
        }
        return found;
    }

    private static List<Feature> features() {
        List<Feature> f = new ArrayList<>();
        f.add(new Feature.Opening(HERE, "anchor locker", rectangle(420, -168, 900, 170), EdgeSupport.FREE));
        f.add(new Feature.Opening(HERE, "hatch", rectangle(2000, -300, 2600, 300), EdgeSupport.FREE));
        f.add(new Feature.Divider(HERE, "divider", line(1200, -698, 1200, 698)));
        f.add(new Feature.Support(HERE, "mid beam", line(1850, -913, 1850, 913), EdgeSupport.SIMPLE));
        f.add(new Feature.Support(HERE, "carlin", line(1850, 330, 3600, 330), EdgeSupport.SIMPLE));
        f.add(new Feature.Support(HERE, "carlin", line(1850, -330, 3600, -330), EdgeSupport.SIMPLE));
        f.add(new Feature.Support(HERE, "aft bulkhead", line(3600, -1380, 3600, 1380), EdgeSupport.SIMPLE));
        f.add(fitting("mooring bollard", 1650, 0, true, true));
        f.add(fitting("windlass", 1060, 0, true, true));
        f.add(fitting("cleat", 820, 430, true, true));
        f.add(fitting("cleat", 820, -430, true, true));
        f.add(fitting("stanchion", 1600, 745, true, true));
        f.add(fitting("stanchion", 1600, -745, true, true));
        f.add(fitting("stanchion", 2920, 1130, true, true));
        f.add(fitting("after port stanchion", 2920, -1130, true, true));
        f.add(fitting("ventilator", 3150, 640, false, false));
        return f;
    }

    private static Feature.Fitting fitting(String name, double x, double y, boolean metal, boolean load) {
        return new Feature.Fitting(HERE, name, GEOMETRY.createPoint(new Coordinate(x, y)), metal, load, 60);
    }

    /**
     * A plain face of any outline.
     *
     * @param count regions of the five conditions in turn, spread evenly over the outline
     */
    public static Assessment plain(String wktOutline, double tiltDeg, double uphillDeg, int count, double sizeMm) {
        Polygon outline = polygon(wktOutline);
        Envelope box = outline.getEnvelopeInternal();
        Condition[] kinds = {Condition.VOID, Condition.DELAMINATED, Condition.WET_DELAMINATED, Condition.WET};
        int columns = (int) Math.max(1, Math.ceil(Math.sqrt(count * box.getWidth() / box.getHeight())));
        int lines = Math.max(1, (int) Math.ceil(count / (double) columns));
        List<Region> regions = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double x = box.getMinX() + box.getWidth() * (i % columns + 0.5) / columns;
            double y = box.getMinY() + box.getHeight() * (i / columns + 0.5) / lines;
            Geometry blob = GEOMETRY.createPoint(new Coordinate(x, y)).buffer(sizeMm / 2);
            Geometry inside = blob.intersection(outline);
            if (inside instanceof Polygon p && !p.isEmpty()) {
                Region r = region("R" + (regions.size() + 1), kinds[i % kinds.length], p);
                regions.add(with(r, inside.buffer(sizeMm / 5).intersection(outline)));
            }
        }
        Face face = new Face(FACE, tiltDeg, uphillDeg, outline, EdgeSupport.SIMPLE, "deck", List.of());
        List<String[]> readings = new ArrayList<>();
        for (double x = box.getMinX() + 75; x < box.getMaxX(); x += 150) {
            for (double y = box.getMinY() + 75; y < box.getMaxY(); y += 150) {
                if (outline.contains(GEOMETRY.createPoint(new Coordinate(x, y)))) {
                    readings.add(new String[] {
                        "reading", "" + (int) x, "" + (int) y, "" + (10 + Math.floorMod((int) x, 17)), "0"
                    });
                }
            }
        }
        return assessment(face, regions, List.of(), readings);
    }

    private static Region region(String id, Condition condition, Polygon likely) {
        boolean hollow = condition == Condition.VOID;
        Quantiles empty = hollow ? new Quantiles(0.65e6, 0.88e6, 1.15e6) : Quantiles.ZERO;
        double wet = condition == Condition.WET || condition == Condition.WET_DELAMINATED ? 0.9 : 0.1;
        Coordinate label = MaximumInscribedCircle.getCenter(likely, 5).getCoordinate();
        return new Region(
                id,
                FACE,
                FACE + "-B1",
                condition,
                likely,
                likely,
                GEOMETRY.createPoint(label),
                wet,
                empty,
                hollow ? 5.2 : 0,
                hollow ? 9.8 : 0);
    }

    private static Region with(Region r, Geometry possible) {
        return new Region(
                r.id(),
                r.face(),
                r.bay(),
                r.condition(),
                r.likely(),
                possible,
                r.label(),
                r.pWetMean(),
                r.voidMm3(),
                r.meanVoidDepthMm(),
                r.maxVoidDepthMm());
    }

    private static Assessment assessment(
            Face face, List<Region> regions, List<Undecided> undecided, List<String[]> rows) {
        List<Moisture> moisture = new ArrayList<>();
        List<Tap> taps = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        for (String[] f : rows) {
            Spot spot = new Spot(FACE, Double.parseDouble(f[1]), Double.parseDouble(f[2]));
            String id = "M" + (moisture.size() + 1);
            boolean doubted = f[3].startsWith("(");
            boolean off = f[3].startsWith(">");
            double value = Double.parseDouble(f[3].replaceAll("[()>]", ""));
            moisture.add(new Moisture(HERE, id, spot, value, off, "A", null, null, false, Side.OUTER, ""));
            Sound sound = Sound.values()[Integer.parseInt(f[4])];
            taps.add(new Tap(HERE, "T" + moisture.size(), spot, sound, null, Side.OUTER));
            if (doubted) {
                findings.add(new Finding(
                        Finding.Severity.DOUBT,
                        HERE,
                        About.of(moisture.get(moisture.size() - 1)),
                        Subject.METAL,
                        "metal within 100 mm",
                        "may read falsely high"));
            }
        }
        boolean ronja = !face.features().isEmpty();
        List<Probe> probes = ronja
                ? List.of(probe("P1", 2180, 675, 7.1), probe("P2", 2330, 675, 7.4), probe("P3", 2490, 675, 8.7))
                : List.of();
        List<Plug> plugs = ronja ? List.of(new Plug(HERE, "K1", new Spot(FACE, 3300, 0), 11)) : List.of();
        Readings readings = new Readings(moisture, taps, probes, List.of(), plugs, List.of());
        Survey survey = new Survey(
                new Heading(
                        "Foredeck, 11.2 m sloop",
                        LocalDate.of(2026, 4, 2),
                        "Ronja, 11.2 m sloop",
                        "J. Vestergaard",
                        "T. Aalto",
                        "",
                        null,
                        ""),
                List.of(face),
                List.of(new Meter("A", Meter.Kind.RELATIVE, 100, 10.0, 25.0)),
                List.of(new Laminate("deck", 3, 12.5, 2.5, "e-glass-polyester", "balsa-150", true)),
                Materials.builtIn(),
                readings,
                Settings.defaults(),
                List.of(),
                List.of(),
                Judgements.NONE,
                List.of(),
                FrozenPlan.NONE);
        List<NextReading> next = ronja
                ? List.of(next(1, 1500, -600), next(2, 1680, -560), next(3, 1575, -455), next(4, 2775, 525))
                : List.of();
        FaceDamage damage = new FaceDamage(
                face,
                List.of(new Bay(FACE + "-B1", FACE, face.outline())),
                surfaces(),
                regions,
                sound(face, regions),
                undecided,
                new Quantiles(1.0e6, 1.1e6, 1.4e6),
                new Quantiles(0.65e6, 0.88e6, 1.15e6),
                next,
                findings,
                List.of());
        return Assessments.of(
                survey,
                new DamageMap(List.of(damage), damage.voidMm3(), damage.damagedMm2()),
                StiffnessMap.NONE,
                new RepairOptions(List.of(), List.of()),
                decision(regions),
                findings,
                next);
    }

    private static Decision decision(List<Region> regions) {
        List<RegionDecision> decisions = new ArrayList<>();
        List<InjectionPlan> injections = new ArrayList<>();
        List<RecorePlan> recores = new ArrayList<>();
        for (Region r : regions) {
            Method method =
                    switch (r.condition()) {
                        case VOID, DELAMINATED -> Method.INJECT;
                        case WET_DELAMINATED -> Method.RECORE;
                        case WET, SOUND -> r.likely().getArea() > 60_000 ? Method.DRY_OUT : Method.MONITOR;
                    };
            boolean architect = r.condition() == Condition.WET_DELAMINATED;
            String first = method == Method.INJECT ? "Prove the core dry: one probe beside the void." : null;
            decisions.add(new RegionDecision(r.id(), method, List.of("by hand"), first, Map.of(), architect));
            if (method == Method.INJECT) {
                injections.add(injection(r));
            } else if (method == Method.RECORE) {
                Geometry cut = r.likely().buffer(25);
                recores.add(new RecorePlan(r.id(), cut, 12.5, "balsa-150", 900, List.of()));
            }
        }
        return new Decision(decisions, injections, recores, List.of(), List.of(), List.of());
    }

    private static InjectionPlan injection(Region r) {
        List<Hole> holes = new ArrayList<>();
        Envelope box = r.likely().getEnvelopeInternal();
        int n = 0;
        for (double y = box.getMinY() + 60; y < box.getMaxY(); y += 120) {
            for (double x = box.getMinX() + 60; x < box.getMaxX(); x += 140) {
                Coordinate at = new Coordinate(x, y);
                if (r.likely().buffer(-12.5).contains(GEOMETRY.createPoint(at))) {
                    n++;
                    holes.add(hole(r, r.id() + "-" + n, Hole.Kind.INJECTION, n, at));
                }
            }
        }
        Geometry clear = r.likely();
        for (Hole hole : holes) {
            clear = clear.difference(
                    GEOMETRY.createPoint(hole.spot().coordinate()).buffer(70));
        }
        if (!clear.isEmpty()) {
            holes.add(hole(
                    r,
                    r.id() + "-V1",
                    Hole.Kind.VENT,
                    n + 1,
                    MaximumInscribedCircle.getCenter(clear, 5).getCoordinate()));
        }
        return new InjectionPlan(
                r.id(),
                List.of(new InjectionPlan.Part(r.id(), 0.97, 54_870, 80)),
                "epoxy-foam-240",
                r.voidMm3(),
                80,
                "work time",
                holes,
                0.97,
                List.of(),
                210,
                74,
                360,
                List.of(),
                List.of(),
                Fill.NONE,
                Outlook.NONE);
    }

    private static Hole hole(Region r, String id, Hole.Kind kind, int order, Coordinate at) {
        boolean vent = kind == Hole.Kind.VENT;
        Spot spot = new Spot(FACE, at.x, at.y);
        return new Hole(
                id,
                r.id(),
                kind,
                order,
                spot,
                6.4,
                4.5 + order % 4,
                vent ? 0 : 80,
                vent ? 0 : 90_000,
                null,
                Hole.Range.NONE,
                0);
    }

    private static List<Polygon> sound(Face face, List<Region> regions) {
        Geometry left = face.outline();
        for (Feature.Opening o : face.all(Feature.Opening.class)) {
            left = left.difference(o.geometry());
        }
        for (Region r : regions) {
            left = left.difference(r.likely());
        }
        List<Polygon> parts = new ArrayList<>();
        for (int i = 0; i < left.getNumGeometries(); i++) {
            if (left.getGeometryN(i) instanceof Polygon p) {
                parts.add(p);
            }
        }
        return parts;
    }

    private static Surfaces surfaces() {
        Raster one = new Raster(0, 0, 25, 1, 1, new double[] {0});
        return new Surfaces(one, one, one, one, one, one, one);
    }

    private static NextReading next(int rank, double x, double y) {
        return new NextReading(rank, NextReading.Kind.TAP, new Spot(FACE, x, y), 0.05, NextReading.Unit.SQUARE_METRE);
    }

    private static Probe probe(String id, double x, double y, double depth) {
        return new Probe(HERE, id, new Spot(FACE, x, y), depth, null, null);
    }

    private static Polygon rectangle(double x1, double y1, double x2, double y2) {
        return (Polygon) GEOMETRY.toGeometry(new Envelope(x1, x2, y1, y2));
    }

    private static LineString line(double x1, double y1, double x2, double y2) {
        return GEOMETRY.createLineString(new Coordinate[] {new Coordinate(x1, y1), new Coordinate(x2, y2)});
    }

    static Polygon polygon(String wkt) {
        return (Polygon) wkt(wkt);
    }

    private static Geometry wkt(String wkt) {
        try {
            return new WKTReader(GEOMETRY).read(wkt);
        } catch (ParseException e) {
            throw new IllegalArgumentException(e);
        }
    }

    private static List<String[]> rows() {
        try (InputStream in = Objects.requireNonNull(DrawingFixture.class.getResourceAsStream("ronja.txt"));
                BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return lines.lines()
                    .filter(l -> !l.startsWith("#"))
                    .map(l -> l.split("\\|", -1))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
