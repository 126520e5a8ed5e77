package corewright;

import corewright.survey.CoreMoisture;
import corewright.survey.CoreState;
import corewright.survey.DeckLoad;
import corewright.survey.EdgeSupport;
import corewright.survey.Edit;
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
import corewright.survey.MethodOverride;
import corewright.survey.Moisture;
import corewright.survey.MovedHole;
import corewright.survey.Origin;
import corewright.survey.Part;
import corewright.survey.Photo;
import corewright.survey.Plug;
import corewright.survey.Probe;
import corewright.survey.Reading;
import corewright.survey.ReadingOverride;
import corewright.survey.Readings;
import corewright.survey.RuleOverride;
import corewright.survey.Side;
import corewright.survey.Sound;
import corewright.survey.Spot;
import corewright.survey.SurfaceTemperature;
import corewright.survey.Survey;
import corewright.survey.Tap;
import corewright.survey.WorkEntry;
import corewright.survey.settings.Settings;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/**
 * Surveys and edits drawn from a seed: every kind of reading and feature, every optional value present and absent, texts
 * with quotes, commas, line ends and letters of several scripts, numbers with all their digits. Not likely decks.
 */
public final class GeneratedSurveys {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();
    private static final List<String> FACES = List.of("foredeck", "cabin front");
    private static final List<String> METERS = List.of("A", "B 2");
    private static final List<String> LAMINATES = List.of("deck", "cabin");

    private final Random random;

    public GeneratedSurveys(long seed) {
        random = new Random(seed);
    }

    /** A survey with up to {@code most} readings of a kind. */
    public Survey survey(int most) {
        return new Survey(
                heading(),
                FACES.stream().map(this::face).toList(),
                METERS.stream().map(this::meter).toList(),
                LAMINATES.stream().map(this::laminate).toList(),
                materials(),
                readings(most),
                settings(),
                some(3, i -> logEntry()),
                some(3, i -> photo()),
                new Judgements(
                        some(3, i -> method()), some(3, i -> doubt()), some(3, i -> hole()), some(3, i -> rule())),
                some(3, i -> load()),
                plan());
    }

    private FrozenPlan plan() {
        return new FrozenPlan(
                List.of(issue()),
                some(3, i -> plannedRegion()),
                some(3, i -> plannedHole()),
                some(2, i -> plannedCut()),
                some(2, i -> plannedCup()),
                some(2, i -> purchase()));
    }

    private FrozenPlan.Issue issue() {
        LocalDate day = LocalDate.of(2026, 4, 2).plusDays(random.nextInt(1000));
        return new FrozenPlan.Issue(1 + random.nextInt(9), day, "0a1b2c3d4e5f", random.nextInt(99), 1, 2, 3, 4);
    }

    /** Names are to be different; by chance these are. */
    private FrozenPlan.PlannedRegion plannedRegion() {
        return new FrozenPlan.PlannedRegion(
                "R" + random.nextInt(1_000_000_000),
                spot(),
                pick(List.of("monitor", "dry-out", "inject", "recore")),
                pick(FrozenPlan.Standing.values()));
    }

    private FrozenPlan.PlannedHole plannedHole() {
        boolean nozzle = random.nextBoolean();
        return new FrozenPlan.PlannedHole(
                "R1-" + random.nextInt(1_000_000_000),
                "R1",
                spot(),
                pick(FrozenPlan.Kind.values()),
                number(1, 20),
                number(0, 40),
                number(0, 300),
                pick(FrozenPlan.Standing.values()),
                nozzle ? name() : "",
                nozzle ? number(1, 300) : 0);
    }

    private FrozenPlan.PlannedCut plannedCut() {
        double x = number(0, 500);
        Polygon area =
                GEOMETRY.createPolygon(new Coordinate[] {at(x, 0), at(x + 100, 0), at(x, number(10, 90)), at(x, 0)});
        return new FrozenPlan.PlannedCut("R2", FACES.get(0), area);
    }

    private FrozenPlan.PlannedCup plannedCup() {
        return new FrozenPlan.PlannedCup(1 + random.nextInt(9), "R1", "", number(0, 200), number(0, 90));
    }

    private FrozenPlan.Purchase purchase() {
        return new FrozenPlan.Purchase("mix " + random.nextInt(9), number(0, 900), number(0, 900), "g");
    }

    /** An edit that fits the survey. */
    public Edit edit(Survey survey) {
        int kind = random.nextInt(24);
        if (kind < 3) {
            List<Edit> together = new ArrayList<>();
            Survey now = survey;
            for (int i = random.nextInt(4); i >= 0; i--) {
                Edit edit = edit(now);
                together.add(edit);
                now = edit.apply(now);
            }
            return new Edit.Together(together);
        }
        List<Part<?>> parts = new ArrayList<>(Part.all());
        survey.faces().forEach(f -> parts.add(Part.features(f.name())));
        return edit(survey, parts.get(random.nextInt(parts.size())));
    }

    private <T> Edit edit(Survey survey, Part<T> part) {
        T item = part.type().cast(item(part));
        int size = part.of(survey).size();
        boolean exactlyOne =
                List.of(Part.HEADING, Part.MATERIALS, Part.SETTINGS, Part.ISSUE).contains(part);
        boolean named = List.of(Part.FACES, Part.METERS, Part.LAMINATES).contains(part);
        int choice = size == 0 ? 0 : exactlyOne || named ? 2 : random.nextInt(3);
        return switch (choice) {
            case 0 -> new Edit.Insert<>(part, random.nextInt(size + 1), item);
            case 1 -> new Edit.Remove<>(part, random.nextInt(size));
            default -> {
                int at = random.nextInt(size);
                yield new Edit.Replace<>(part, at, named ? part.type().cast(renewed(part, survey, at)) : item);
            }
        };
    }

    /** Another thing of the same name, so that what refers to it still finds it. */
    private Object renewed(Part<?> part, Survey survey, int at) {
        if (part.equals(Part.FACES)) {
            return face(survey.faces().get(at).name());
        }
        return part.equals(Part.METERS)
                ? meter(survey.meters().get(at).name())
                : laminate(survey.laminates().get(at).name());
    }

    private Object item(Part<?> part) {
        return switch (part.name()) {
            case "heading" -> heading();
            case "materials" -> materials();
            case "settings" -> settings();
            case "faces" -> face(FACES.get(0));
            case "meters" -> meter("A");
            case "laminates" -> laminate("deck");
            case "moisture" -> moisture();
            case "taps" -> tap("taps.csv");
            case "probes" -> probe();
            case "feelers" -> feeler();
            case "plugs" -> new Plug(origin("plugs.csv"), id(), spot(), number(0, 100));
            case "temperatures" -> temperature();
            case "cured_taps" -> tap("cured_taps.csv");
            case "work_log" -> logEntry();
            case "photos" -> photo();
            case "method_overrides" -> method();
            case "reading_overrides" -> doubt();
            case "moved_holes" -> hole();
            case "rule_overrides" -> rule();
            case "loads" -> load();
            case "repair_plan" -> issue();
            case "planned_regions" -> plannedRegion();
            case "planned_holes" -> plannedHole();
            case "planned_cuts" -> plannedCut();
            case "planned_cups" -> plannedCup();
            case "planned_purchases" -> purchase();
            default -> feature(random.nextInt(8));
        };
    }

    private Heading heading() {
        return new Heading(
                "Deck: " + text() + ".",
                LocalDate.of(2026, 4, 2).plusDays(random.nextInt(1000)),
                text(),
                text(),
                text(),
                text(),
                maybe(random.nextInt(400)),
                text());
    }

    private Face face(String name) {
        return new Face(
                name,
                number(0, 180),
                number(-180, 180),
                polygon(0, 900 + number(0, 100)),
                pick(EdgeSupport.values()),
                pick(LAMINATES),
                IntStream.range(0, 8).mapToObj(this::feature).toList());
    }

    private Feature feature(int kind) {
        Origin origin = origin("plan.csv");
        String name = name();
        return switch (kind) {
            case 0 -> opening(origin, name);
            case 1 -> new Feature.Divider(origin, name, line());
            case 2 -> new Feature.Support(origin, name, line(), pick(EdgeSupport.values()));
            case 3 ->
                new Feature.Fitting(
                        origin, name, anything(), random.nextBoolean(), random.nextBoolean(), number(0, 90));
            case 4 -> new Feature.Solid(origin, name, polygon(400, 50));
            case 5 -> new Feature.LaminateArea(origin, name, polygon(500, 80), pick(LAMINATES));
            case 6 -> new Feature.Disturbance(origin, name, anything());
            default -> new Feature.Access(origin, name, anything());
        };
    }

    private Feature opening(Origin origin, String name) {
        Polygon area = polygon(200, 100);
        return random.nextBoolean()
                ? new Feature.Opening(origin, name, area, pick(EdgeSupport.values()))
                : new Feature.Opening(
                        origin,
                        name,
                        area,
                        EdgeSupport.FREE,
                        number(10, 200),
                        number(2, 30),
                        maybe(pick(List.of("flax", "carbon-epoxy"))));
    }

    private Polygon polygon(double from, double side) {
        double a = from + number(0, 1);
        double b = a + side;
        return GEOMETRY.createPolygon(new Coordinate[] {at(a, a), at(b, a), at(b, b), at(a, b), at(a, a)});
    }

    private LineString line() {
        return GEOMETRY.createLineString(new Coordinate[] {at(number(0, 400), 10), at(number(500, 800), 700)});
    }

    private Geometry anything() {
        return switch (random.nextInt(4)) {
            case 0 -> polygon(600, 30);
            case 1 -> line();
            case 2 -> GEOMETRY.createMultiPoint(new Point[] {point(), point()});
            default -> point();
        };
    }

    private Point point() {
        return GEOMETRY.createPoint(at(number(0, 900), number(0, 900)));
    }

    private static Coordinate at(double x, double y) {
        return new Coordinate(x, y);
    }

    private Meter meter(String name) {
        Double dry = maybe(number(1, 10));
        Double wet =
                dry == null ? maybe(number(11, 50)) : (Double) number(11, 50); // a folder's dry alone makes it 2 x dry
        return new Meter(name, pick(Meter.Kind.values()), number(60, 999), dry, wet);
    }

    private Laminate laminate(String name) {
        return new Laminate(
                name,
                number(1, 5),
                number(60, 90),
                number(1, 5),
                "e-glass-polyester",
                random.nextBoolean() ? "cork 7" : "balsa-150",
                random.nextBoolean(),
                pick(Laminate.CoreForm.values()),
                random.nextBoolean() ? 0 : number(1, 90));
    }

    private Materials materials() {
        Map<String, Materials.Skin> skins = new HashMap<>(Materials.builtIn().skins());
        Map<String, Materials.Core> cores = new HashMap<>(Materials.builtIn().cores());
        skins.put("flax", new Materials.Skin("flax", number(1, 9e4), number(0.1, 0.4), number(9, 99), 1300, text()));
        cores.put(
                "cork 7",
                new Materials.Core(
                        "cork 7", number(90, 300), number(50, 99), number(5, 60), number(1, 9), number(1, 3), text()));
        return new Materials(skins, cores);
    }

    private Settings settings() {
        return GeneratedSettings.settings(random);
    }

    private Readings readings(int most) {
        return new Readings(
                some(most, i -> moisture()),
                some(most, i -> tap("taps.csv")),
                some(most, i -> probe()),
                some(most, i -> feeler()),
                some(most, i -> new Plug(origin("plugs.csv"), id(), spot(), number(0, 100))),
                some(most, i -> temperature()),
                some(most, i -> tap("cured_taps.csv")));
    }

    private Moisture moisture() {
        return new Moisture(
                origin("moisture.csv"),
                id(),
                spot(),
                number(0, 60),
                random.nextBoolean(),
                pick(METERS),
                maybe(number(-20, 40)),
                maybe(LocalDateTime.of(2026, 4, 2, 9, 15).plusSeconds(random.nextInt(100_000))),
                random.nextBoolean(),
                pick(Side.values()),
                text());
    }

    private Tap tap(String file) {
        Double contact = maybe(number(100, 900));
        Sound sound = contact == null ? pick(Sound.values()) : maybe(pick(Sound.values()));
        return new Tap(origin(file), id(), spot(), sound, contact, pick(Side.values()));
    }

    private Probe probe() {
        return new Probe(
                origin("probes.csv"),
                id(),
                spot(),
                random.nextInt(3) == 0 ? 0 : number(0, 59),
                maybe(pick(CoreState.values())),
                maybe(pick(CoreMoisture.values())));
    }

    private Feeler feeler() {
        Spot from = spot();
        Spot tip = new Spot(from.face(), number(0, 900), number(0, 900));
        return new Feeler(origin("feelers.csv"), id(), from, tip, pick(FeelerEnd.values()), maybe(number(0, 59)));
    }

    private SurfaceTemperature temperature() {
        Double celsius = maybe(number(-20, 90));
        return new SurfaceTemperature(
                origin("temperatures.csv"),
                id(),
                spot(),
                number(0, 1500) * 60,
                celsius,
                celsius == null ? random.nextBoolean() : null);
    }

    private WorkEntry logEntry() {
        return new WorkEntry(
                origin("log.csv"),
                "H" + random.nextInt(99),
                number(0, 1500) * 60,
                number(0, 300),
                maybe("V" + name()),
                maybe(1 + random.nextInt(9)),
                maybe("V" + name()),
                maybe(number(0, 20)),
                name(),
                name(),
                text(),
                name(),
                name(),
                maybe(1 + random.nextInt(9)),
                maybe(1 + random.nextInt(3)));
    }

    private Photo photo() {
        return new Photo(origin("photos.csv"), "pictures/" + random.nextInt(99) + " é.jpg", spot(), text());
    }

    private MethodOverride method() {
        return new MethodOverride(spot(), pick(List.of("monitor", "dry-out", "inject", "recore")), text(), text());
    }

    private RuleOverride rule() {
        return new RuleOverride(pick(RuleOverride.names()), "S. Keel", "why: " + random.nextInt(99) + ".");
    }

    private ReadingOverride doubt() {
        return new ReadingOverride(
                pick(Reading.Kind.values()), id(), spot(), pick(ReadingOverride.Trust.values()), text());
    }

    private MovedHole hole() {
        Spot planned = spot();
        return new MovedHole(
                pick(MovedHole.Kind.values()), planned, new Spot(planned.face(), number(0, 900), number(0, 900)));
    }

    private Origin origin(String file) {
        return new Origin(file, 2 + random.nextInt(1_000_000));
    }

    private DeckLoad load() {
        String face = pick(FACES);
        return random.nextBoolean()
                ? new DeckLoad(name() + "L", face, line(), number(0, 2000), 0, 0, 0)
                : new DeckLoad(
                        name() + "L",
                        face,
                        polygon(300, 50),
                        number(0, 2000),
                        number(0, 20),
                        number(-1e6, 1e6),
                        number(-1e6, 1e6));
    }

    private Spot spot() {
        return new Spot(pick(FACES), number(0, 900), number(0, 900));
    }

    private String id() {
        return pick(List.of("M", "ü-", "東", "x y ")) + random.nextInt(100_000);
    }

    /** Empty, plain, or with what trips up separators, quoting and character sets; never with spaces at its ends. */
    private String text() {
        return pick(List.of(
                "",
                "",
                "plain",
                "a, b; c",
                "he said \"wet\"",
                "two\nlines",
                "colon: # not a comment",
                "é ü ø 東京",
                "'",
                "- no list",
                "tab\there",
                "{brace}",
                "0123",
                "null",
                "yes"));
    }

    /** As {@link #text}, on one line: intake reads a break or tab in a name as a space. */
    private String name() {
        return text().replaceAll("\\s+", " ");
    }

    private double number(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private <T> @Nullable T maybe(T value) {
        return random.nextBoolean() ? value : null;
    }

    private <T> T pick(List<T> from) {
        return from.get(random.nextInt(from.size()));
    }

    private <T> T pick(T[] from) {
        return from[random.nextInt(from.length)];
    }

    private <T> List<T> some(int most, IntFunction<T> make) {
        return IntStream.rangeClosed(1, 1 + random.nextInt(most)).mapToObj(make).toList();
    }
}
