package corewright.report;

import java.io.IOException;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;

/** Files that have nothing to do with one another, written as many at a time as the machine has processors. */
final class SideBySide implements AutoCloseable {
    /** Each holds a document or a picture in memory. */
    private static final int MOST = 4;

    /** A document that is no longer wanted ends by itself: longer than any takes. */
    private static final long ENDS_S = 60;

    private final ExecutorService pool = Executors.newFixedThreadPool(
            Math.min(MOST, Runtime.getRuntime().availableProcessors()), SideBySide::thread);

    /** Something to be written. */
    interface Writing {
        void write() throws IOException;
    }

    /** A file that is being written. */
    record Begun(Future<?> future) {
        /** Waits until it is there. */
        void await() throws IOException {
            try {
                future.get();
            } catch (ExecutionException e) {
                Throwable cause = e.getCause();
                if (cause instanceof IOException known) {
                    throw known;
                } else if (cause instanceof RuntimeException known) {
                    throw known;
                } else if (cause instanceof Error known) {
                    throw known;
                }
                throw new IllegalStateException(cause);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new CancellationException();
            }
        }
    }

    /** Those begun first are written first. */
    Begun begin(Writing writing) {
        return new Begun(pool.submit(() -> {
            writing.write();
            return null;
        }));
    }

    /** What waits is not begun any more; what is being written is waited for, so that nothing appears afterwards. */
    @Override
    public void close() {
        pool.shutdownNow();
        boolean interrupted = false;
        while (true) {
            try {
                if (pool.awaitTermination(ENDS_S, TimeUnit.SECONDS)) {
                    break;
                }
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "papers");
        thread.setDaemon(true);
        return thread;
    }
}
