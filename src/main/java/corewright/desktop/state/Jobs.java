package corewright.desktop.state;

import java.util.concurrent.Callable;
import java.util.function.Consumer;

/** Runs work away from the window's thread and answers on it; at once and in place in tests. */
public interface Jobs {
    /** Work under way. */
    interface Job {
        /** Nothing more is heard of it. */
        void cancel();
    }

    /** Long work; several run side by side. */
    <T> Job run(Callable<T> work, Consumer<T> done, Consumer<Exception> failed);

    /** Short work that must stay in order, such as writing edits. */
    <T> Job inOrder(Callable<T> work, Consumer<T> done, Consumer<Exception> failed);

    /** Something for the window's thread after a pause. */
    Job later(long delayMs, Runnable deed);

    /** Something for the window's thread, from any thread. */
    void onWindow(Runnable deed);

    /** Paints on a thread of its own. */
    interface Painting {
        /** Returns when what was asked for last is painted, or after a while. */
        void await() throws InterruptedException;
    }

    /** Names who paints what the window shows. */
    default void paintFirst(Painting painting) {}

    /** Returns when what the window shows is painted, or after a while; not for the window's thread. */
    default void awaitPainted() throws InterruptedException {}
}
