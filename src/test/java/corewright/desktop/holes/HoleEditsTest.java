package corewright.desktop.holes;

import static corewright.DamageFixtures.deck;
import static corewright.DamageFixtures.rectangle;
import static org.assertj.core.api.Assertions.assertThat;

import corewright.DamageFixtures.Deck;
import corewright.damage.Condition;
import corewright.repair.RepairPlanner;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.reuse.Memory;
import corewright.survey.Edit;
import corewright.survey.MovedHole;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Deeds on the holes of one plan; every one is taken back by its inverse. */
class HoleEditsTest {
    private final Deck deck =
            deck(rectangle(0, -500, 1500, 500)).region(Condition.VOID, rectangle(500, -150, 900, 150), 4, 0.1);
    private final Memory memory = new Memory();
    private final Survey survey = deck.survey();
    private final InjectionPlan plan = plan(survey);

    private InjectionPlan plan(Survey of) {
        return RepairPlanner.plan(of, deck.damage(), memory).injections().get(0);
    }

    private HoleEdits on(Survey of, InjectionPlan with) {
        return new HoleEdits(of, with, deck.damage().regions());
    }

    private Survey made(Survey before, Edit edit) {
        Survey after = edit.apply(before);
        assertThat(edit.inverse(before).apply(after)).isEqualTo(before);
        return after;
    }

    private static List<Spot> spots(InjectionPlan plan, boolean vents) {
        return plan.holes().stream()
                .filter(h -> h.fills() != vents)
                .map(Hole::spot)
                .toList();
    }

    private static Hole first(InjectionPlan plan, boolean vents) {
        return plan.holes().stream().filter(h -> h.fills() != vents).findFirst().orElseThrow();
    }

    @Test
    void aHoleIsTakenAwayAndTheOthersStay() {
        Hole gone = first(plan, false);
        Survey without = made(survey, on(survey, plan).removed(gone));
        InjectionPlan after = plan(without);

        assertThat(spots(after, false)).doesNotContain(gone.spot()).isSubsetOf(spots(plan, false));
        assertThat(after.coveredFraction()).isLessThan(plan.coveredFraction());
        HoleEdits now = on(without, after);
        assertThat(now.byHand(false)).isTrue();
        assertThat(now.byHand(true)).isFalse();
        assertThat(made(without, Objects.requireNonNull(now.leftToThePlan(false))))
                .isEqualTo(survey);
    }

    @Test
    void ventsAreAddedMovedAndTakenAway() {
        Spot more = new Spot(first(plan, true).spot().face(), 640, 0);
        Survey added = made(survey, on(survey, plan).added(MovedHole.Kind.VENT, more));
        InjectionPlan with = plan(added);
        assertThat(spots(with, true)).contains(more).containsAll(spots(plan, true));

        Hole vent = with.holes().stream()
                .filter(h -> h.spot().equals(more))
                .findFirst()
                .orElseThrow();
        Spot to = new Spot(more.face(), more.xMm() + 30, more.yMm());
        Survey moved = made(added, on(added, with).placed(vent, to));
        assertThat(spots(plan(moved), true)).contains(to).doesNotContain(more);

        Survey gone = made(added, on(added, with).removed(vent));
        assertThat(spots(plan(gone), true)).containsExactlyInAnyOrderElementsOf(spots(plan, true));
        assertThat(made(gone, Objects.requireNonNull(on(gone, plan(gone)).leftToThePlan(true))))
                .isEqualTo(survey);
    }

    @Test
    void aHoleHeldIsLeftToThePlanAgain() {
        Hole hole = first(plan, false);
        Survey held = made(survey, on(survey, plan).placed(hole, hole.spot()));
        assertThat(HoleEdits.standing(held, hole.spot())).isPresent();
        assertThat(made(held, Objects.requireNonNull(on(held, plan).released(hole))))
                .isEqualTo(survey);
        assertThat(on(survey, plan).released(hole)).isNull();
    }
}
