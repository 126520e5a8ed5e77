package corewright.repair;

import static corewright.DamageFixtures.deck;
import static corewright.DamageFixtures.fitting;
import static corewright.DamageFixtures.ragged;
import static corewright.DamageFixtures.rectangle;
import static corewright.DamageFixtures.wkt;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.DamageFixtures;
import corewright.DamageFixtures.Deck;
import corewright.damage.Condition;
import corewright.damage.Region;
import corewright.repair.mix.HeldCups;
import corewright.repair.mix.Lifts;
import corewright.repair.mix.Mix;
import corewright.repair.pattern.Cavity;
import corewright.repair.pattern.Travel;
import corewright.repair.plan.Batch;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.RecorePlan;
import corewright.repair.plan.RepairOptions;
import corewright.reuse.Memory;
import corewright.survey.EdgeSupport;
import corewright.survey.Feature;
import corewright.survey.Laminate;
import corewright.survey.Origin;
import corewright.survey.settings.Drilling;
import corewright.survey.settings.Resin;
import corewright.survey.settings.Settings;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.linearref.LengthIndexedLine;

class InjectionPlanTest {
    private static final Polygon DECK = rectangle(0, -1500, 4000, 1500);

    /** 1.3 times the thinnest covering of the plane (Kershner 1939); the edge of a small shape costs the rest. */
    @ParameterizedTest
    @CsvSource({"420, 420, 60", "450, 300, 50", "480, 320, 80"}) // patterns of more holes: HolePatternTest
    void compactRegionsNeedFewHoles(double length, double width, double reachMm) {
        InjectionPlan plan = plan(deck(DECK)
                .with(capped(reachMm))
                .region(Condition.VOID, rectangle(200, -800, 200 + length, -800 + width), 4, 0.1));
        assertThat(plan.reachMm()).isEqualTo(reachMm);
        assertThat(plan.coveredFraction()).isGreaterThanOrEqualTo(0.995);
        InjectionPlan.Part part = plan.parts().get(0);
        assertThat(part.holeHexEstimate())
                .isCloseTo(2 * length * width / (3 * Math.sqrt(3) * reachMm * reachMm), within(1e-9));
        assertThat(part.holeLowerBound()).isEqualTo((int) Math.ceil(length * width / (Math.PI * reachMm * reachMm)));
        assertThat(plan.count(Hole.Kind.INJECTION))
                .isBetween(part.holeLowerBound(), (int) Math.floor(1.3 * part.holeHexEstimate()));
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 6);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void propertiesHoldOnRaggedRegions(long seed) {
        Deck deck = randomDeck(seed);
        Region region = deck.damage().regions().get(0);
        InjectionPlan plan = plan(deck);
        Laminate laminate = deck.survey().laminates().get(0);

        assertThat(plan.count(Hole.Kind.INJECTION)).isPositive();
        for (Hole hole : plan.holes()) {
            Point at = point(hole.spot().coordinate());
            assertThat(region.likely().covers(at)).as(hole.id()).isTrue();
            Hole.Nozzle nozzle = hole.nozzle();
            if (nozzle != null) {
                assertThat(nozzle.pushMm()).as(hole.id()).isLessThanOrEqualTo(300);
                continue;
            }
            for (Feature.Fitting f : deck.face().all(Feature.Fitting.class)) {
                assertThat(f.geometry().distance(at)).as(hole.id()).isGreaterThanOrEqualTo(f.keepoutMm());
            }
            for (Feature.Support s : deck.face().all(Feature.Support.class)) {
                assertThat(s.geometry().distance(at)).as(hole.id()).isGreaterThanOrEqualTo(12.5);
            }
            assertThat(hole.depthStopMm())
                    .isGreaterThan(laminate.outerSkinMm())
                    .isLessThanOrEqualTo(laminate.outerSkinMm() + laminate.coreMm() - 1.5 + 1e-9);
        }
        assertThat(plan.holes().stream().mapToDouble(Hole::servedMm3).sum())
                .isCloseTo(plan.cavityMm3().p50(), Percentage.withPercentage(1e-9));
        assertThat(plan.batches().stream()
                        .mapToDouble(b -> b.partAG() + b.partBG())
                        .sum())
                .isCloseTo(plan.resinG() + plan.hardenerG(), Percentage.withPercentage(1e-9));
        assertThat(plan.batches().stream()
                        .flatMap(b -> b.holes().stream())
                        .distinct()
                        .toList())
                .containsExactlyElementsOf(
                        plan.holes().stream().filter(Hole::fills).map(Hole::id).toList());
        assertThat(plan.holes().stream().map(Hole::order).toList()).isSorted().doesNotHaveDuplicates();
        coverageHolds(region.likely(), plan);
        Resin resin = deck.survey().settings().resins().stream()
                .filter(r -> r.name().equals(plan.resin()))
                .findFirst()
                .orElseThrow();
        double netG = (plan.resinG() + plan.hardenerG())
                * (1 - deck.survey().settings().drilling().wasteFraction());
        assertThat(plan.fill().liquidShare())
                .as("no more mix in the cavity than was put in")
                .isBetween(
                        0.01,
                        netG / resin.densityKgM3() * 1e6 / plan.cavityMm3().p50() * (1 + 1e-6));
        assertThat(netG)
                .as("no more than the cavity's, rounded to what is shown")
                .isLessThan(Mix.of(plan.cavityMm3().p50(), resin, 0.15).netG() + 0.5);
        cupsAddUpToTheMostLikelySpace(plan, resin, deck.survey().settings());
        eachHoleTakesItsGrams(plan, resin, netG);
        assertThat(plan.fill().emptyShare())
                .isLessThan(0.09); // 0.082 at most when written: small pockets of a small cavity
    }

    /** Of foam and, the last, of thin epoxy; small, as the size of a cavity changes nothing about it. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void theSameCavityGivesTheSamePlan(long seed) {
        boolean thin = seed == 3;
        Deck deck = deck(DECK)
                .with(capped(75))
                .region(thin ? Condition.DELAMINATED : Condition.VOID, ragged(seed, 350), thin ? 0 : 3, 0.1);
        assertThat(plan(deck)).isEqualTo(plan(deck));
    }

    /** With what is held back: P50 plus waste. Holes take whole grams, so that one gram of their mix may be missing. */
    private static void cupsAddUpToTheMostLikelySpace(InjectionPlan plan, Resin resin, Settings settings) {
        List<Batch> held = HeldCups.of(List.of(plan), settings);
        Mix likely = Mix.of(plan.cavityMm3().p50(), resin, settings.drilling().wasteFraction());
        double partA = plan.resinG() + held.stream().mapToDouble(Batch::partAG).sum();
        assertThat(partA).isCloseTo(likely.partAG(), within(held.isEmpty() ? 1 : 1e-6));
        assertThat(plan.mixedG()).isCloseTo(likely.grossG(), within(held.isEmpty() ? 1 : 1e-6));
        double end =
                plan.batches().stream().mapToDouble(Batch::workUntilS).max().orElse(0);
        for (Batch cup : held) {
            assertThat(cup.partAG() + cup.partBG())
                    .isLessThanOrEqualTo(settings.drilling().largestBatchG() + 1e-9);
            assertThat(cup.mixAtS()).as("nobody mixes two").isGreaterThanOrEqualTo(end);
            end = cup.workUntilS();
        }
    }

    /** On the card and in the fill with its cups: within a tenth, or what a scale shows. */
    private static void eachHoleTakesItsGrams(InjectionPlan plan, Resin resin, double netG) {
        List<Hole> filled = plan.holes().stream().filter(Hole::fills).toList();
        double served = filled.stream().mapToDouble(Hole::servedMm3).sum();
        BigDecimal sum = BigDecimal.ZERO;
        for (Hole hole : filled) {
            BigDecimal grams =
                    BigDecimal.valueOf(netG * hole.servedMm3() / served).setScale(1, RoundingMode.HALF_UP);
            double taken = plan.fill().takenMm3().getOrDefault(hole.id(), 0.0) * resin.densityKgM3() * 1e-6;
            assertThat(taken).as(hole.id()).isCloseTo(grams.doubleValue(), within(0.1 * grams.doubleValue() + 0.1));
            sum = sum.add(grams);
        }
        assertThat(sum.doubleValue()).isCloseTo(netG, within(1e-6));
    }

    /**
     * Independent of the raster: places drawn at random, ways measured on the polygon itself. A place in sight of a hole
     * is as far as the straight line; one out of sight cannot be nearer. Sight that only a corner of the polygon breaks
     * would make this too strict, so the claim is checked from both sides: enough places within the straight reach, and
     * nearly as many in plain sight or round one corner.
     */
    private static void coverageHolds(Polygon area, InjectionPlan plan) {
        SplittableRandom random = new SplittableRandom(7);
        PreparedGeometry inside = PreparedGeometryFactory.prepare(area);
        PreparedGeometry forgiving = PreparedGeometryFactory.prepare(area.buffer(13)); // one cell of the plan's raster
        Envelope box = area.getEnvelopeInternal();
        boolean fewer = plan.cautions().stream().anyMatch(c -> c.contains("left out among the holes"));
        int drawn = 0;
        int straight = 0;
        int seen = 0;
        while (drawn < 1000) {
            Coordinate at = new Coordinate(
                    box.getMinX() + box.getWidth() * random.nextDouble(),
                    box.getMinY() + box.getHeight() * random.nextDouble());
            if (!inside.contains(point(at))) {
                continue;
            }
            drawn++;
            boolean near = false;
            boolean sight = false;
            for (Hole hole : plan.holes()) {
                double d = hole.spot().coordinate().distance(at);
                if (hole.fills() && d <= 1.06 * hole.reachMm()) { // half a cell at 8 cells a reach
                    near = true;
                    sight |= forgiving.contains(line(hole.spot().coordinate(), at));
                }
            }
            boolean leftOut = !near && fewer && arrives(plan, at); // a hole that takes nothing is not drilled
            near |= leftOut;
            sight |= leftOut;
            straight += near ? 1 : 0;
            seen += sight ? 1 : 0;
        }
        double noise = 3 * Math.sqrt(0.005 / drawn); // three standard errors of a share near 0.995
        assertThat(straight / (double) drawn).isGreaterThanOrEqualTo(plan.coveredFraction() - noise);
        assertThat(seen / (double) drawn).isGreaterThanOrEqualTo(plan.coveredFraction() - noise - 0.02);
    }

    private static boolean arrives(InjectionPlan plan, Coordinate at) {
        return plan.fill()
                .arrivalS()
                .map(a -> !Double.isNaN(a.cellAt(at.x, at.y)))
                .orElse(false);
    }

    private static Deck randomDeck(long seed) {
        SplittableRandom random = new SplittableRandom(1000 + seed);
        Polygon area = ragged(seed, 250 + 250 * random.nextDouble()); // what is claimed does not go with the size
        double depth = seed % 3 == 0 ? 0 : 1 + 12 * random.nextDouble();
        Deck deck = deck(DECK)
                .slope(3 * random.nextInt(3), 360 * random.nextDouble())
                .with(capped(50 + 50 * random.nextDouble()))
                .region(
                        depth == 0 ? Condition.DELAMINATED : Condition.VOID,
                        area,
                        (x, y) -> depth * (0.7 + 0.3 * Math.sin(x / 90) * Math.cos(y / 70)),
                        0.1);
        Point middle = area.getInteriorPoint();
        deck.with(fitting("cleat", middle.getX() + 25, middle.getY(), false, 20 + 30 * random.nextDouble()));
        if (seed % 2 == 0) { // an old cut along a part of the edge
            LengthIndexedLine edge = new LengthIndexedLine(area.getExteriorRing());
            double from = random.nextDouble() * edge.getEndIndex();
            deck.with(new Feature.Access(new Origin("plan.csv", 4), "cut", edge.extractLine(from, from + 120)));
        }
        return deck.with(new Feature.Support(
                new Origin("plan.csv", 3),
                "beam",
                (LineString) wkt("LINESTRING(2050 -1500, 2050 1500)"),
                EdgeSupport.SIMPLE));
    }

    /** Two chambers joined by a neck: a hole near the wall may not count for the other side. */
    @Test
    void distanceGoesRoundWallsNotThroughThem() {
        Polygon u =
                (Polygon) wkt("POLYGON((1000 0,1300 0,1300 200,1160 200,1160 30,1140 30,1140 200,1000 200,1000 0))");
        Deck deck = deck(DECK).with(capped(75)).region(Condition.VOID, u, 4, 0.1);
        InjectionPlan plan = plan(deck);
        assertThat(plan.coveredFraction()).isGreaterThanOrEqualTo(0.995);
        assertThat(plan.holes())
                .filteredOn(h -> h.kind() == Hole.Kind.INJECTION && h.spot().yMm() > 75)
                .anyMatch(h -> h.spot().xMm() < 1140)
                .anyMatch(h -> h.spot().xMm() > 1160);
    }

    @Test
    void aDividerThatEndsInsideIsAWall() {
        Polygon area = rectangle(1000, 0, 1300, 300);
        Deck open = deck(DECK).region(Condition.VOID, area, 4, 0.1);
        Deck walled = deck(DECK)
                .with(new Feature.Divider(
                        new Origin("plan.csv", 2), "rib", (LineString) wkt("LINESTRING(1150 0, 1150 290)")))
                .region(Condition.VOID, area, 4, 0.1);
        Region region = open.damage().regions().get(0);
        double far = across(Cavity.of(
                region.likely(),
                open.face(),
                open.damage().face("foredeck").surfaces().voidDepthMm(),
                5,
                0.3));
        double round = across(Cavity.of(
                region.likely(),
                walled.face(),
                walled.damage().face("foredeck").surfaces().voidDepthMm(),
                5,
                0.3));
        assertThat(far).isCloseTo(100, within(3.0)); // 2.7 % is the worst of the 16 steps
        assertThat(round).isGreaterThan(2 * 200);
    }

    /** Way from 50 mm before the middle to 50 mm behind it, low in the square. */
    private static double across(Cavity cavity) {
        double[] reach = new double[cavity.size()];
        Arrays.fill(reach, 1.0);
        int from = cell(cavity, 1100, 52.5);
        int to = cell(cavity, 1200, 52.5);
        return new Travel(cavity, reach).from(new int[] {from}, new double[] {1}).cost[to];
    }

    private static int cell(Cavity cavity, double x, double y) {
        int row = (int) ((y - cavity.y0) / cavity.cell);
        int column = (int) ((x - cavity.x0) / cavity.cell);
        return row * cavity.columns + column;
    }

    @Test
    void workGoesFromLowToHighAndTheHighestPlaceHasAVent() {
        InjectionPlan plan = plan(deck(DECK)
                .slope(10, 90) // high to starboard
                .with(capped(100))
                .region(Condition.VOID, rectangle(1000, 0, 1400, 500), 4, 0.1));
        List<Hole> holes = plan.holes();
        int n = plan.count(Hole.Kind.INJECTION);
        assertThat(holes.get(0).spot().yMm()).isLessThan(150);
        assertThat(holes.get(n - 1).spot().yMm()).isGreaterThan(350);
        for (int i = 1; i < n; i++) {
            assertThat(holes.get(i).spot().yMm())
                    .isGreaterThan(holes.get(i - 1).spot().yMm() - 100);
        }
        assertThat(holes.get(n).kind()).isEqualTo(Hole.Kind.VENT);
        assertThat(holes.get(n).spot().yMm()).isGreaterThan(470);
        assertThat(plan.count(Hole.Kind.VENT)).isBetween(Math.max(2, (n + 7) / 8), n); // pockets ask for more
    }

    @Test
    void aNarrowRegionIsDrilledOnItsMiddleLineAndSaidSo() {
        InjectionPlan plan = plan(deck(DECK).region(Condition.VOID, rectangle(1000, 0, 1800, 20), 4, 0.1));
        assertThat(plan.coveredFraction()).isGreaterThanOrEqualTo(0.995);
        assertThat(plan.holes()).allSatisfy(h -> assertThat(h.spot().yMm()).isCloseTo(10, within(2.5)));
        assertThat(plan.cautions()).anyMatch(c -> c.contains("nearer to the region's edge than 12.5 mm"));
    }

    @Test
    void whatKeepOutsLeaveUncoveredIsReported() {
        InjectionPlan plan = plan(deck(DECK)
                .with(capped(30))
                .with(fitting("windlass", 1150, 150, false, 75))
                .region(Condition.VOID, rectangle(1000, 0, 1300, 300), 4, 0.1));
        // a disc of at least 75 - 30 mm cannot be reached: pi 45^2 / 300^2 = 7.1 %
        assertThat(plan.coveredFraction()).isBetween(0.91, 0.94);
        assertThat(plan.cautions()).anyMatch(c -> c.contains("lies out of reach of every hole that may be drilled"));
    }

    @Test
    void aRegionUnderAKeepOutIsRefused() {
        Deck deck = deck(DECK)
                .with(fitting("windlass", 1300, 300, false, 300))
                .region(Condition.VOID, rectangle(1200, 200, 1400, 400), 4, 0.1);
        RepairOptions options = RepairPlanner.plan(deck.survey(), deck.damage(), new Memory());
        assertThat(options.injections()).isEmpty();
        assertThat(options.refused().get("R1"))
                .isEqualTo("No hole may be drilled here: fittings, supports or edges lie too near everywhere.");
    }

    @Test
    void aLowGapTakesThinEpoxyAHighOneFoam() {
        assertThat(plan(deck(DECK).region(Condition.DELAMINATED, rectangle(1000, 0, 1500, 400), 0, 0.1))
                        .resin())
                .isEqualTo("epoxy-thin");
        assertThat(plan(deck(DECK).region(Condition.VOID, rectangle(1000, 0, 1500, 400), 3, 0.1))
                        .resin())
                .isEqualTo("epoxy-foam-240");
    }

    /** 0.2 m2 at 0.3 mm: 60 mL, 30 to 102; thin epoxy 1100 kg/m3, waste 15 %. */
    @Test
    void aLooseSkinWithoutVoidTakesTheHeightOfALooseSkin() {
        InjectionPlan plan = plan(deck(DECK).region(Condition.DELAMINATED, rectangle(1000, 0, 1500, 400), 0, 0.1));
        assertThat(plan.cavityMm3().p50()).isCloseTo(60_000, within(1e-6));
        assertThat(plan.cavityMm3().p10()).isCloseTo(30_000, within(1e-6));
        assertThat(plan.cavityMm3().p90()).isCloseTo(102_000, within(1e-6));
        assertThat(plan.resinG() + plan.hardenerG()).isCloseTo(60 * 1.1 / 0.85, within(1e-6));
        assertThat(plan.arithmetic().get(1))
                .startsWith("60 millilitres × 1.1 g per millilitre = 66 g; with 15 % waste 78 g");
    }

    /** 30 mm in lifts of 12 mm: 3 of them where liquid lies, none where it runs down the slope. */
    @Test
    void aHighSpaceIsFilledInLiftsWhereItLiesLevel() {
        Deck level = deck(DECK).region(Condition.VOID, rectangle(1000, 0, 1250, 200), 30, 0.1);
        InjectionPlan plan = plan(level);
        for (Hole hole : plan.filling()) {
            List<Batch> own = plan.batches().stream()
                    .filter(b -> b.holes().contains(hole.id()))
                    .toList();
            assertThat(own.size() % 3).as(hole.id()).isZero();
            assertThat(own.get(own.size() - 1).mixAtS())
                    .isGreaterThanOrEqualTo(own.get(0).hardAtS());
        }
        Resin resin = level.survey().settings().resin(plan.resin());
        eachHoleTakesItsGrams(plan, resin, (plan.resinG() + plan.hardenerG()) * 0.85);
        cupsAddUpToTheMostLikelySpace(plan, resin, level.survey().settings());
        double lastLiftS = plan.batches().stream()
                .filter(b -> Lifts.number(b, plan.batches()) == 3)
                .mapToDouble(Batch::mixAtS)
                .min()
                .orElseThrow();
        assertThat(Arrays.stream(plan.fill().arrivalS().orElseThrow().values())
                        .filter(s -> !Double.isNaN(s))
                        .min()
                        .orElse(0))
                .as("mix shows in the last lift")
                .isGreaterThan(lastLiftS);
        assertThat(plan.cautions()).anyMatch(c -> c.startsWith("Fill in 3 lifts where the space is higher than 12 mm"));

        InjectionPlan steep =
                plan(deck(DECK).slope(20, 90).region(Condition.VOID, rectangle(1000, 0, 1250, 200), 30, 0.1));
        assertThat(steep.batches()).noneMatch(b -> Lifts.number(b, steep.batches()) > 1);
        assertThat(steep.cautions()).anyMatch(c -> c.startsWith("The space is up to 30 mm high"));
    }

    /** Mix goes on into a hole until it shows at the next. Four rims that hardly differ: what is left of one alone is up to chance. */
    @Test
    void aLooseSkinFourTimesAsFarOffIsFilledByWhatShows() {
        double[][] rims = {{400, -200, 850, 150}, {410, -190, 850, 150}, {400, -200, 870, 160}, {400, -210, 840, 150}};
        double empty = 0;
        for (double[] rim : rims) {
            Deck deck = deck(rectangle(0, -600, 1200, 600))
                    .slope(2, 90)
                    .region(Condition.DELAMINATED, rectangle(rim[0], rim[1], rim[2], rim[3]), (x, y) -> 0.3, 0.05, 4);
            InjectionPlan plan = plan(deck);
            assertThat(plan.resin()).isEqualTo("epoxy-thin");
            assertThat(plan.outlook().emptyLargeWithout()).isGreaterThan(0.7);
            assertThat(plan.outlook().emptyLarge()).isLessThan(0.06);
            empty += plan.outlook().emptyLarge() / rims.length;
        }
        assertThat(empty).isLessThan(0.04);
    }

    /** By hand: 1100 kg/m3 x 9.81 x 0.4 m = 4.3 kPa, a cell of the raster more or less. */
    @Test
    void aWallSaysWhatTheLiquidPresses() {
        InjectionPlan plan =
                plan(deck(DECK).slope(90, 90).region(Condition.DELAMINATED, rectangle(1000, 0, 1150, 400), 0, 0.1));
        assertThat(plan.cautions()).anyMatch(c -> c.matches(".*it presses with 4[.][234] kPa at its foot.*"));
    }

    /** cos 30° = 0.866. */
    @Test
    void weightsAreStoppedOnASlope() {
        assertThat(sloping(30).cautions()).anyMatch(c -> c.startsWith("On 30° weights slide") && c.contains("87 %"));
        assertThat(sloping(8).cautions()).noneMatch(c -> c.contains("slide"));
    }

    private static InjectionPlan sloping(double deg) {
        return plan(deck(DECK).slope(deg, 90).region(Condition.DELAMINATED, rectangle(1000, 0, 1150, 200), 0, 0.1));
    }

    /** Thin epoxy flows while it is pushed, and a second more where it settles: nothing is due when its work time ends. */
    @Test
    void noVentIsDueLongAfterThinEpoxyIsIn() {
        InjectionPlan plan = plan(deck(DECK).region(Condition.DELAMINATED, ragged(4, 150), 0, 0.1));
        double lastS = Arrays.stream(plan.fill().arrivalS().orElseThrow().values())
                .filter(s -> !Double.isNaN(s))
                .max()
                .orElse(0);
        assertThat(lastS).isBetween(60.0, 0.5 * plan.batches().get(0).workUntilS());
    }

    @Test
    void tooHotADayIsRefused() {
        Settings s = Settings.defaults();
        Deck deck = deck(DECK)
                .with(new Settings(
                        s.thresholds(),
                        s.drilling(),
                        s.resins(),
                        s.costs(),
                        s.crew(),
                        new Settings.Climate(48, 60),
                        s.numerics()))
                .region(Condition.VOID, rectangle(1000, 0, 1500, 400), 3, 0.1);
        assertThat(RepairPlanner.plan(deck.survey(), deck.damage(), new Memory())
                        .refused()
                        .get("R1"))
                .isEqualTo("At 48 °C epoxy-foam-240 sets before it can be mixed and poured. Work when it is cooler.");
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theCutHoldsTheDamageInsideTheBay(long seed) {
        Deck deck = deck(rectangle(1500, -600, 2600, 600))
                .region(
                        Condition.WET_DELAMINATED,
                        clipped(ragged(seed, 900), rectangle(1500, -600, 2600, 600)),
                        2,
                        0.9);
        Region region = deck.damage().regions().get(0);
        RecorePlan plan = RecorePlanner.plan(
                RecorePlanner.Task.of(deck.survey(), deck.damage().faces().get(0), region));
        assertThat(plan.cut().isValid()).isTrue();
        assertThat(deck.face().outline().buffer(1e-3).covers(plan.cut())).isTrue();
        assertThat(plan.cut().intersection(region.likely()).getArea()
                        / region.likely().getArea())
                .isGreaterThan(0.99); // a rounded corner of the cut may leave a corner of damage to be raked out
        assertThat(region.likely().buffer(60).covers(plan.cut())).isTrue();
        assertThat(plan.epoxyG()).isCloseTo(RecorePlanner.epoxyG(plan.cut(), 12.5) / 0.85, within(1e-6));
    }

    private static Polygon clipped(Polygon area, Polygon by) {
        var part = area.intersection(by);
        return (Polygon) (part instanceof Polygon ? part : part.getGeometryN(0));
    }

    /** What contouring can leave: slivers, specks, combs. Each gets a plan or a reason, and a cut. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "POLYGON((1000 0,1005 0,1002 4,1000 0))",
                "POLYGON((1000 0,2000 0.2,2000 0.6,1000 0.5,1000 0))",
                "POLYGON((1000 0,1000 300,1010 300,1010 5,1050 5,1050 300,1060 300,1060 5,1100 5,1100 300,1110 300,1110 0,1000 0))",
                "POLYGON((1000 0,1100 0,1100 100,1000 100,1000 0),(1050 0,1075 50,1050 90,1025 50,1050 0))",
                "POLYGON((0 -400,1000 -400,1000 400,0 400,0 -400),(10 -390,10 390,990 390,990 -390,10 -390))"
            })
    void oddShapesGetAPlanOrAReason(String shape) {
        Polygon area = (Polygon) wkt(shape);
        Deck deck = deck(DECK).region(Condition.VOID, area, 4, 0.1);
        RepairOptions options = RepairPlanner.plan(deck.survey(), deck.damage(), new Memory());
        assertThat(options.injections().size() + options.refused().size()).isEqualTo(1);
        for (InjectionPlan plan : options.injections()) {
            assertThat(plan.holes())
                    .allSatisfy(h -> assertThat(area.covers(point(h.spot().coordinate())))
                            .isTrue());
            assertThat(plan.batches()).isNotEmpty();
        }
        RecorePlan cut = options.recores().get(0);
        assertThat(cut.cut().getArea()).isGreaterThanOrEqualTo(0.99 * area.getArea());
        assertThat(cut.cut().isValid()).isTrue();
    }

    /** By hand: 1 m2 square, core 12.5: 800 + (1.5e6 + 4000 x 4 x 12.5) mm3 x 1.15e-3 g. */
    @Test
    void epoxyOfACutFollowsItsRule() {
        assertThat(RecorePlanner.epoxyG(rectangle(0, 0, 1000, 1000), 12.5)).isCloseTo(800 + 1955, within(1e-6));
    }

    private static Point point(Coordinate at) {
        return DamageFixtures.GEOMETRY.createPoint(at);
    }

    private static LineString line(Coordinate a, Coordinate b) {
        return DamageFixtures.GEOMETRY.createLineString(new Coordinate[] {a, b});
    }

    private static InjectionPlan plan(Deck deck) {
        return RepairPlanner.plan(deck.survey(), deck.damage(), new Memory())
                .injections()
                .get(0);
    }

    static Settings capped(double reachMm) {
        Settings d = Settings.defaults();
        Drilling w = d.drilling();
        Drilling capped = new Drilling(
                w.holeDiameterMm(),
                w.edgeClearanceMm(),
                w.depthMarginMm(),
                w.pressureKPa(),
                w.rateMlPerS(),
                w.reachSafety(),
                reachMm,
                w.wasteFraction(),
                w.mixingS(),
                w.largestBatchG(),
                w.highestFillMm(),
                w.nozzleLengthMm(),
                w.nozzleOuterMm(),
                w.nozzleBoreMm());
        return new Settings(d.thresholds(), capped, d.resins(), d.costs(), d.crew(), d.climate(), d.numerics());
    }
}
