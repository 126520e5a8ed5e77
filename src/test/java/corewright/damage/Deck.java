package corewright.damage;

import corewright.reuse.Memory;
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
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

/** A survey of one face put together reading by reading; dry reads 10, wet 30. */
final class Deck {
    static final String FACE = "deck";

    Judgements judgements = Judgements.NONE;
    Meter meter = new Meter("A", Meter.Kind.RELATIVE, 100, 10.0, 30.0);
    double coreMm = 12.5;
    private final Polygon outline;
    private final List<Feature> features = new ArrayList<>();
    private final List<Moisture> moisture = new ArrayList<>();
    private final List<Tap> taps = new ArrayList<>();
    private final List<Probe> probes = new ArrayList<>();
    private final List<Feeler> feelers = new ArrayList<>();
    private final List<Plug> plugs = new ArrayList<>();

    Deck(String outline) {
        this.outline = (Polygon) wkt(outline);
    }

    /** 2 m by 1 m. */
    static Deck plain() {
        return new Deck("POLYGON((0 0,2000 0,2000 1000,0 1000,0 0))");
    }

    static Geometry wkt(String text) {
        try {
            return new WKTReader().read(text);
        } catch (ParseException e) {
            throw new IllegalArgumentException(e);
        }
    }

    Deck opening(String wkt) {
        features.add(new Feature.Opening(origin("plan.csv", 1), "hatch", (Polygon) wkt(wkt), EdgeSupport.FREE));
        return this;
    }

    Deck divider(String wkt) {
        features.add(new Feature.Divider(origin("plan.csv", 2), "strip", (LineString) wkt(wkt)));
        return this;
    }

    Deck solid(String wkt) {
        features.add(new Feature.Solid(origin("plan.csv", 3), "pad", (Polygon) wkt(wkt)));
        return this;
    }

    Deck metal(double x, double y) {
        Geometry point = wkt("POINT(" + x + " " + y + ")");
        features.add(new Feature.Fitting(origin("plan.csv", 4), "cleat", point, true, true, 60));
        return this;
    }

    Deck reads(double x, double y, double value) {
        return reads(x, y, value, false);
    }

    Deck reads(double x, double y, double value, boolean offScale) {
        Origin origin = origin("moisture.csv", moisture.size() + 2);
        moisture.add(new Moisture(
                origin,
                "M" + (moisture.size() + 1),
                spot(x, y),
                value,
                offScale,
                "A",
                null,
                null,
                false,
                Side.OUTER,
                ""));
        return this;
    }

    Deck taps(double x, double y, Sound sound) {
        taps.add(new Tap(
                origin("taps.csv", taps.size() + 2), "T" + (taps.size() + 1), spot(x, y), sound, null, Side.OUTER));
        return this;
    }

    Deck tapsFor(double x, double y, double contactUs) {
        taps.add(new Tap(
                origin("taps.csv", taps.size() + 2), "T" + (taps.size() + 1), spot(x, y), null, contactUs, Side.OUTER));
        return this;
    }

    Deck probes(double x, double y, double depthMm, @Nullable CoreState state, @Nullable CoreMoisture water) {
        String id = "P" + (probes.size() + 1);
        probes.add(new Probe(origin("probes.csv", probes.size() + 2), id, spot(x, y), depthMm, state, water));
        return this;
    }

    Deck feels(double x1, double y1, double x2, double y2, FeelerEnd end) {
        feelers.add(new Feeler(
                origin("feelers.csv", feelers.size() + 2),
                "F" + (feelers.size() + 1),
                spot(x1, y1),
                spot(x2, y2),
                end,
                null));
        return this;
    }

    Deck plugs(double x, double y, double percent) {
        plugs.add(new Plug(origin("plugs.csv", plugs.size() + 2), "C" + (plugs.size() + 1), spot(x, y), percent));
        return this;
    }

    /** Moisture every {@code step}: {@code high} within {@code radius} of the centre, else 11. */
    Deck moistureGrid(double step, double centreX, double centreY, double radius, double high) {
        for (double y = step / 2; y < 1000; y += step) {
            for (double x = step / 2; x < 2000; x += step) {
                reads(x, y, Math.hypot(x - centreX, y - centreY) < radius ? high : 11);
            }
        }
        return this;
    }

    /** Taps every {@code step}: hollow within {@code radius} of the centre, else sound. */
    Deck tapGrid(double step, double centreX, double centreY, double radius) {
        for (double y = step / 2; y < 1000; y += step) {
            for (double x = step / 2; x < 2000; x += step) {
                taps(x, y, Math.hypot(x - centreX, y - centreY) < radius ? Sound.HOLLOW : Sound.SOUND);
            }
        }
        return this;
    }

    Face face() {
        return new Face(FACE, 0, 0, outline, EdgeSupport.SIMPLE, "lay-up", features);
    }

    Survey survey() {
        return survey(face());
    }

    Survey survey(Face... faces) {
        Heading heading = new Heading("test deck", LocalDate.of(2026, 4, 2), "", "", "", "", null, "");
        return new Survey(
                heading,
                List.of(faces),
                List.of(meter),
                List.of(new Laminate("lay-up", 3, coreMm, 2.5, "e-glass-polyester", "balsa-150", true)),
                Materials.builtIn(),
                new Readings(moisture, taps, probes, feelers, plugs, List.of()),
                Settings.defaults(),
                List.of(),
                List.of(),
                judgements,
                List.of(),
                FrozenPlan.NONE);
    }

    FaceDamage map() {
        return Damage.fit(survey(), new Memory()).map().faces().get(0);
    }

    static Spot spot(double x, double y) {
        return new Spot(FACE, x, y);
    }

    private static Origin origin(String file, long line) {
        return new Origin(file, line);
    }
}
