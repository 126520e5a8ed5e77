package corewright.bench;

import corewright.damage.NextReading;
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
import corewright.survey.Meter;
import corewright.survey.Moisture;
import corewright.survey.Origin;
import corewright.survey.Plug;
import corewright.survey.Probe;
import corewright.survey.Readings;
import corewright.survey.Side;
import corewright.survey.Sound;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.Tap;
import corewright.survey.settings.Settings;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * An invented deck: what is under it, and a survey of it as a person would take one. By the seed: size and core, one or two
 * meters of different scales, a grid, a jittered grid or places at will; falsely high readings beside metal, meters at the
 * end of their scale, calls misheard or contact times, pilot holes at some hollow taps or only at the worst, rods, plugs.
 */
public final class InventedDeck {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();
    private static final String FACE = "deck";
    private static final double CELL_MM = 25;

    final InventedTruth.Kind kind;
    final InventedTruth truth;
    private final Random random;
    private final double lengthMm;
    private final double widthMm;
    private final double coreMm;
    private final boolean timed;
    private final List<Meter> meters = new ArrayList<>();
    private final List<Coordinate> fittings = new ArrayList<>();
    private final List<Feature> features = new ArrayList<>();
    private final List<Moisture> moisture = new ArrayList<>();
    private final List<Tap> taps = new ArrayList<>();
    private final List<Probe> probes = new ArrayList<>();
    private final List<Feeler> feelers = new ArrayList<>();
    private final List<Plug> plugs = new ArrayList<>();

    public InventedDeck(InventedTruth.Kind kind, long seed) {
        this.kind = kind;
        random = new Random(1000 * seed + kind.ordinal());
        lengthMm = 1800 + 2200 * random.nextDouble();
        widthMm = 1000 + 1200 * random.nextDouble();
        coreMm = new double[] {9.5, 12.5, 19, 25}[random.nextInt(4)];
        timed = random.nextDouble() < 0.2;
        for (int i = random.nextInt(3) == 0 ? 2 : 1; i > 0; i--) {
            double full = random.nextBoolean() ? 100 : 40;
            double dry = full * (0.05 + 0.1 * random.nextDouble());
            double wet = dry + full * (0.15 + 0.2 * random.nextDouble());
            meters.add(new Meter("M" + i, Meter.Kind.RELATIVE, full, dry, wet));
        }
        for (int i = 4 + random.nextInt(5); i > 0; i--) {
            Coordinate at = new Coordinate(lengthMm * random.nextDouble(), widthMm * random.nextDouble());
            fittings.add(at);
            features.add(new Feature.Fitting(
                    origin("plan.csv", i),
                    "fitting " + i,
                    GEOMETRY.createPoint(at),
                    random.nextDouble() < 0.6,
                    false,
                    60));
        }
        truth = new InventedTruth(kind, random, lengthMm, widthMm, coreMm, fittings);
        if (random.nextInt(3) == 0) {
            double x = lengthMm * (0.3 + 0.4 * random.nextDouble());
            LineString line = GEOMETRY.createLineString(
                    new Coordinate[] {new Coordinate(x, -10), new Coordinate(x, widthMm + 10)});
            features.add(new Feature.Divider(origin("plan.csv", 20), "beam", line));
        }
        read();
    }

    /** The same deck surveyed once more, with what is under it now. */
    private InventedDeck(InventedDeck first, InventedTruth now, long seed, boolean samePlaces) {
        kind = first.kind;
        truth = now;
        random = new Random(seed);
        lengthMm = first.lengthMm;
        widthMm = first.widthMm;
        coreMm = first.coreMm;
        timed = first.timed;
        meters.addAll(first.meters);
        fittings.addAll(first.fittings);
        features.addAll(first.features);
        if (samePlaces) {
            first.moisture.forEach(
                    m -> moisture.add(moisture(m.spot().xMm(), m.spot().yMm())));
            first.taps.forEach(t -> taps.add(tap(t.spot().xMm(), t.spot().yMm())));
            open();
        } else {
            read();
        }
    }

    /**
     * The same deck surveyed once more: every reading drawn anew.
     *
     * @param now what is under it by then
     * @param samePlaces meter and hammer go to the same places; else to places drawn anew, at another spacing
     */
    InventedDeck again(InventedTruth now, long seed, boolean samePlaces) {
        return new InventedDeck(this, now, seed, samePlaces);
    }

    private void read() {
        places(110 + 90 * random.nextDouble()).forEach(c -> moisture.add(moisture(c.x, c.y)));
        places(90 + 80 * random.nextDouble()).forEach(c -> taps.add(tap(c.x, c.y)));
        open();
    }

    /** Pilot holes, rods and plugs where the readings ask for them. */
    private void open() {
        List<Spot> hollow = new ArrayList<>(taps.stream()
                .map(Tap::spot)
                .filter(s -> truth.looseInner(s.xMm(), s.yMm()) > 0)
                .toList());
        java.util.Collections.shuffle(hollow, random);
        if (random.nextInt(3) == 0) { // only the worst
            hollow.sort(Comparator.comparingDouble(s -> -truth.looseInner(s.xMm(), s.yMm())));
        }
        hollow.stream().limit(2 + random.nextInt(10)).forEach(s -> probes.add(probe(s.xMm(), s.yMm())));
        moisture.stream()
                .filter(m -> m.value() > share(m, 0.5))
                .limit(random.nextInt(5))
                .toList()
                .forEach(m -> probes.add(probe(m.spot().xMm(), m.spot().yMm())));
        if (random.nextInt(3) == 0) {
            probes.stream().filter(p -> p.voidDepthMm() > 1).limit(2).forEach(p -> feelers.add(feeler(p.spot())));
            moisture.stream().skip(5).limit(2).forEach(m -> plugs.add(plug(m.spot())));
        }
    }

    private double share(Moisture m, double share) {
        Meter meter = meters.stream()
                .filter(x -> x.name().equals(m.meter()))
                .findFirst()
                .orElseThrow();
        double dry = meter.dry() == null ? 0 : meter.dry();
        return dry + 2 * share * ((meter.wet() == null ? 0 : meter.wet()) - dry);
    }

    /** A grid, a jittered one, or as many places at will. */
    private List<Coordinate> places(double step) {
        int how = random.nextInt(3);
        List<Coordinate> places = new ArrayList<>();
        for (double y = step / 2; y < widthMm; y += step) {
            for (double x = step / 2; x < lengthMm; x += step) {
                double px = how == 2 ? lengthMm * random.nextDouble() : x + how * 0.3 * step * random.nextGaussian();
                double py = how == 2 ? widthMm * random.nextDouble() : y + how * 0.3 * step * random.nextGaussian();
                places.add(new Coordinate(within(px, lengthMm), within(py, widthMm)));
            }
        }
        return places;
    }

    private static double within(double v, double most) {
        return Math.rint(Math.max(1, Math.min(most - 1, v)));
    }

    /** The share of the span goes with a logistic curve through the edge of the wet; 4 to 6 % of span is scatter. */
    private Moisture moisture(double x, double y) {
        Meter meter = meters.get(random.nextInt(meters.size()));
        double dry = meter.dry() == null ? 0 : meter.dry();
        double span = 2 * ((meter.wet() == null ? 0 : meter.wet()) - dry);
        double s = 1 / (1 + Math.exp(-truth.wetInner(x, y) / 40)) + 0.05 * random.nextGaussian();
        for (Feature f : features) {
            if (f instanceof Feature.Fitting g
                    && g.metal()
                    && g.geometry().getCoordinate().distance(new Coordinate(x, y)) < 100) {
                s += 0.5 * random.nextDouble() * random.nextInt(2);
            }
        }
        double value = Math.max(0, Math.rint(dry + span * s));
        boolean off = value >= meter.fullScale();
        String id = "M" + (moisture.size() + 1);
        return new Moisture(
                origin("moisture.csv", moisture.size() + 2),
                id,
                spot(x, y),
                off ? meter.fullScale() : value,
                off,
                meter.name(),
                null,
                null,
                false,
                Side.OUTER,
                "");
    }

    private Tap tap(double x, double y) {
        double inner = truth.looseInner(x, y) + 20 * random.nextGaussian();
        Sound sound = inner > 20 ? Sound.HOLLOW : inner > -20 ? Sound.DULL : Sound.SOUND;
        if (random.nextDouble() < 0.02) {
            sound = Sound.values()[random.nextInt(3)];
        }
        double us = (200 + 8 * random.nextGaussian()) * (sound == Sound.SOUND ? 1 : sound == Sound.DULL ? 1.45 : 2.5);
        String id = "T" + (taps.size() + 1);
        return new Tap(
                origin("taps.csv", taps.size() + 2),
                id,
                spot(x, y),
                timed ? null : sound,
                timed ? us : null,
                Side.OUTER);
    }

    private Probe probe(double x, double y) {
        double depth = truth.depthMm(x, y);
        double read = depth < 0.3 ? 0 : Math.max(0, Math.min(coreMm, depth + 0.5 * random.nextGaussian()));
        boolean wet = truth.wetInner(x, y) > 0;
        CoreState state = wet ? (depth > 2 ? CoreState.ROTTED : CoreState.WET) : CoreState.DRY;
        String id = "P" + (probes.size() + 1);
        return new Probe(origin("probes.csv", probes.size() + 2), id, spot(x, y), read, state, null);
    }

    /** A rod of half a metre, pushed until it meets core. */
    private Feeler feeler(Spot from) {
        double angle = 2 * Math.PI * random.nextDouble();
        double length = 0;
        while (length < 500
                && truth.depthMm(at(from.xMm(), length, Math.cos(angle)), at(from.yMm(), length, Math.sin(angle)))
                        > 1) {
            length += 10;
        }
        Spot tip = spot(at(from.xMm(), length, Math.cos(angle)), at(from.yMm(), length, Math.sin(angle)));
        FeelerEnd end = length < 500 ? FeelerEnd.FIRM : FeelerEnd.BEYOND;
        String id = "F" + (feelers.size() + 1);
        return new Feeler(origin("feelers.csv", feelers.size() + 2), id, from, tip, end, null);
    }

    private static double at(double from, double length, double direction) {
        return from + length * direction;
    }

    private Plug plug(Spot at) {
        double percent = truth.wetInner(at.xMm(), at.yMm()) > 0 ? 35 : 11;
        return new Plug(origin("plugs.csv", plugs.size() + 2), "C" + (plugs.size() + 1), at, percent);
    }

    /** Takes one more reading of a kind, as the survey's others were taken. */
    void take(NextReading.Kind kind, double x, double y) {
        switch (kind) {
            case MOISTURE -> moisture.add(moisture(x, y));
            case TAP -> taps.add(tap(x, y));
            case PROBE -> probes.add(probe(x, y));
        }
    }

    /** Leaves one of so many moisture readings and taps, as a hurried surveyor would. */
    InventedDeck hurried(int every) {
        thin(moisture, every);
        thin(taps, every);
        return this;
    }

    private static void thin(List<?> readings, int every) {
        for (int i = readings.size() - 1; i >= 0; i--) {
            if (i % every != 0) {
                readings.remove(i);
            }
        }
    }

    double areaMm2() {
        return lengthMm * widthMm;
    }

    double lengthMm() {
        return lengthMm;
    }

    double widthMm() {
        return widthMm;
    }

    public Survey survey() {
        Polygon outline = GEOMETRY.createPolygon(new Coordinate[] {
            new Coordinate(0, 0),
            new Coordinate(lengthMm, 0),
            new Coordinate(lengthMm, widthMm),
            new Coordinate(0, widthMm),
            new Coordinate(0, 0)
        });
        return new Survey(
                new Heading("invented deck", LocalDate.of(2026, 4, 2), "", "", "", "", null, ""),
                List.of(new Face(FACE, 0, 0, outline, EdgeSupport.SIMPLE, "lay-up", features)),
                meters,
                List.of(new Laminate("lay-up", 3, coreMm, 2.5, "e-glass-polyester", "balsa-150", true)),
                Materials.builtIn(),
                new Readings(moisture, taps, probes, feelers, plugs, List.of()),
                Settings.defaults(),
                List.of(),
                List.of(),
                Judgements.NONE,
                List.of(),
                FrozenPlan.NONE);
    }

    public Truth grids() {
        return new Truth(
                TruthGrid.over(lengthMm, widthMm, CELL_MM, (x, y) -> on(x, y, truth.wetInner(x, y) > 0 ? 1 : 0)),
                TruthGrid.over(lengthMm, widthMm, CELL_MM, (x, y) -> on(x, y, truth.looseInner(x, y) > 0 ? 1 : 0)),
                TruthGrid.over(lengthMm, widthMm, CELL_MM, (x, y) -> on(x, y, truth.depthMm(x, y))));
    }

    private double on(double x, double y, double value) {
        return x < lengthMm && y < widthMm ? value : Double.NaN;
    }

    private static Spot spot(double x, double y) {
        return new Spot(FACE, x, y);
    }

    private static Origin origin(String file, long line) {
        return new Origin(file, line);
    }
}
