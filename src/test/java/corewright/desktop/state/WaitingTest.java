package corewright.desktop.state;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.SurveyFolders;
import corewright.assessment.Progress;
import corewright.desktop.MapChain;
import corewright.store.SurveyFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Long work is told, is stopped by one key, and leaves nothing open. */
class WaitingTest {
    /** Jobs that are done when asked for; one that was cancelled is done all the same, and nobody hears of it. */
    private static final class Later implements Jobs {
        private final List<Runnable> waiting = new ArrayList<>();

        @Override
        public <T> Job run(Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
            boolean[] wanted = {true};
            waiting.add(() -> {
                try {
                    T result = work.call();
                    if (wanted[0]) {
                        done.accept(result);
                    }
                } catch (Exception e) {
                    if (wanted[0]) {
                        failed.accept(e);
                    }
                }
            });
            return () -> wanted[0] = false;
        }

        void doAll() {
            List<Runnable> all = List.copyOf(waiting);
            waiting.clear();
            all.forEach(Runnable::run);
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

    private final Later jobs = new Later();
    private final List<Busy> told = new ArrayList<>();
    private final Waiting waiting = new Waiting(jobs, this::hear);
    private final List<String> ends = new ArrayList<>();

    private void hear() {
        told.add(waiting.busy());
    }

    private void begin(String what) {
        waiting.on(what, this::work, ends::add, e -> ends.add(what + ": " + Complaints.sentence(e)));
    }

    private String work(Progress progress) {
        progress.begin("half", 0.5);
        return "done";
    }

    @Test
    void workIsToldUntilItIsDone() {
        begin("Writing");
        jobs.doAll();

        assertThat(told).containsExactly(new Busy("Writing", -1), new Busy("Writing: half", 0.5));
        assertThat(ends).containsExactly("done");
        assertThat(waiting.busy()).isEqualTo(Busy.NOT);
        assertThat(waiting.stop()).isFalse();
    }

    @Test
    void theNewestIsStoppedAndTheOtherGoesOn() {
        begin("Writing");
        begin("Comparing");
        assertThat(waiting.stop()).isTrue();
        assertThat(waiting.busy().what()).isEqualTo("Writing");
        jobs.doAll();

        assertThat(ends).containsExactly("Comparing: it was stopped.", "done");
    }

    @Test
    void whatIsStoppedEndsAtItsNextStage() {
        List<Class<?>> thrown = new ArrayList<>();
        waiting.on(
                "Writing",
                progress -> {
                    try {
                        return work(progress);
                    } catch (CancellationException e) {
                        thrown.add(e.getClass());
                        throw e;
                    }
                },
                ends::add,
                e -> {});
        waiting.stop();
        jobs.doAll();

        assertThat(thrown).containsExactly(CancellationException.class);
        assertThat(ends).isEmpty();
    }

    /** Else its lock would keep everybody out, this window too. */
    @Test
    void aFileThatIsOpenedTooLateIsClosed(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("deck.gpkg");
        try (EditLog made = SurveyOpener.create(
                file, SurveyOpener.open(SurveyFolders.minimal(folder).path()).survey())) {
            assertThat(made.place()).isEqualTo(file);
        }
        Workbench bench = new Workbench(jobs, MapChain::assess);
        bench.open("deck", () -> SurveyOpener.open(file));
        bench.stop();
        assertThat(bench.message()).isEqualTo("deck: it was stopped.");
        jobs.doAll();

        assertThat(bench.survey()).isEmpty();
        try (SurveyFile again = SurveyFile.open(file)) {
            assertThat(again.whyReadOnly()).isEmpty();
        }
        bench.close();
    }
}
