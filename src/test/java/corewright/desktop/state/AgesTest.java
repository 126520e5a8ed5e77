package corewright.desktop.state;

import static corewright.DamageFixtures.deck;
import static corewright.DamageFixtures.rectangle;
import static org.assertj.core.api.Assertions.assertThat;

import corewright.assessment.Age;
import corewright.assessment.Ages;
import corewright.assessment.Assessment;
import corewright.assessment.Partial;
import corewright.damage.Condition;
import corewright.damage.Region;
import corewright.desktop.plan.Readout;
import corewright.desktop.slip.Slip;
import corewright.desktop.slip.SlipWords;
import corewright.survey.CoreState;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Figures that are older than the survey say so in words, wherever they stand. */
class AgesTest {
    private static final Ages FOLLOWING = new Ages(Age.FRESH, Age.OLD, Age.OLD);
    private static final Ages FIRST = Ages.MAPPED;

    private final Assessment found = found();
    private final Region hollow = found.damage().regions().get(0);

    private static Assessment found() {
        var deck = deck(rectangle(0, -500, 2000, 500))
                .probe(500, 0, 5, CoreState.DRY)
                .probe(1000, -300, 0, CoreState.DRY)
                .probe(1000, 300, 0, CoreState.DRY)
                .probe(1500, -300, 0, CoreState.DRY)
                .probe(1500, 300, 0, CoreState.DRY)
                .region(Condition.VOID, rectangle(300, -200, 700, 200), 5, 0.1);
        return Partial.mapped(deck.survey(), List.of(), deck.damage());
    }

    private Map<Step, String> steps(Ages ages) {
        return Steps.of(found.survey(), found, true, ages, Units.METRIC);
    }

    @Test
    void whileTheMapFollowsOnlyTheLitresOfARegionAreOfBefore() {
        Slip slip = SlipWords.of(found, Units.METRIC, FOLLOWING).region(hollow);

        assertThat(slip.before())
                .isEqualTo("Litres and findings are of before the change; new ones follow when the calculation is"
                        + " through.");
        assertThat(slip.rangeTitle()).isEqualTo("How much is missing, of before the change");
        assertThat(slip.range()).isNotNull().matches(Slip.Range::old);
        assertThat(slip.facts()).noneMatch(Slip.Fact::old);
        assertThat(slip.work().methods()).as("advice of before is not offered").isEmpty();
        assertThat(slip.work().findingsTitle()).endsWith(", old");
    }

    @Test
    void beforeTheMapFollowsEveryFigureIsOfBefore() {
        Slip region = SlipWords.of(found, Units.US, Ages.OLD).region(hollow);
        Slip face = SlipWords.of(found, Units.US, Ages.OLD).face("foredeck");

        assertThat(region.before()).startsWith("Every figure here is of before the change");
        assertThat(region.facts())
                .filteredOn(f -> !f.name().equals("rests on"))
                .isNotEmpty()
                .allMatch(Slip.Fact::old);
        assertThat(face.before()).isEqualTo(region.before());
        assertThat(face.range()).isNotNull().matches(Slip.Range::old);
    }

    @Test
    void whatIsFreshIsNotMarked() {
        for (Ages ages : List.of(Ages.FRESH, FIRST)) {
            Slip slip = SlipWords.of(found, Units.METRIC, ages).region(hollow);

            assertThat(slip.before()).isEmpty();
            assertThat(slip.rangeTitle()).isEqualTo("How much is missing");
            assertThat(slip.range()).isNotNull().matches(r -> !r.old());
            assertThat(slip.facts()).noneMatch(Slip.Fact::old);
        }
    }

    @Test
    void stepsSayWhichStatesAreOfBeforeAndWhichAreStillToCome() {
        assertThat(steps(Ages.FRESH)).containsEntry(Step.DAMAGE, "1 region").containsEntry(Step.STIFFNESS, "0 panels");
        assertThat(steps(FOLLOWING))
                .containsEntry(Step.DAMAGE, "1 region")
                .containsEntry(Step.REPAIR, "nothing to do, old")
                .containsEntry(Step.STIFFNESS, "0 panels, old");
        assertThat(steps(FIRST)).containsEntry(Step.REPAIR, "to follow").containsEntry(Step.STIFFNESS, "to follow");
        assertThat(steps(Ages.OLD)).containsEntry(Step.DAMAGE, "1 region, old");
    }

    @Test
    void theReadOutSaysWhenItsFiguresAreOfBefore() {
        String fresh = Readout.at(found, "foredeck", 500, 0, Units.METRIC, FOLLOWING);
        String old = Readout.at(found, "foredeck", 500, 0, Units.METRIC, Ages.OLD);

        assertThat(fresh).endsWith(" mm");
        assertThat(old).isEqualTo(fresh + "   (of before the change)");
        assertThat(Readout.at(found, "foredeck", Double.NaN, Double.NaN, Units.METRIC, Ages.OLD))
                .as("nothing is pointed at")
                .isEqualTo("The map is of before the change");
    }
}
