package corewright.field;

import java.util.concurrent.CancellationException;

/** Whether anybody still waits for long work. */
public final class Wanted {
    private Wanted() {}

    /**
     * Asked between the steps of long work.
     *
     * @throws CancellationException where this thread was interrupted: nobody waits any more
     */
    public static void check() {
        if (Thread.currentThread().isInterrupted()) {
            throw new CancellationException();
        }
    }
}
