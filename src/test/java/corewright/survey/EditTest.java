package corewright.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import corewright.GeneratedSurveys;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EditTest {
    private static final Spot HERE = new Spot("foredeck", 10, 20);
    private static final Plug PLUG = new Plug(new Origin("plugs.csv", 2), "K1", HERE, 11);

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void everyEditIsTakenBackByItsInverse(long seed) {
        GeneratedSurveys generated = new GeneratedSurveys(seed);
        Survey before = generated.survey(6);
        for (int i = 0; i < 100; i++) {
            Edit edit = generated.edit(before);

            Survey after = edit.apply(before);
            Edit inverse = edit.inverse(before);

            assertThat(inverse.apply(after)).as("%s", edit).isEqualTo(before);
            assertThat(inverse.inverse(after).apply(before))
                    .as("redo of %s", edit)
                    .isEqualTo(after);
            before = after;
        }
    }

    @Test
    void aChainOfEditsIsTakenBackStepByStepToTheBeginning() {
        GeneratedSurveys generated = new GeneratedSurveys(42);
        Survey first = generated.survey(4);
        Deque<Edit> undo = new ArrayDeque<>();
        Survey now = first;
        for (int i = 0; i < 200; i++) {
            Edit edit = generated.edit(now);
            undo.push(edit.inverse(now));
            now = edit.apply(now);
        }

        while (!undo.isEmpty()) {
            now = undo.pop().apply(now);
        }

        assertThat(now).isEqualTo(first);
    }

    /** An imported sheet: done one by one, each copies the list. */
    @Test
    void manyRowsPutInTogetherAreTakenBackTogether() {
        Survey before = new GeneratedSurveys(1).survey(3);
        int first = before.readings().plugs().size();
        List<Edit> rows = IntStream.range(0, 60_000)
                .<Edit>mapToObj(i -> new Edit.Insert<>(
                        Part.PLUGS, first + i, new Plug(new Origin("plugs.csv", i + 2), "K" + i, HERE, 11)))
                .toList();
        Edit sheet = new Edit.Together(rows);

        assertTimeout(Duration.ofSeconds(10), () -> {
            Survey after = sheet.apply(before);

            assertThat(after.readings().plugs()).hasSize(first + 60_000);
            assertThat(after.readings().plugs().get(first + 7).id()).isEqualTo("K7");
            Edit back = sheet.inverse(before);
            assertThat(back.apply(after).equals(before)).isTrue();
            assertThat(back.inverse(after).apply(before).equals(after)).isTrue();
        });
    }

    @Test
    void changesOnlyThePartItNames() {
        Survey before = new GeneratedSurveys(1).survey(3);

        Survey after = Edit.add(before, Part.PLUGS, PLUG).apply(before);

        assertThat(after.readings().plugs())
                .endsWith(PLUG)
                .hasSize(before.readings().plugs().size() + 1);
        for (Part<?> part : Part.all()) {
            if (!part.equals(Part.PLUGS)) {
                assertThat(part.of(after)).as("%s", part).isEqualTo(part.of(before));
            }
        }
    }

    @Test
    void editsTheFeaturesOfOneFace() {
        Survey before = new GeneratedSurveys(1).survey(3);
        Feature pad = before.faces().get(0).features().get(4);

        Survey after = Edit.remove(before, Part.features("foredeck"), pad).apply(before);

        assertThat(after.face("foredeck").features()).doesNotContain(pad).hasSize(7);
        assertThat(after.faces().get(1)).isEqualTo(before.faces().get(1));
    }

    @Test
    void refusesWhatDoesNotFitTheSurvey() {
        Survey survey = new GeneratedSurveys(1).survey(3);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Edit.Remove<>(Part.HEADING, 0).apply(survey))
                .withMessage("a survey has exactly one of these, not 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Edit.Together(
                                List.of(new Edit.Remove<>(Part.FACES, 0), new Edit.Remove<>(Part.FACES, 0)))
                        .apply(survey))
                .withMessage("a survey needs a face");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Edit.remove(survey, Part.PLUGS, PLUG))
                .withMessageStartingWith("not in the survey's plugs: Plug[");
        assertThatThrownBy(() -> new Edit.Insert<>(Part.PLUGS, 99, PLUG).apply(survey))
                .isInstanceOf(IndexOutOfBoundsException.class);
    }

    @Test
    void overridesSpeakOfTheReadingOfThatKindIdAndPlace() {
        Tap tap = new Tap(new Origin("taps.csv", 2), "K1", HERE, Sound.DULL, null, Side.OUTER);

        ReadingOverride override = ReadingOverride.of(PLUG, ReadingOverride.Trust.SET_ASIDE, "cut too deep");

        assertThat(override.concerns(PLUG)).isTrue();
        assertThat(override.concerns(tap)).isFalse();
    }
}
