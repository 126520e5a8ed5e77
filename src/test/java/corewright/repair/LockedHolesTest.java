package corewright.repair;

import static corewright.DamageFixtures.deck;
import static corewright.DamageFixtures.rectangle;
import static org.assertj.core.api.Assertions.assertThat;

import corewright.Assessments;
import corewright.DamageFixtures.Deck;
import corewright.damage.Condition;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.RepairOptions;
import corewright.survey.MovedHole;
import corewright.survey.Part;
import corewright.survey.Spot;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

@TestInstance(TestInstance.Lifecycle.PER_CLASS) // one plan to compare with
class LockedHolesTest {
    private final Deck deck = deck(rectangle(0, -500, 2500, 900))
            .with(InjectionPlanTest.capped(100))
            .region(Condition.VOID, rectangle(1000, 0, 1600, 500), 4, 0.1);
    private final InjectionPlan free = plan(List.of());

    private RepairOptions plans(List<MovedHole> moved) {
        return RepairPlanner.plan(Part.HOLES.with(deck.survey(), moved), deck.damage(), Assessments.PLANS);
    }

    private InjectionPlan plan(List<MovedHole> moved) {
        return plans(moved).injections().get(0);
    }

    private Spot spot(double x, double y) {
        return new Spot(deck.survey().faces().get(0).name(), x, y);
    }

    @Test
    void aHoleStaysWhereItWasPutAndTheOthersCoverTheRest() {
        Spot put = spot(1333, 287);
        InjectionPlan plan = plan(List.of(new MovedHole(free.holes().get(3).spot(), put)));
        assertThat(plan.holes()).anyMatch(h -> h.spot().equals(put) && h.kind() == Hole.Kind.INJECTION);
        assertThat(plan.coveredFraction()).isGreaterThanOrEqualTo(0.995);
        assertThat(plan.count(Hole.Kind.INJECTION)).isLessThanOrEqualTo(free.count(Hole.Kind.INJECTION) + 2);
    }

    @Test
    void aLockedPatternIsTheSamePattern() {
        List<MovedHole> all = free.holes().stream()
                .filter(h -> h.kind() == Hole.Kind.INJECTION)
                .map(h -> new MovedHole(h.spot(), h.spot()))
                .toList();
        assertThat(plan(all).holes().stream()
                        .filter(h -> h.kind() == Hole.Kind.INJECTION)
                        .map(Hole::spot)
                        .toList())
                .containsExactlyInAnyOrderElementsOf(
                        all.stream().map(MovedHole::spot).toList());
    }

    @Test
    void aHoleThatMayNotBeDrilledIsLeftOutAndSaidSo() {
        Spot outside = spot(500, 300);
        InjectionPlan plan = plan(List.of(new MovedHole(free.holes().get(0).spot(), outside)));
        assertThat(plan.holes()).noneMatch(h -> h.spot().equals(outside));
        assertThat(plan.cautions())
                .anyMatch(c -> c.startsWith("The hole moved to 500 mm aft, 300 mm to starboard is left"));
        assertThat(plan.count(Hole.Kind.INJECTION)).isEqualTo(free.count(Hole.Kind.INJECTION));
    }

    @Test
    void aHoleOfAnotherRegionIsNoneOfThisOne() {
        InjectionPlan plan = plan(List.of(new MovedHole(spot(300, 300), spot(320, 300))));
        assertThat(plan).isEqualTo(free);
    }

    private static List<Spot> spots(InjectionPlan plan, Hole.Kind kind) {
        return plan.holes().stream()
                .filter(h -> h.kind() == kind)
                .map(Hole::spot)
                .toList();
    }

    private static MovedHole placed(MovedHole.Kind kind, Spot spot) {
        return new MovedHole(kind, spot, spot);
    }

    @Test
    void whereAHoleWasTakenAwayTheOthersStayAndNoneIsAdded() {
        List<Spot> all = spots(free, Hole.Kind.INJECTION);
        List<MovedHole> byHand = new ArrayList<>();
        byHand.add(placed(MovedHole.Kind.NO_HOLE, all.get(0)));
        List<Spot> others = all.subList(1, all.size());
        others.forEach(s -> byHand.add(placed(MovedHole.Kind.HOLE, s)));
        InjectionPlan plan = plan(byHand);

        assertThat(spots(plan, Hole.Kind.INJECTION)).isSubsetOf(others).isNotEmpty();
        assertThat(plan.coveredFraction()).isLessThan(free.coveredFraction());
        assertThat(plans(byHand.subList(0, 1)).injections())
                .as("none is left, so nothing is injected")
                .isEmpty();
    }

    @Test
    void ventsByHandAreTheOnlyOnes() {
        Spot vent = spot(1410, 315);
        InjectionPlan plan = plan(List.of(placed(MovedHole.Kind.VENT, vent)));
        assertThat(spots(plan, Hole.Kind.VENT)).containsExactly(vent);
        assertThat(spots(plan, Hole.Kind.INJECTION)).isSubsetOf(spots(free, Hole.Kind.INJECTION));

        InjectionPlan without = plan(List.of(
                placed(MovedHole.Kind.NO_VENT, spots(free, Hole.Kind.VENT).get(0))));
        assertThat(without.count(Hole.Kind.VENT)).isZero();
    }
}
