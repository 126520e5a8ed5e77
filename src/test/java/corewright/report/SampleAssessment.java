package corewright.report;

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
import corewright.decision.BuyingItem;
import corewright.decision.Choice;
import corewright.decision.Decision;
import corewright.decision.Method;
import corewright.decision.RegionDecision;
import corewright.repair.plan.Batch;
import corewright.repair.plan.Fill;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.Outlook;
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
import corewright.survey.Probe;
import corewright.survey.Reading;
import corewright.survey.Readings;
import corewright.survey.Side;
import corewright.survey.Sound;
import corewright.survey.Spot;
import corewright.survey.Subject;
import corewright.survey.Survey;
import corewright.survey.Tap;
import corewright.survey.settings.Settings;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

/** An invented deck with its conclusions written by hand, so that what is printed can be checked against it. */
public final class SampleAssessment {
    static final String FACE = "foredeck";

    private SampleAssessment() {}

    /** One face, a void that is injected, a wet patch that is dried, a loose wet one under a load. */
    public static Assessment damaged() {
        List<Region> regions = List.of(
                region("R1", Condition.VOID, "POLYGON((2200 450,2750 450,2750 760,2200 760,2200 450))", 40, 0.12),
                region(
                        "R2",
                        Condition.WET_DELAMINATED,
                        "POLYGON((1200 -260,1560 -260,1560 260,1200 260,1200 -260))",
                        60,
                        0.93),
                region(
                        "R3",
                        Condition.WET,
                        "POLYGON((2500 -1000,2900 -1000,2900 -620,2500 -620,2500 -1000))",
                        50,
                        0.8));
        return assessment(regions, List.of(next()), List.of(finding()));
    }

    /** One face on which nothing is wrong. */
    public static Assessment sound() {
        return assessment(List.of(), List.of(), List.of());
    }

    /** The same deck, of which next to nothing was read. */
    public static Assessment unread() {
        Assessment sound = sound();
        Readings none = new Readings(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
        return new Assessment(
                sound.survey().with(none),
                sound.damage(),
                sound.stiffness(),
                sound.plans(),
                sound.gains(),
                sound.decision(),
                sound.work(),
                sound.findings(),
                sound.next(),
                sound.ages());
    }

    /** One face with this many small wet patches. */
    public static Assessment crowded(int count) {
        List<Region> regions = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double x = 900 + 330 * (i % 6);
            double y = i < 6 ? 380 : -700;
            regions.add(region(
                    "R" + (i + 1),
                    Condition.values()[1 + i % 4],
                    String.format(
                            java.util.Locale.ROOT,
                            "POLYGON((%1$f %2$f,%3$f %2$f,%3$f %4$f,%1$f %4$f,%1$f %2$f))",
                            x,
                            y,
                            x + 180,
                            y + 150),
                    30,
                    0.7));
        }
        return assessment(regions, List.of(next()), List.of(finding()));
    }

    static Assessment assessment(List<Region> regions, List<NextReading> next, List<Finding> findings) {
        Survey survey = survey();
        Face face = survey.faces().get(0);
        Geometry core =
                face.outline().difference(polygon("POLYGON((1650 -280,2210 -280,2210 280,1650 280,1650 -280))"));
        Geometry sound = core;
        double damaged = 0;
        double empty = 0;
        for (Region region : regions) {
            sound = sound.difference(region.likely());
            damaged += region.likely().getArea();
            empty += region.voidMm3().p50();
        }
        Quantiles voids = new Quantiles(0.74 * empty, empty, 1.3 * empty);
        FaceDamage damage = new FaceDamage(
                face,
                List.of(new Bay("foredeck-B1", FACE, (Polygon) core)),
                surfaces(face),
                regions,
                List.of((Polygon) sound),
                regions.isEmpty()
                        ? List.of()
                        : List.of(new Undecided(
                                FACE,
                                polygon("POLYGON((1000 -560,1200 -560,1200 -420,1000 -420,1000 -560))"),
                                0.5,
                                "Nothing was read within 400 mm.")),
                new Quantiles(0.9 * damaged, damaged, 1.25 * damaged),
                voids,
                next,
                findings,
                List.of());
        List<InjectionPlan> injections = regions.stream()
                .filter(r -> r.condition() == Condition.VOID)
                .limit(1)
                .map(SampleAssessment::injection)
                .toList();
        return Assessments.of(
                survey,
                new DamageMap(List.of(damage), voids, damage.damagedMm2()),
                StiffnessMap.NONE,
                new RepairOptions(injections, List.of()),
                decision(regions, injections),
                findings,
                next);
    }

    public static Survey survey() {
        Origin plan = new Origin("plan.csv", 2);
        Polygon outline = polygon("POLYGON((0 0,850 -640,1700 -900,2500 -1090,3100 -1210,3100 1210,2500 1090,1700 900,"
                + "850 640,0 0))");
        Face face = new Face(
                FACE,
                3,
                180,
                outline,
                EdgeSupport.SIMPLE,
                "deck",
                List.of(
                        new Feature.Opening(
                                plan,
                                "hatch",
                                polygon("POLYGON((1650 -280,2210 -280,2210 280,1650 280,1650 -280))"),
                                EdgeSupport.FREE),
                        new Feature.Fitting(plan, "mooring bollard", geometry("POINT(1400 0)"), true, true, 60),
                        new Feature.Fitting(
                                plan, "after port stanchion", geometry("POINT(2700 -1050)"), true, false, 60)));
        return new Survey(
                new Heading(
                        "Foredeck, 11.2 m sloop",
                        LocalDate.of(2026, 4, 14),
                        "Alma",
                        "",
                        "T. Example",
                        "dry, 14 C",
                        9,
                        ""),
                List.of(face),
                List.of(new Meter("A", Meter.Kind.RELATIVE, 100, 10.0, 25.0)),
                List.of(new Laminate("deck", 3, 12.5, 2.5, "e-glass-polyester", "balsa-150", true)),
                Materials.builtIn(),
                new Readings(
                        moisture(),
                        taps(),
                        List.of(new Probe(new Origin("probes.csv", 2), "P1", spot(2400, 600), 5, null, null)),
                        List.of(),
                        List.of(),
                        List.of()),
                Settings.defaults(),
                List.of(),
                List.of(),
                Judgements.NONE,
                List.of(),
                FrozenPlan.NONE);
    }

    static Region region(String id, Condition condition, String wkt, double marginMm, double pWet) {
        Polygon likely = polygon(wkt);
        Geometry possible =
                likely.buffer(marginMm).intersection(survey().faces().get(0).outline());
        double litres = condition == Condition.VOID ? likely.getArea() * 5 : 0;
        return new Region(
                id,
                FACE,
                "foredeck-B1",
                condition,
                likely,
                possible,
                likely.getInteriorPoint(),
                pWet,
                new Quantiles(0.74 * litres, litres, 1.3 * litres),
                condition == Condition.VOID ? 5 : 0,
                condition == Condition.VOID ? 7.2 : 0);
    }

    /** Batches in tenths of a gram that no binary fraction holds, so that adding them up is a test. */
    private static InjectionPlan injection(Region region) {
        List<Hole> holes = List.of(
                hole(region, "-1", Hole.Kind.INJECTION, 1, 2290, 530),
                hole(region, "-2", Hole.Kind.INJECTION, 2, 2650, 680),
                hole(region, "-V1", Hole.Kind.VENT, 3, 2290, 700));
        List<Batch> batches = List.of(
                new Batch(1, region.id(), List.of(region.id() + "-1"), 100.14, 35.049, 0, 360, 420, 2940),
                new Batch(
                        2,
                        region.id(),
                        List.of(region.id() + "-1", region.id() + "-2"),
                        92.36,
                        32.326,
                        500,
                        860,
                        920,
                        3440));
        return new InjectionPlan(
                region.id(),
                List.of(new InjectionPlan.Part(region.id(), 0.98, 175_800, 120)),
                "epoxy-foam-240",
                region.voidMm3(),
                120,
                "work time",
                holes,
                0.98,
                batches,
                192.5,
                67.375,
                340,
                List.of(),
                List.of("Never drill past the depth stop."),
                Fill.NONE,
                Outlook.NONE);
    }

    private static Hole hole(Region region, String suffix, Hole.Kind kind, int order, double x, double y) {
        boolean fills = kind == Hole.Kind.INJECTION;
        return new Hole(
                region.id() + suffix,
                region.id(),
                kind,
                order,
                spot(x, y),
                6.4,
                6.5,
                fills ? 120 : 0,
                fills ? region.voidMm3().p50() / 2 : 0,
                null,
                Hole.Range.NONE,
                0);
    }

    private static Decision decision(List<Region> regions, List<InjectionPlan> injections) {
        List<RegionDecision> decisions = regions.stream()
                .map(r -> {
                    boolean injected =
                            injections.stream().anyMatch(p -> p.region().equals(r.id()));
                    boolean loaded = r.id().equals("R2");
                    Method method =
                            injected ? Method.INJECT : r.condition() == Condition.WET ? Method.DRY_OUT : Method.RECORE;
                    return new RegionDecision(
                            r.id(),
                            method,
                            List.of("The reason that settled " + r.id() + "."),
                            injected ? "Prove that the core is dry: a probe or a plug in " + r.id() + "." : null,
                            loaded ? Map.of(Method.INJECT, "It holds the mooring bollard.") : Map.of(),
                            loaded);
                })
                .toList();
        List<Choice> choices = regions.isEmpty()
                ? List.of(new Choice(
                        "Leave it, watch it",
                        "read again each year",
                        300,
                        500,
                        0,
                        0,
                        Optional.empty(),
                        "Nothing to repair.",
                        true))
                : List.of(
                        new Choice(
                                "Leave it, watch it",
                                "all regions",
                                300,
                                500,
                                0,
                                0,
                                Optional.of(new Quantiles(0.42, 0.48, 0.55)),
                                "Water keeps spreading.",
                                false),
                        new Choice(
                                "Repair what needs it",
                                "inject R1; cut out R2; dry R3",
                                3900,
                                5600,
                                8,
                                11,
                                Optional.of(new Quantiles(0.78, 0.85, 0.91)),
                                "The fill is proved by tapping and by weight.",
                                true),
                        new Choice(
                                "Open and renew all",
                                "new core in R1 to R3",
                                7800,
                                11500,
                                18,
                                26,
                                Optional.of(new Quantiles(1, 1, 1)),
                                "Most certain.",
                                false));
        return new Decision(
                decisions,
                injections,
                List.of(),
                choices,
                List.of(new BuyingItem("epoxy-foam-240, part A", 192.5, 252, "g", "P50 plus waste; P90 plus waste")),
                List.of());
    }

    private static NextReading next() {
        return new NextReading(1, NextReading.Kind.TAP, spot(1100, -500), 0.0281234567, NextReading.Unit.SQUARE_METRE);
    }

    private static Finding finding() {
        return new Finding(
                Finding.Severity.DOUBT,
                new Origin("moisture.csv", 14),
                new About.OfReading(
                        new Reading.Key(Reading.Kind.MOISTURE, "=M12", spot(1400, 40.04)), spot(1400, 40.04)),
                Subject.METAL,
                "The mooring bollard is 40 mm away, and metal raises readings.",
                "It counts as an upper bound.");
    }

    private static Surfaces surfaces(Face face) {
        double[] values = new double[4 * 6];
        for (int i = 0; i < values.length; i++) {
            values[i] = i == 0 ? Double.NaN : i / 10.0;
        }
        Raster raster = new Raster(0, -1250.5, 625, 4, 6, values);
        return new Surfaces(raster, raster, raster, raster, raster, raster, raster);
    }

    /** A dry grid of 300 mm, so that the face counts as read. */
    private static List<Moisture> moisture() {
        Origin file = new Origin("moisture.csv", 2);
        return grid().stream()
                .map(s -> new Moisture(file, "M", s, 10, false, "A", null, null, false, Side.OUTER, ""))
                .toList();
    }

    private static List<Tap> taps() {
        Origin file = new Origin("taps.csv", 2);
        return grid().stream()
                .map(s -> new Tap(file, "T", s, Sound.SOUND, null, Side.OUTER))
                .toList();
    }

    private static List<Spot> grid() {
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < 11; i++) {
            for (int j = -3; j <= 3; j++) {
                spots.add(spot(150 + 295 * i, 0.9 * (0.13 + 0.087 * i) * 400 * j));
            }
        }
        return spots;
    }

    static Spot spot(double x, double y) {
        return new Spot(FACE, x, y);
    }

    public static Polygon polygon(String wkt) {
        return (Polygon) geometry(wkt);
    }

    private static Geometry geometry(String wkt) {
        try {
            return new WKTReader().read(wkt);
        } catch (ParseException e) {
            throw new IllegalArgumentException(wkt, e);
        }
    }
}
