package corewright.reuse;

import java.lang.ref.WeakReference;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * What belongs to the few objects asked for last, each known by being the very same object: for large inputs that never change, of which
 * comparing or hashing would take longer than the work. It keeps no input alive. Several threads may ask at once.
 *
 * @param <K> the inputs; they never change
 * @param <V> what belongs to one; it must not hold on to its input
 */
public final class Latest<K, V> {
    private final int most;
    private final Supplier<V> empty;
    private final Deque<Entry<K, V>> entries = new ArrayDeque<>();

    private record Entry<K, V>(WeakReference<K> input, V belongings) {}

    /**
     * @param most how many inputs are remembered
     * @param empty what belongs to one at first
     */
    public Latest(int most, Supplier<V> empty) {
        this.most = most;
        this.empty = empty;
    }

    /** What belongs to an input, to be filled by whoever asks. */
    public synchronized V of(K input) {
        Entry<K, V> entry = taken(input);
        if (entry == null) {
            entry = new Entry<>(new WeakReference<>(input), empty.get());
        }
        entries.addFirst(entry);
        if (entries.size() > most) {
            entries.removeLast();
        }
        return entry.belongings;
    }

    private @Nullable Entry<K, V> taken(K input) {
        for (Iterator<Entry<K, V>> i = entries.iterator(); i.hasNext(); ) {
            Entry<K, V> entry = i.next();
            if (entry.input.refersTo(input)) {
                i.remove();
                return entry;
            }
        }
        return null;
    }
}
