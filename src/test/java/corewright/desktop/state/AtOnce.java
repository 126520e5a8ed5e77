package corewright.desktop.state;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Consumer;

/** Jobs done in place; what was to happen later happens when asked for. */
public final class AtOnce implements Jobs {
    final List<Runnable> later = new ArrayList<>();

    @Override
    public <T> Job run(Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
        T result;
        try {
            result = work.call();
        } catch (Exception e) {
            failed.accept(e);
            return () -> {};
        }
        done.accept(result);
        return () -> {};
    }

    @Override
    public <T> Job inOrder(Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
        return run(work, done, failed);
    }

    @Override
    public Job later(long delayMs, Runnable deed) {
        later.add(deed);
        return () -> later.remove(deed);
    }

    @Override
    public void onWindow(Runnable deed) {
        deed.run();
    }
}
