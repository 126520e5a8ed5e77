package corewright.desktop.state;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.SurveyFolders;
import corewright.assessment.Age;
import corewright.assessment.Ages;
import corewright.assessment.Assessment;
import corewright.assessment.Assessor;
import corewright.damage.DamageMap;
import corewright.desktop.Desktop;
import corewright.desktop.MapChain;
import corewright.desktop.plan.Readout;
import corewright.desktop.slip.Slip;
import corewright.desktop.slip.SlipWords;
import corewright.drawing.screen.ScreenLayer;
import corewright.survey.Edit;
import corewright.survey.Moisture;
import corewright.survey.Part;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WorkbenchTest {
    private final AtOnce jobs = new AtOnce();
    private final Workbench bench = new Workbench(jobs, MapChain::assess);

    private void open(Path folder) {
        Path survey = SurveyFolders.minimal(folder).path();
        bench.open("survey", () -> SurveyOpener.open(survey));
    }

    private static Moisture wetter(Moisture m) {
        return new Moisture(m.origin(), m.id(), m.spot(), 60, false, m.meter(), null, null, false, m.side(), m.note());
    }

    private void makeOneWet() {
        bench.edit("reading", s -> {
            Moisture first = s.readings().moisture().get(0);
            return Edit.replace(s, Part.MOISTURE, first, wetter(first));
        });
    }

    @Test
    void anOpenedFolderIsCalculatedAndItsStepsSayHowItStands(@TempDir Path folder) {
        open(folder);

        assertThat(bench.fresh()).as(bench.message()).isTrue();
        Map<Step, String> words =
                Steps.of(bench.survey().orElseThrow(), bench.found().orElseThrow(), false, bench.ages(), Units.METRIC);
        assertThat(words.get(Step.PLAN)).isEqualTo("0.54 m²");
        assertThat(words.get(Step.READINGS)).startsWith("51");
        assertThat(words.get(Step.DAMAGE)).endsWith(" regions");
        bench.close();
    }

    @Test
    void anEditIsAnnounced(@TempDir Path folder) {
        open(folder);
        makeOneWet();

        assertThat(bench.message()).isEqualTo("Done: reading. Ctrl Z takes it back.");
        bench.close();
    }

    /** Jobs are done in place here, so the chain itself is where it is stopped. */
    @Test
    void whatWasStoppedIsCalculatedOnlyWhenAskedFor(@TempDir Path folder) {
        boolean[] stop = {true};
        Workbench stopped = new Workbench(jobs, (survey, findings, earlier, progress) -> {
            if (stop[0]) {
                throw new java.util.concurrent.CancellationException();
            }
            return MapChain.assess(survey, findings, earlier, progress);
        });
        Path survey = SurveyFolders.minimal(folder).path();
        stopped.open("survey", () -> SurveyOpener.open(survey));
        assertThat(stopped.stopped()).isTrue();
        stopped.hold(true);
        stopped.hold(false);
        assertThat(stopped.found()).isEmpty();

        stop[0] = false;
        stopped.calculate();
        assertThat(stopped.stopped()).isFalse();
        assertThat(stopped.fresh()).isTrue();
        stopped.close();
    }

    @Test
    void aFolderThatCannotBeUsedShowsEveryComplaintAndKeepsWhatWasOpen(@TempDir Path folder, @TempDir Path other) {
        open(folder);
        Path bad = SurveyFolders.minimal(other)
                .with("taps.csv", "id,x,y,sound\nT1,1,1,holow\nT2,1,x,dull\n")
                .path();
        bench.open("taps", () -> SurveyOpener.open(bad));

        assertThat(bench.complaints())
                .containsExactly(
                        new Complaints.Line("taps.csv:2: sound", "found \"holow\", expected sound, dull or hollow"),
                        new Complaints.Line("taps.csv:3: y", "found \"x\", expected a length in mm"));
        assertThat(bench.survey()).isPresent();
        assertThat(bench.message()).isEqualTo("taps cannot be used as it is: 2 complaints.");
        bench.close();
    }

    @Test
    void afterAnEditTheMapFollowsAtOnceAndTheRestWhenIdle(@TempDir Path folder) {
        open(folder);
        DamageMap before = bench.found().orElseThrow().damage();
        makeOneWet();

        Assessment following = bench.found().orElseThrow();
        assertThat(following.damage()).isNotEqualTo(before);
        assertThat(bench.ages()).isEqualTo(new Ages(Age.FRESH, Age.OLD, Age.OLD));

        List.copyOf(jobs.later).forEach(Runnable::run);
        assertThat(bench.fresh()).isTrue();
        assertThat(bench.ages()).isEqualTo(Ages.FRESH);
        bench.close();
    }

    @Test
    void everyEditIsOnDiskAndUndoNamesTheDeed(@TempDir Path folder) {
        open(folder);
        assertThat(bench.undoName()).isEqualTo("Nothing to undo");
        makeOneWet();

        assertThat(folder.resolve("survey.gpkg")).exists();
        assertThat(bench.undoName()).isEqualTo("Undo: reading");
        bench.undo();
        assertThat(bench.message()).isEqualTo("Taken back: reading.");
        assertThat(bench.redoName()).isEqualTo("Redo: reading");
        bench.redo();
        assertThat(bench.survey().orElseThrow().readings().moisture().get(0).value())
                .isEqualTo(60);
        bench.close();
    }

    @Test
    void anEditThatDoesNotFitIsSaidAndChangesNothing(@TempDir Path folder) {
        open(folder);
        bench.edit("nonsense", s -> new Edit.Remove<>(Part.MOISTURE, 4000));

        assertThat(bench.message()).startsWith("Not written: ");
        assertThat(bench.fresh()).isTrue();
        assertThat(folder.resolve("survey.gpkg")).doesNotExist();
        bench.close();
    }

    @Test
    void whileHeldNothingIsCalculated(@TempDir Path folder) {
        open(folder);
        bench.hold(true);
        makeOneWet();
        assertThat(bench.ages()).isEqualTo(Ages.OLD);
        bench.hold(false);

        assertThat(bench.fresh()).isTrue();
        bench.close();
    }

    @Test
    void ofTheSurfacesOneIsSeenAtATime() {
        Sight sight = bench.sight();
        sight.toggle(ScreenLayer.MOISTURE);
        sight.toggle(ScreenLayer.VOID_DEPTH);

        assertThat(sight.layers()).contains(ScreenLayer.VOID_DEPTH).doesNotContain(ScreenLayer.MOISTURE);
        sight.toggle(ScreenLayer.WET);
        assertThat(sight.layers()).doesNotContain(ScreenLayer.WET);
    }

    @Test
    void theSlipSaysWhatARegionIsBeforeWhatItIsCalled(@TempDir Path folder) {
        Path survey = SurveyFolders.minimal(folder).path();
        Workbench whole = new Workbench(jobs, Assessor::assess);
        whole.open("survey", () -> SurveyOpener.open(survey));
        Assessment found = whole.found().orElseThrow();
        assertThat(whole.fresh()).as(whole.message()).isTrue();
        found.damage().regions().forEach(r -> {
            Slip slip = SlipWords.of(found, Units.METRIC, Ages.FRESH).region(r);
            assertThat(slip.title()).isEqualTo(r.id() + "  " + r.condition().word());
            assertThat(slip.sentence()).startsWith("The ").endsWith(".");
            assertThat(slip.facts()).hasSizeBetween(3, 4);
            assertThat(slip.work().methods())
                    .hasSize(4)
                    .filteredOn(m -> m.standing() == Slip.Standing.ADVISED)
                    .hasSize(1);
            assertThat(slip.work().methods())
                    .filteredOn(m -> m.standing() == Slip.Standing.NOT_OFFERED)
                    .allSatisfy(m -> assertThat(m.why()).isNotEmpty());
        });
        assertThat(found.damage().regions()).isNotEmpty();
        whole.close();
    }

    @Test
    void aMeterReadingIsNeverGivenAPercentSign(@TempDir Path folder) {
        open(folder);
        String words = Readout.at(bench.found().orElseThrow(), "foredeck", 700, 300, Units.METRIC, Ages.FRESH);

        assertThat(words).contains("moisture index ").contains(" ± ").doesNotContain("%");
        assertThat(Readout.at(bench.found().orElseThrow(), "foredeck", 700, 300, Units.US, Ages.FRESH))
                .endsWith(" in");
        bench.close();
    }

    @Test
    void whatASystemLacksIsNamedWithItsRemedy() {
        assertThat(Desktop.missing(new UnsupportedOperationException("Unable to open DISPLAY")))
                .startsWith("No display: ");
        assertThat(Desktop.missing(
                        new RuntimeException(new UnsupportedOperationException("Unable to load glass GTK library."))))
                .isEqualTo("The system's GTK 3 is missing: install it with \"apt-get install -y --no-install-recommends"
                        + " libgtk-3-0 libxtst6\".");
        assertThat(Desktop.missing(new IllegalStateException("ours"))).isEmpty();
    }

    /** Whoever closes a view that never stopped the calculation may not have it begin from the start. */
    @Test
    void whatIsUnderWayIsNotBegunAgain(@TempDir Path folder) {
        AtomicInteger begun = new AtomicInteger();
        Workbench working = new Workbench(new Unending(begun), MapChain::assess);
        Path survey = SurveyFolders.minimal(folder).path();
        working.open("survey", () -> SurveyOpener.open(survey));
        assertThat(begun).as("reading and calculating").hasValue(2);

        working.hold(false);
        working.hold(true);
        working.hold(false);

        assertThat(begun).hasValue(2);
        working.close();
    }

    /** Reads at once; what is begun after that never ends. */
    private record Unending(AtomicInteger begun) implements Jobs {
        @Override
        public <T> Job run(Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
            return begun.incrementAndGet() == 1 ? new AtOnce().run(work, done, failed) : () -> {};
        }

        @Override
        public <T> Job inOrder(Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
            return run(work, done, failed);
        }

        @Override
        public Job later(long delayMs, Runnable deed) {
            return () -> {};
        }

        @Override
        public void onWindow(Runnable deed) {
            deed.run();
        }
    }
}
