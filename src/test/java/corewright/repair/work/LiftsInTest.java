package corewright.repair.work;

import static corewright.DamageFixtures.deck;
import static corewright.DamageFixtures.rectangle;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.DamageFixtures.Deck;
import corewright.damage.Condition;
import corewright.repair.RepairPlanner;
import corewright.repair.mix.Lifts;
import corewright.repair.plan.Batch;
import corewright.repair.plan.InjectionPlan;
import corewright.reuse.Memory;
import corewright.survey.Origin;
import corewright.survey.Part;
import corewright.survey.Survey;
import corewright.survey.WorkEntry;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A space of three lifts, some of which are in. */
class LiftsInTest {
    private final Deck deck =
            deck(rectangle(0, 0, 3000, 1000)).region(Condition.VOID, rectangle(1000, 200, 1250, 400), 30, 0.1);
    private final InjectionPlan plan = RepairPlanner.plan(deck.survey(), deck.damage(), new Memory())
            .injections()
            .get(0);
    private final double waste = deck.survey().settings().drilling().wasteFraction();
    private final List<String> holes = plan.batches().stream()
            .filter(b -> Lifts.number(b, plan.batches()) == 1)
            .flatMap(b -> b.holes().stream())
            .distinct()
            .toList();

    @Test
    void aHoleIsOpenUntilItsLastLiftIsIn() {
        List<WorkEntry> log = new ArrayList<>();
        for (String hole : holes) {
            log.add(entry(hole, planned(hole) / 3, 1));
        }
        log.add(entry(holes.get(0), planned(holes.get(0)) / 3, 2));
        LiftsIn lifts = new LiftsIn(plan.batches(), log);
        assertThat(lifts.all(holes.get(0))).isEqualTo(3);
        assertThat(lifts.next(holes.get(0))).isEqualTo(3);
        assertThat(lifts.open()).containsExactlyInAnyOrderElementsOf(holes);
        assertThat(lifts.open().get(lifts.open().size() - 1))
                .as("its third lift comes after the others' second")
                .isEqualTo(holes.get(0));

        WorkLog work = progress(log).log();
        double left = 0;
        for (String hole : holes) {
            left += planned(hole) * (hole.equals(holes.get(0)) ? 1 : 2) / 3;
        }
        assertThat(work.factor()).isCloseTo(1, within(1e-9));
        assertThat(work.leftG()).isCloseTo(left, within(1e-9));
        NextPapers papers = NextPapers.of(deck.survey(), plan, work);
        assertThat(papers.leftG().doubleValue()).isCloseTo(left, within(0.05 * holes.size()));
        List<Batch> cups = papers.cups().stream().map(NextPapers.Cup::batch).toList();
        assertThat(new LiftsIn(cups, List.of()).all(holes.get(0))).isEqualTo(1);
        for (String hole : holes.subList(1, holes.size())) {
            assertThat(new LiftsIn(cups, List.of()).all(hole)).isEqualTo(2);
        }
    }

    @Test
    void aLineWithoutALiftMeansAllOfThem() {
        List<WorkEntry> log = new ArrayList<>();
        for (String hole : holes) {
            log.add(entry(hole, planned(hole), null));
        }
        assertThat(new LiftsIn(plan.batches(), log).open()).isEmpty();
        assertThat(progress(log).log().leftG()).isZero();
    }

    private WorkProgress progress(List<WorkEntry> log) {
        Survey survey = Part.LOG.with(deck.survey(), log);
        return WorkProgress.of(survey, deck.damage(), List.of(plan)).get(0);
    }

    private double planned(String hole) {
        return WorkLog.planned(plan, waste).getOrDefault(hole, 0.0);
    }

    private static WorkEntry entry(String hole, double grams, @Nullable Integer lift) {
        return new WorkEntry(
                new Origin("log.csv", 2), hole, 120, grams, null, null, null, null, "", "", "", "", "", null, lift);
    }
}
