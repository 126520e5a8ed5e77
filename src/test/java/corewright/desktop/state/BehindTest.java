package corewright.desktop.state;

import static corewright.DamageFixtures.deck;
import static corewright.DamageFixtures.rectangle;
import static org.assertj.core.api.Assertions.assertThat;

import corewright.assessment.Assessment;
import corewright.assessment.Assessor;
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
class BehindTest {
    private static final Behind FOLLOWING = new Behind(false, true, Behind.Later.OF_BEFORE);
    private static final Behind FIRST = new Behind(false, false, Behind.Later.AWAITED);

    private final Assessment found = found();
    private final Region hollow = found.damage().regions().get(0);

    private static Assessment found() {
        var deck = deck(rectangle(0, -500, 2000, 500))
                .region(Condition.VOID, rectangle(300, -200, 700, 200), 5, 0.1)
                .probe(500, 0, 5, CoreState.NONE);
        return Assessor.mapped(deck.survey(), List.of(), deck.damage());
    }

    private Map<Step, String> steps(Behind behind) {
        return Steps.of(found.survey(), found, false, behind, Units.METRIC);
    }

    @Test
    void whileTheMapFollowsOnlyTheLitresOfARegionAreOfBefore() {
        Slip slip = SlipWords.of(found, Units.METRIC, FOLLOWING).region(hollow);

        assertThat(slip.before())
                .isEqualTo("Litres and findings are of before the change; new ones follow when the calculation is"
                        + " through.");
        assertThat(slip.rangeTitle()).isEqualTo("How much is missing, of before the change");
        assertThat(slip.range()).isNotNull().matches(Slip.Range::before);
        assertThat(slip.facts()).noneMatch(Slip.Fact::before);
        assertThat(slip.work().methods()).as("advice of before is not offered").isEmpty();
        assertThat(slip.work().findingsTitle()).endsWith(", old");
    }

    @Test
    void beforeTheMapFollowsEveryFigureIsOfBefore() {
        Slip region = SlipWords.of(found, Units.US, Behind.EVERYTHING).region(hollow);
        Slip face = SlipWords.of(found, Units.US, Behind.EVERYTHING).face("foredeck");

        assertThat(region.before()).startsWith("Every figure here is of before the change");
        assertThat(region.facts())
                .filteredOn(f -> !f.name().equals("rests on"))
                .isNotEmpty()
                .allMatch(Slip.Fact::before);
        assertThat(face.before()).isEqualTo(region.before());
        assertThat(face.range()).isNotNull().matches(Slip.Range::before);
    }

    @Test
    void whatIsFreshIsNotMarked() {
        for (Behind behind : List.of(Behind.NOTHING, FIRST)) {
            Slip slip = SlipWords.of(found, Units.METRIC, behind).region(hollow);

            assertThat(slip.before()).isEmpty();
            assertThat(slip.rangeTitle()).isEqualTo("How much is missing");
            assertThat(slip.range()).isNotNull().matches(r -> !r.before());
            assertThat(slip.facts()).noneMatch(Slip.Fact::before);
        }
    }

    @Test
    void stepsSayWhichStatesAreOfBeforeAndWhichAreStillToCome() {
        assertThat(steps(Behind.NOTHING))
                .containsEntry(Step.DAMAGE, "1 region")
                .containsEntry(Step.STIFFNESS, "0 panels");
        assertThat(steps(FOLLOWING))
                .containsEntry(Step.DAMAGE, "1 region")
                .containsEntry(Step.REPAIR, "nothing to do, old")
                .containsEntry(Step.STIFFNESS, "0 panels, old");
        assertThat(steps(FIRST)).containsEntry(Step.REPAIR, "to follow").containsEntry(Step.STIFFNESS, "to follow");
        assertThat(steps(Behind.EVERYTHING)).containsEntry(Step.DAMAGE, "1 region, old");
    }

    @Test
    void theReadOutSaysWhenItsFiguresAreOfBefore() {
        String fresh = Readout.at(found, "foredeck", 500, 0, Units.METRIC, FOLLOWING);
        String old = Readout.at(found, "foredeck", 500, 0, Units.METRIC, Behind.EVERYTHING);

        assertThat(fresh).endsWith(" mm");
        assertThat(old).isEqualTo(fresh + "   (of before the change)");
        assertThat(Readout.at(found, "foredeck", Double.NaN, Double.NaN, Units.METRIC, Behind.EVERYTHING))
                .as("nothing is pointed at")
                .isEqualTo("The map is of before the change");
    }
}
