package corewright.decision;

import static corewright.DamageFixtures.deck;
import static corewright.DamageFixtures.rectangle;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.Assessments;
import corewright.DamageFixtures.Deck;
import corewright.damage.Condition;
import corewright.damage.Region;
import corewright.repair.RepairPlanner;
import corewright.repair.plan.Cautions;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.Prospect;
import corewright.repair.plan.RepairOptions;
import corewright.reuse.Memory;
import corewright.survey.CoreMoisture;
import corewright.survey.CoreState;
import corewright.survey.Spot;
import java.util.List;
import java.util.Set;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

/** A void and the loose rim round it are one cavity: one plan, one name, one mix. */
class FilledTogetherTest {
    private static final Polygon DECK = rectangle(0, -1500, 4000, 1500);
    private static final Polygon VOID = rectangle(1000, 100, 1500, 400);

    @Test
    void aRimIsFilledFromItsVoidWithFewerHolesThanEachAlone() {
        Deck deck = rim(25).probe(1200, 300, 4, CoreState.DRY).probe(1400, 300, 4, CoreState.DRY);
        RepairOptions alone = Assessments.alone(deck.survey(), deck.damage(), new Memory());
        Decision d = decide(deck);
        assertThat(d.injections()).hasSize(1);
        InjectionPlan plan = d.injections().get(0);
        assertThat(plan.region()).isEqualTo("R1");
        assertThat(plan.parts().stream().map(InjectionPlan.Part::region)).containsExactly("R1", "R2");
        assertThat(plan.count(Hole.Kind.INJECTION))
                .isLessThan(injections(alone, "R1") + injections(alone, "R2"))
                .isGreaterThanOrEqualTo(injections(alone, "R1"));
        assertThat(plan.coveredFraction()).isGreaterThanOrEqualTo(0.995);
        assertThat(plan.fill().emptyShare()).isLessThan(0.05); // 0.024 when written
        assertThat(plan.resin()).isEqualTo("epoxy-foam-240");
        double rimMm3 = 0.3 * deck.damage().regions().get(1).likely().getArea();
        assertThat(plan.cavityMm3().p50())
                .isCloseTo(deck.damage().regions().get(0).voidMm3().p50() + rimMm3, within(1e-6));
        assertThat(plan.holes().stream().mapToDouble(Hole::servedMm3).sum())
                .isCloseTo(plan.cavityMm3().p50(), Percentage.withPercentage(1e-9));
        assertThat(plan.batches()).allSatisfy(b -> assertThat(b.region()).isEqualTo("R1"));
        for (Hole hole : plan.holes()) {
            Region in = region(deck, hole.region());
            assertThat(in.likely()
                            .distance(in.likely()
                                    .getFactory()
                                    .createPoint(hole.spot().coordinate())))
                    .as(hole.id())
                    .isZero();
            assertThat(hole.id()).startsWith(hole.region() + "-");
        }
        assertThat(d.on("R2").reasons()).last().isEqualTo("It opens into R1 and is filled with it.");
        assertThat(d.on("R1").reasons()).noneMatch(r -> r.contains("filled with it"));
        assertThat(d.buying().stream().filter(i -> i.item().contains("resin")).toList())
                .singleElement()
                .satisfies(i -> assertThat(i.basis()).startsWith("R1, R2: "));
        assertThat(decide(deck)).isEqualTo(d);
    }

    /** What becomes part of another plan is not planned alone first; what does not is planned in the end. */
    @Test
    void onlyWhatIsFilledIsPlanned() {
        Deck deck = rim(25).probe(1200, 300, 4, CoreState.DRY).probe(1400, 300, 4, CoreState.DRY);
        Memory memory = new Memory();
        RepairOptions options = RepairPlanner.plan(deck.survey(), deck.damage(), memory);
        assertThat(options.injections()).isEmpty();
        assertThat(options.prospects()).extracting(Prospect::region).containsExactly("R1", "R2");
        assertThat(memory.worked()).doesNotContainKey("SpaceTask");
        RepairOptions plans = RepairPlanner.together(deck.survey(), deck.damage(), options, Set.of("R1", "R2"), memory);
        assertThat(plans.injections()).extracting(InjectionPlan::region).containsExactly("R1");
        assertThat(plans.prospects()).isEmpty();
        assertThat(memory.worked()).containsEntry("SpaceTask", 1);
        RepairOptions one = RepairPlanner.together(deck.survey(), deck.damage(), options, Set.of("R1"), memory);
        assertThat(one.injections()).extracting(InjectionPlan::region).containsExactly("R1", "R2");
        assertThat(options.injectionHoles("R1")).hasSameElementsAs(one.injectionHoles("R1"));
    }

    /** Foam gets 59 mm under a loose skin: the far side of a wide one takes thin epoxy through holes of its own. */
    @Test
    void aWideLooseSkinKeepsItsOwnPlan() {
        Decision d = decide(rim(100).probe(1200, 300, 4, CoreState.DRY)
                .probe(1400, 300, 4, CoreState.DRY)
                .probe(980, 250, 4, CoreState.DRY));
        assertThat(d.injections().stream().map(InjectionPlan::region)).containsExactly("R1", "R2");
        assertThat(d.injections().get(1).cautions().get(0)).startsWith("R2 opens into R1, which is filled before");
        InjectionPlan one = d.injections().get(0);
        Hole vent = one.holes().stream()
                .filter(h -> h.kind() == Hole.Kind.VENT)
                .findFirst()
                .orElseThrow();
        assertThat(Cautions.ventsBeside(
                        one, List.of(one, nextTo(vent, 59.9, d.injections().get(1)))))
                .hasValue("Vent V1 stands near R2-1, of another plan: each fill lets out its own air.");
        assertThat(Cautions.ventsBeside(
                        one, List.of(one, nextTo(vent, 60, d.injections().get(1)))))
                .isEmpty();
    }

    /** A plan with one hole alone, so far from a vent of another. */
    private static InjectionPlan nextTo(Hole vent, double mm, InjectionPlan plan) {
        Spot at =
                new Spot(vent.spot().face(), vent.spot().xMm() + mm, vent.spot().yMm());
        Hole first = plan.holes().get(0);
        Hole put = new Hole(
                first.id(),
                first.region(),
                first.kind(),
                1,
                at,
                first.diameterMm(),
                first.depthStopMm(),
                first.reachMm(),
                first.servedMm3(),
                null,
                Hole.Range.NONE,
                0);
        return plan.with(List.of(put), plan.batches(), plan.buyG());
    }

    @Test
    void aRimThatIsNotInjectedIsLeftOut() {
        Decision d =
                decide(rim(40).probe(1200, 300, 4, CoreState.DRY).probe(980, 300, CoreState.ROTTED, CoreMoisture.DRY));
        assertThat(d.on("R2").method()).isEqualTo(Method.RECORE);
        assertThat(d.injections()).allSatisfy(p -> assertThat(p.parts()).hasSize(1));
    }

    @Test
    void aRimOfTwoVoidsMakesOneOfThem() {
        Polygon second = rectangle(1540, 100, 1800, 400);
        Polygon round = rectangle(975, 75, 1825, 425);
        Deck deck = deck(DECK)
                .region(Condition.VOID, VOID, 4, 0.1)
                .region(Condition.VOID, second, 5, 0.1)
                .region(Condition.DELAMINATED, (Polygon) round.difference(VOID).difference(second), 0, 0.1)
                .probe(1200, 300, 4, CoreState.DRY)
                .probe(1400, 300, 4, CoreState.DRY)
                .probe(1650, 300, 5, CoreState.DRY);
        Decision d = decide(deck);
        assertThat(d.injections()).hasSize(1);
        assertThat(d.injections().get(0).parts().stream().map(InjectionPlan.Part::region))
                .containsExactly("R1", "R2", "R3");
        assertThat(List.of("R2", "R3"))
                .allSatisfy(id ->
                        assertThat(d.on(id).reasons()).last().isEqualTo("It opens into R1 and is filled with it."));
    }

    private static Deck rim(double widthMm) {
        Polygon rim = (Polygon) rectangle(1000 - widthMm, 100 - widthMm, 1500 + widthMm, 400 + widthMm)
                .difference(VOID);
        return deck(DECK).region(Condition.VOID, VOID, 4, 0.1).region(Condition.DELAMINATED, rim, 0, 0.1);
    }

    private static int injections(RepairOptions options, String region) {
        return options.injection(region).orElseThrow().count(Hole.Kind.INJECTION);
    }

    private static Region region(Deck deck, String id) {
        return deck.damage().regions().stream()
                .filter(r -> r.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Decision decide(Deck deck) {
        return Assessments.decide(deck.survey(), deck.damage());
    }
}
