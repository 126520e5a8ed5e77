package corewright.repair;

import static corewright.DamageFixtures.deck;
import static corewright.DamageFixtures.rectangle;
import static org.assertj.core.api.Assertions.assertThat;

import corewright.DamageFixtures.Deck;
import corewright.damage.Condition;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.reuse.Memory;
import corewright.survey.MovedHole;
import corewright.survey.Part;
import corewright.survey.Spot;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

@TestInstance(TestInstance.Lifecycle.PER_CLASS) // one plan to compare with
class LockedHolesTest {
    private final Deck deck = deck(rectangle(0, -500, 2500, 900))
            .with(InjectionPlanTest.capped(100))
            .region(Condition.VOID, rectangle(1000, 0, 1800, 600), 4, 0.1);
    private final InjectionPlan free = plan(List.of());

    private InjectionPlan plan(List<MovedHole> moved) {
        return RepairPlanner.plan(Part.HOLES.with(deck.survey(), moved), deck.damage(), new Memory())
                .injections()
                .get(0);
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
}
