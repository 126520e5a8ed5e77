package corewright.desktop;

import corewright.desktop.state.Jobs;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.util.Duration;

/** Jobs of a running window. */
final class FxJobs implements Jobs, AutoCloseable {
    private final ExecutorService side = Executors.newCachedThreadPool(r -> daemon(r, "work"));
    private final ExecutorService line = Executors.newSingleThreadExecutor(r -> daemon(r, "edits"));

    private volatile Painting painting = () -> {};

    private static Thread daemon(Runnable run, String name) {
        Thread thread = new Thread(run, "corewright-" + name);
        thread.setDaemon(true);
        return thread;
    }

    @Override
    public <T> Job run(Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
        return start(side, work, done, failed);
    }

    @Override
    public <T> Job inOrder(Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
        return start(line, work, done, failed);
    }

    private static <T> Job start(ExecutorService on, Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
        AtomicBoolean wanted = new AtomicBoolean(true);
        Future<?> future = on.submit(() -> {
            try {
                T result = work.call();
                answer(wanted, () -> done.accept(result));
            } catch (Exception e) {
                answer(wanted, () -> failed.accept(e));
            } catch (Error e) {
                answer(wanted, () -> failed.accept(new IllegalStateException(e)));
                throw e;
            }
        });
        return () -> {
            wanted.set(false);
            future.cancel(true);
        };
    }

    private static void answer(AtomicBoolean wanted, Runnable deed) {
        Platform.runLater(() -> {
            if (wanted.get()) {
                deed.run();
            }
        });
    }

    @Override
    public Job later(long delayMs, Runnable deed) {
        PauseTransition pause = new PauseTransition(Duration.millis(delayMs));
        pause.setOnFinished(e -> deed.run());
        pause.play();
        return pause::stop;
    }

    @Override
    public void onWindow(Runnable deed) {
        Platform.runLater(deed);
    }

    @Override
    public void paintFirst(Painting first) {
        painting = first;
    }

    @Override
    public void awaitPainted() throws InterruptedException {
        painting.await();
    }

    /** Edits already handed in are still written. */
    @Override
    public void close() {
        side.shutdownNow();
        line.shutdown();
    }
}
