package corewright;

import corewright.contour.Raster;
import corewright.damage.Bay;
import corewright.damage.Condition;
import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.damage.Surfaces;
import corewright.survey.CoreMoisture;
import corewright.survey.CoreState;
import corewright.survey.EdgeSupport;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Feeler;
import corewright.survey.FeelerEnd;
import corewright.survey.FrozenPlan;
import corewright.survey.Heading;
import corewright.survey.Judgements;
import corewright.survey.Laminate;
import corewright.survey.Materials;
import corewright.survey.Origin;
import corewright.survey.Plug;
import corewright.survey.Probe;
import corewright.survey.Readings;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.settings.Settings;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleBinaryOperator;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

/** Hand-made damage for the tests of later stages: one face, its rasters, regions of any condition. */
public final class DamageFixtures {
    public static final GeometryFactory GEOMETRY = new GeometryFactory();
    private static final Origin HERE = new Origin("fixture", 0);

    private DamageFixtures() {}

    public static Polygon rectangle(double x0, double y0, double x1, double y1) {
        return GEOMETRY.createPolygon(new Coordinate[] {
            new Coordinate(x0, y0),
            new Coordinate(x1, y0),
            new Coordinate(x1, y1),
            new Coordinate(x0, y1),
            new Coordinate(x0, y0)
        });
    }

    public static Geometry wkt(String text) {
        try {
            return new WKTReader(GEOMETRY).read(text);
        } catch (ParseException e) {
            throw new IllegalArgumentException(e);
        }
    }

    /** A connected area of uneven outline, now and then with islands inside, about {@code sizeMm} across. */
    public static Polygon ragged(long seed, double sizeMm) {
        SplittableRandom random = new SplittableRandom(seed);
        double x = 2000;
        double y = 0;
        Geometry area = GEOMETRY.createPolygon();
        for (int blob = 0; blob < 6; blob++) {
            area = area.union(star(random, x, y, sizeMm * (0.12 + 0.2 * random.nextDouble())));
            double turn = random.nextDouble() * 2 * Math.PI;
            x += 0.25 * sizeMm * Math.cos(turn);
            y += 0.25 * sizeMm * Math.sin(turn);
        }
        if (random.nextBoolean()) {
            area = area.difference(star(random, 2000, 0, sizeMm * 0.06));
        }
        Geometry largest = area;
        for (int i = 0; i < area.getNumGeometries(); i++) {
            Geometry part = area.getGeometryN(i);
            largest = largest == area || part.getArea() > largest.getArea() ? part : largest;
        }
        return (Polygon) largest;
    }

    private static Geometry star(SplittableRandom random, double x, double y, double radius) {
        Coordinate[] ring = new Coordinate[25];
        for (int i = 0; i < 24; i++) {
            double r = radius * (0.6 + 0.6 * random.nextDouble());
            double angle = 2 * Math.PI * i / 24;
            ring[i] = new Coordinate(x + r * Math.cos(angle), y + r * Math.sin(angle));
        }
        ring[24] = ring[0];
        return GEOMETRY.createPolygon(ring).buffer(0);
    }

    /** A fitting at a point. */
    public static Feature.Fitting fitting(String name, double x, double y, boolean loadBearing, double keepoutMm) {
        return new Feature.Fitting(
                HERE, name, GEOMETRY.createPoint(new Coordinate(x, y)), true, loadBearing, keepoutMm);
    }

    public static Deck deck(Polygon outline) {
        return new Deck(outline);
    }

    /** A face in the making. Void depth is laid down region by region; elsewhere it is zero. */
    public static final class Deck {
        public static final String FACE = "foredeck";

        private static final double CELL_MM = 25;
        private final Polygon outline;
        private final List<Feature> features = new ArrayList<>();
        private final List<Probe> probes = new ArrayList<>();
        private final List<Plug> plugs = new ArrayList<>();
        private final List<Feeler> feelers = new ArrayList<>();
        private final List<Region> regions = new ArrayList<>();
        private Laminate laminate = new Laminate("deck", 3, 12.5, 2.5, "e-glass-polyester", "balsa-150", true);
        private Settings settings = Settings.defaults();
        private double tiltDeg;
        private double uphillDeg;
        private double indexInside = 150;
        private final double[] depthMm;
        private final Raster frame;

        private Deck(Polygon outline) {
            this.outline = outline;
            var box = outline.getEnvelopeInternal();
            int columns = (int) Math.ceil(box.getWidth() / CELL_MM);
            int rows = (int) Math.ceil(box.getHeight() / CELL_MM);
            depthMm = new double[rows * columns];
            frame = new Raster(box.getMinX(), box.getMinY(), CELL_MM, rows, columns, depthMm);
        }

        public Deck with(Feature feature) {
            features.add(feature);
            return this;
        }

        public Deck slope(double tilt, double uphill) {
            tiltDeg = tilt;
            uphillDeg = uphill;
            return this;
        }

        public Deck with(Laminate other) {
            laminate = other;
            return this;
        }

        public Deck with(Settings other) {
            settings = other;
            return this;
        }

        public Deck probe(double x, double y, double voidDepthMm, CoreState state) {
            probes.add(new Probe(HERE, "P" + (probes.size() + 1), spot(x, y), voidDepthMm, state, null));
            return this;
        }

        public Deck probe(double x, double y, CoreState state, CoreMoisture moisture) {
            probes.add(new Probe(HERE, "P" + (probes.size() + 1), spot(x, y), 0, state, moisture));
            return this;
        }

        public Deck plug(double x, double y, double moisturePercent) {
            plugs.add(new Plug(HERE, "K" + (plugs.size() + 1), spot(x, y), moisturePercent));
            return this;
        }

        /** A rod pushed in, which went on. */
        public Deck feeler(double x1, double y1, double x2, double y2) {
            feelers.add(
                    new Feeler(HERE, "F" + (feelers.size() + 1), spot(x1, y1), spot(x2, y2), FeelerEnd.BEYOND, null));
            return this;
        }

        /** Moisture index of the cells inside any region that counts as wet; 0 elsewhere. */
        public Deck indexInside(double index) {
            indexInside = index;
            return this;
        }

        public Deck region(Condition condition, Polygon area, double meanDepthMm, double pWet) {
            return region(condition, area, (x, y) -> meanDepthMm, pWet);
        }

        /** The next region, R1 first; its volume is the depth over its area, P10 and P90 at 0.75 and 1.3 of it. */
        public Deck region(Condition condition, Polygon area, DoubleBinaryOperator depth, double pWet) {
            return region(condition, area, depth, pWet, 1.3);
        }

        /** @param large P90 of its volume over the middle */
        public Deck region(Condition condition, Polygon area, DoubleBinaryOperator depth, double pWet, double large) {
            double sum = 0;
            double deepest = 0;
            int cells = 0;
            // a cell more all round, so that the depth holds up to the region's edge
            var reach = new IndexedPointInAreaLocator(area.buffer(CELL_MM));
            var inside = new IndexedPointInAreaLocator(area);
            for (int i = 0; i < depthMm.length; i++) {
                double x = frame.centreX(i % frame.columns());
                double y = frame.centreY(i / frame.columns());
                Coordinate at = new Coordinate(x, y);
                if (reach.locate(at) != Location.EXTERIOR) {
                    depthMm[i] = depth.applyAsDouble(x, y);
                }
                if (inside.locate(at) != Location.EXTERIOR) {
                    sum += depthMm[i];
                    deepest = Math.max(deepest, depthMm[i]);
                    cells++;
                }
            }
            double mean = cells == 0 ? 0 : sum / cells;
            double volume = mean * area.getArea();
            regions.add(new Region(
                    "R" + (regions.size() + 1),
                    FACE,
                    FACE + "-B1",
                    condition,
                    area,
                    area.buffer(60).intersection(outline),
                    area.getInteriorPoint(),
                    pWet,
                    new Quantiles(0.75 * volume, volume, large * volume),
                    mean,
                    deepest));
            return this;
        }

        public Face face() {
            return new Face(FACE, tiltDeg, uphillDeg, outline, EdgeSupport.SIMPLE, laminate.name(), features);
        }

        public Survey survey() {
            return new Survey(
                    new Heading("Foredeck", LocalDate.of(2026, 4, 2), "", "", "", "", null, ""),
                    List.of(face()),
                    List.of(),
                    List.of(laminate),
                    Materials.builtIn(),
                    new Readings(List.of(), List.of(), probes, feelers, plugs, List.of()),
                    settings,
                    List.of(),
                    List.of(),
                    Judgements.NONE,
                    List.of(),
                    FrozenPlan.NONE);
        }

        public DamageMap damage() {
            double[] index = new double[depthMm.length];
            double[] wet = new double[depthMm.length];
            double[] loose = new double[depthMm.length];
            for (Region r : regions) {
                var inside = new IndexedPointInAreaLocator(r.likely());
                for (int i = 0; i < depthMm.length; i++) {
                    Coordinate at =
                            new Coordinate(frame.centreX(i % frame.columns()), frame.centreY(i / frame.columns()));
                    if (inside.locate(at) != Location.EXTERIOR) {
                        index[i] = r.wet() ? indexInside : 10;
                        wet[i] = r.pWetMean();
                        loose[i] = r.condition().loose() ? 0.9 : 0.1;
                    }
                }
            }
            Raster zero = frame.with(new double[depthMm.length]);
            Raster depth = frame.with(depthMm);
            Surfaces surfaces = new Surfaces(
                    frame.with(index),
                    zero,
                    frame.with(wet),
                    frame.with(loose),
                    depth.map(d -> d > 0.5 ? 0.9 : 0),
                    depth,
                    zero);
            Geometry sound = outline;
            for (Region r : regions) {
                sound = sound.difference(r.likely());
            }
            List<Polygon> rest = new ArrayList<>();
            for (int i = 0; i < sound.getNumGeometries(); i++) {
                if (sound.getGeometryN(i) instanceof Polygon p && !p.isEmpty()) {
                    rest.add(p);
                }
            }
            double area =
                    regions.stream().mapToDouble(r -> r.likely().getArea()).sum();
            Quantiles voids = regions.stream()
                    .map(Region::voidMm3)
                    .reduce(
                            Quantiles.ZERO,
                            (a, b) -> new Quantiles(a.p10() + b.p10(), a.p50() + b.p50(), a.p90() + b.p90()));
            FaceDamage damage = new FaceDamage(
                    face(),
                    List.of(new Bay(FACE + "-B1", FACE, outline)),
                    surfaces,
                    regions,
                    rest,
                    List.of(),
                    new Quantiles(0.9 * area, area, 1.1 * area),
                    voids,
                    List.of(),
                    List.of(),
                    List.of());
            return new DamageMap(List.of(damage), voids, damage.damagedMm2());
        }

        private static Spot spot(double x, double y) {
            return new Spot(FACE, x, y);
        }
    }
}
