package corewright.stiffness;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.locks.Lock;
import java.util.concurrent.locks.ReadWriteLock;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import java.util.function.Function;

/** Work on panels side by side: a panel a thread, and a panel of many elements by itself, so that memory is bounded. */
final class Abreast {
    /** Panels at a time. Each shares its own work among threads too. */
    private static final int MOST = 4;

    /** A panel of more nodes than this, some 100 MB, is by itself. */
    private static final double NODES = 4000;

    private Abreast() {}

    /**
     * Results in the order of the works, whatever the number of threads.
     *
     * @param work asks nothing that other panels change
     */
    static <P, R> List<R> on(List<P> works, Function<P, DeckPanel> panel, Function<P, R> work) {
        int threads = Math.min(MOST, Math.min(works.size(), Runtime.getRuntime().availableProcessors()));
        if (threads < 2) {
            return works.stream().map(work).toList();
        }
        ReadWriteLock memory = new ReentrantReadWriteLock();
        ExecutorService pool = Executors.newFixedThreadPool(threads, Abreast::thread);
        try {
            List<Future<R>> results = new ArrayList<>();
            for (P one : works) {
                boolean large = StudyMesh.nodes(panel.apply(one).area()) > NODES;
                Lock share = large ? memory.writeLock() : memory.readLock();
                results.add(pool.submit(() -> {
                    share.lock();
                    try {
                        return work.apply(one);
                    } finally {
                        share.unlock();
                    }
                }));
            }
            List<R> all = new ArrayList<>();
            for (Future<R> result : results) {
                all.add(result.get());
            }
            return all;
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            if (e.getCause() instanceof RuntimeException own) { // such as that the work is no longer wanted
                throw own;
            }
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException();
        } finally {
            pool.shutdownNow();
        }
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "panel");
        thread.setDaemon(true);
        return thread;
    }
}
