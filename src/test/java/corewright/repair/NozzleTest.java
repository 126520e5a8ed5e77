package corewright.repair;

import static corewright.DamageFixtures.deck;
import static corewright.DamageFixtures.fitting;
import static corewright.DamageFixtures.rectangle;
import static corewright.DamageFixtures.wkt;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.DamageFixtures.Deck;
import corewright.damage.Condition;
import corewright.repair.mix.Pour;
import corewright.repair.mix.ReachLaw;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.reuse.Memory;
import corewright.survey.Feature;
import corewright.survey.Origin;
import corewright.survey.Spot;
import corewright.survey.settings.Drilling;
import corewright.survey.settings.Resin;
import corewright.survey.settings.Settings;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/** What a long nozzle fills through an opening that is there already is not drilled for. */
class NozzleTest {
    private static final Polygon DECK = rectangle(0, -1500, 4000, 1500);
    private static final Spot SPOT = new Spot("f", 0, 0);
    private static final Polygon LONG = rectangle(1000, 0, 1600, 120);

    @Test
    void anOpeningAtTheEdgeSavesHoles() {
        InjectionPlan without = plan(deck(DECK).region(Condition.VOID, LONG, 8, 0.1));
        InjectionPlan with = plan(access(1000, 60).region(Condition.VOID, LONG, 8, 0.1));
        assertThat(with.count(Hole.Kind.NOZZLE)).isPositive();
        assertThat(with.count(Hole.Kind.INJECTION)).isLessThan(without.count(Hole.Kind.INJECTION));
        assertThat(with.coveredFraction()).isGreaterThanOrEqualTo(0.995);
        assertThat(with.fill().emptyShare()).isLessThan(0.05); // 0.017 when written
        Hole first = with.holes().get(0);
        assertThat(first.kind()).isEqualTo(Hole.Kind.NOZZLE);
        assertThat(first.id()).isEqualTo("R1-N1");
        assertThat(first.depthStopMm()).isZero();
        Hole.Nozzle nozzle = Objects.requireNonNull(first.nozzle());
        assertThat(nozzle.pushMm()).isLessThanOrEqualTo(300);
        assertThat(nozzle.pushMm())
                .isCloseTo(nozzle.in().coordinate().distance(first.spot().coordinate()), within(1.0));
        assertThat(nozzle.access()).isEqualTo("old hole");
        assertThat(with.batches().get(0).holes()).contains("R1-N1");
        assertThat(with.cautions()).anyMatch(c -> c.startsWith("Try the nozzle's way before mixing"));
        assertThat(with.parts().get(0).holeLowerBound()).isLessThanOrEqualTo(with.count(Hole.Kind.INJECTION));
    }

    @Test
    void theDeepestPlaceIsFilledFirst() {
        Polygon longer = rectangle(1000, 0, 1900, 120);
        Deck deck = access(1000, 60)
                .with(nozzle(890, 7, 6))
                .feeler(1000, 60, 1890, 60)
                .region(Condition.VOID, longer, 8, 0.1);
        assertThat(pushed(plan(deck)))
                .hasSizeGreaterThanOrEqualTo(2)
                .isSortedAccordingTo((a, b) -> Double.compare(b, a));
    }

    @Test
    void aNozzleThickerThanTheGapStaysAtTheOpeningUnlessARodWentFarther() {
        Deck low = access(1000, 60).region(Condition.VOID, LONG, 4, 0.1);
        assertThat(pushed(plan(low))).isNotEmpty().allSatisfy(mm -> assertThat(mm)
                .isLessThan(26));
        Deck felt = access(1000, 60).feeler(1000, 60, 1280, 60).region(Condition.VOID, LONG, 4, 0.1);
        assertThat(pushed(plan(felt))).anySatisfy(mm -> assertThat(mm).isGreaterThan(200));
        assertThat(plan(felt).holes().stream().filter(h -> h.kind() == Hole.Kind.NOZZLE))
                .allSatisfy(h -> assertThat(h.spot().yMm()).isBetween(44.0, 76.0));
    }

    /** Straight through a hole of 25 mm the gap of 8 mm ends after some 20: farther in only where a rod went. */
    @Test
    void aStraightNozzleDoesNotTurnInThroughASmallHole() {
        Deck deck = access(1100, 60).region(Condition.VOID, LONG, 8, 0.1);
        assertThat(pushed(plan(deck))).allSatisfy(mm -> assertThat(mm).isLessThan(33));
        Deck edge = deck(DECK)
                .with(new Feature.Access(new Origin("plan.csv", 9), "edge", wkt("LINESTRING(1000 40, 1000 80)")))
                .region(Condition.VOID, LONG, 8, 0.1);
        assertThat(pushed(plan(edge))).anySatisfy(mm -> assertThat(mm).isGreaterThan(100));
    }

    /** Where no hole may be drilled at all, and the nozzle reaches everything. */
    @Test
    void whereTheNozzleFillsAllNothingIsDrilled() {
        Deck deck = access(1100, 60)
                .with(fitting("windlass", 1100, 60, false, 150))
                .region(Condition.VOID, rectangle(1040, 0, 1160, 120), 8, 0.1);
        InjectionPlan plan = plan(deck);
        assertThat(plan.holes()).isNotEmpty().allSatisfy(h -> assertThat(h.drilled())
                .isFalse());
        assertThat(plan.cautions()).noneMatch(c -> c.contains("drill past"));
        assertThat(plan.parts().get(0).holeLowerBound()).isZero();
    }

    /** The nozzle goes straight: a wall stops it, a divider that ends inside too. */
    @Test
    void theNozzleDoesNotGoThroughADivider() {
        Deck deck = deck(DECK)
                .with(new Feature.Access(new Origin("plan.csv", 9), "edge", wkt("LINESTRING(1000 40, 1000 80)")))
                .with(new Feature.Divider(
                        new Origin("plan.csv", 2), "rib", (LineString) wkt("LINESTRING(1150 0, 1150 110)")))
                .region(Condition.VOID, LONG, 8, 0.1);
        assertThat(plan(deck).holes().stream().filter(h -> h.kind() == Hole.Kind.NOZZLE))
                .allSatisfy(h -> {
                    double y = Objects.requireNonNull(h.nozzle()).in().yMm();
                    double at = y + (h.spot().yMm() - y) * 150 / (h.spot().xMm() - 1000);
                    assertThat(h.spot().xMm() < 1150 || at > 110).isTrue();
                });
    }

    /**
     * G. Hagen, Annalen der Physik 122 (1839), 423, and J. L. M. Poiseuille, Comptes rendus 11 (1840), 961, 1041: a tube resists by
     * 8 mu L/(pi r^4). Computed by hand for 300 mm of 5 mm bore: 19.56 a mm3; at 40 kPa and 1 Pa s 2045 mm3 a second, a third
     * less than the tool gives.
     */
    @Test
    void theBoreLimitsTheFlow() {
        Drilling d = Settings.defaults().drilling();
        assertThat(ReachLaw.nozzleResistance(d)).isCloseTo(19.56, within(0.005));
        Resin thin = new Resin("t", 0.4, 1000, 1, 1, 1, 3600, 3600, 3600, 1e6, 1e6, 25, true, 0, 0, 0, 0, "test");
        Pour pour = new Pour(thin, d, 25);
        Hole drilled = new Hole("R1-1", "R1", Hole.Kind.INJECTION, 1, SPOT, 6.4, 5, 100, 1e5, null, Hole.Range.NONE, 0);
        Hole pushed = new Hole(
                "R1-N1",
                "R1",
                Hole.Kind.NOZZLE,
                1,
                SPOT,
                6,
                0,
                100,
                1e5,
                new Hole.Nozzle("old hole", SPOT, 200),
                Hole.Range.NONE,
                0);
        assertThat(pour.seconds(drilled, 100)).isCloseTo(100 / 3.0, within(1e-6));
        assertThat(pour.seconds(pushed, 100)).isCloseTo(100 / 2.045, within(0.02)); // hardly thickened in a minute
        ReachLaw foam = new ReachLaw(Resin.builtIn().get(0), nozzle(300, 4, 2.5).drilling(), 25);
        assertThat(foam.fromNozzle(8).governedBy()).isEqualTo("flow through the nozzle");
        assertThat(foam.fromNozzle(8).mm()).isLessThan(foam.at(8).mm());
    }

    private static List<Double> pushed(InjectionPlan plan) {
        return plan.holes().stream()
                .filter(h -> h.kind() == Hole.Kind.NOZZLE)
                .map(h -> Objects.requireNonNull(h.nozzle()).pushMm())
                .toList();
    }

    private static Deck access(double x, double y) {
        return deck(DECK)
                .with(new Feature.Access(new Origin("plan.csv", 9), "old hole", wkt("POINT(" + x + " " + y + ")")));
    }

    private static Settings nozzle(double lengthMm, double outerMm, double boreMm) {
        Settings s = Settings.defaults();
        Drilling d = new Drilling(6.4, 12.5, 1.5, 40, 3, 0.5, 150, 0.15, 60, 200, 12, lengthMm, outerMm, boreMm);
        return new Settings(s.thresholds(), d, s.resins(), s.costs(), s.crew(), s.climate(), s.numerics());
    }

    private static InjectionPlan plan(Deck deck) {
        return RepairPlanner.plan(deck.survey(), deck.damage(), new Memory())
                .injections()
                .get(0);
    }
}
