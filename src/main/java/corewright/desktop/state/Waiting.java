package corewright.desktop.state;

import corewright.assessment.Progress;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;

/**
 * Long work that a person waits for besides the calculation, such as a file that is read or written: it is told how far it is, and the
 * key that stops a calculation stops it, the newest first. Only the window's thread may call it.
 */
public final class Waiting {
    /** How far it is cannot be said. */
    private static final double UNKNOWN = -1;

    /** The work itself, away from the window's thread. */
    public interface Work<T> {
        /** @param progress throws where nobody waits any more */
        T done(Progress progress) throws Exception;
    }

    private final Jobs jobs;
    private final Runnable tell;
    private final Deque<One<?>> under = new ArrayDeque<>();

    /** @param tell told when work begins and of how far it is */
    Waiting(Jobs jobs, Runnable tell) {
        this.jobs = jobs;
        this.tell = tell;
    }

    /**
     * Has work done; cancelled, nothing more is heard of it. Who hears of its end tells the window.
     *
     * @param what it is, as the window says it: "Reading deck.gpkg"
     * @param failed told too when it is stopped
     */
    public <T> Jobs.Job on(String what, Work<T> work, Consumer<T> done, Consumer<Exception> failed) {
        One<T> one = new One<>(what, failed);
        under.push(one);
        one.job = jobs.run(
                () -> one.work(work),
                result -> {
                    one.made.set(null);
                    if (under.remove(one)) {
                        done.accept(result);
                    }
                },
                e -> {
                    if (under.remove(one)) {
                        failed.accept(e);
                    }
                });
        tell.run();
        return one::leave;
    }

    /** Stops what was begun last; says whether there was anything. */
    boolean stop() {
        One<?> one = under.peek();
        if (one == null) {
            return false;
        }
        one.leave();
        one.failed.accept(new CancellationException());
        return true;
    }

    /** Nobody waits for anything any more. */
    void leave() {
        new ArrayList<>(under).forEach(One::leave);
    }

    /** What was begun last. */
    Busy busy() {
        One<?> one = under.peek();
        return one == null ? Busy.NOT : one.busy;
    }

    /** One piece of work. */
    private final class One<T> implements Progress {
        private final String what;
        private final Consumer<Exception> failed;

        /** What it came to, until somebody has it. */
        private final AtomicReference<T> made = new AtomicReference<>();

        private volatile boolean left;
        private Busy busy;
        private Jobs.Job job = () -> {};

        One(String what, Consumer<Exception> failed) {
            this.what = what;
            this.failed = failed;
            busy = new Busy(what, UNKNOWN);
        }

        private T work(Work<T> work) throws Exception {
            T result = work.done(this);
            made.set(result);
            if (left) {
                closeUnused();
                throw new CancellationException();
            }
            return result;
        }

        private void leave() {
            under.remove(this);
            left = true;
            job.cancel();
            closeUnused();
        }

        /** A file that nobody takes is not to stay open. */
        private void closeUnused() {
            if (made.getAndSet(null) instanceof EditLog log) {
                log.close();
            }
        }

        @Override
        public void begin(String stage, double fraction) {
            if (left || Thread.currentThread().isInterrupted()) {
                throw new CancellationException();
            }
            jobs.onWindow(() -> {
                busy = new Busy(what + ": " + stage, fraction);
                tell.run();
            });
        }
    }
}
