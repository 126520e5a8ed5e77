package corewright.store;

/** What is to be done where the program is interrupted before this is closed: by a signal, or by its own exit. */
public final class OnInterrupt implements AutoCloseable {
    private final Thread hook;

    public OnInterrupt(Runnable clear) {
        hook = new Thread(clear, "clear what is unfinished");
        try {
            Runtime.getRuntime().addShutdownHook(hook);
        } catch (IllegalStateException e) {
            // the program is ending already; what it leaves is cleared by the next
        }
    }

    @Override
    public void close() {
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            // the program is ending and the hook runs
        }
    }
}
