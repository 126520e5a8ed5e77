package corewright.reuse;

import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * Results of one calculation by their whole inputs, with those of the calculation before it at hand. It holds what the two
 * used and no more. Several threads may ask at once.
 */
public class Memory {
    private final Map<Object, Object> before;
    private final Map<Object, Object> own = new ConcurrentHashMap<>();
    private final Map<String, Integer> worked = new ConcurrentHashMap<>();
    private final Map<String, Integer> taken = new ConcurrentHashMap<>();

    /** Nothing is remembered. */
    public Memory() {
        this(Map.of());
    }

    private Memory(Map<Object, Object> before) {
        this.before = before;
    }

    /** For the next calculation: it finds what this one used. */
    public Memory next() {
        return new Memory(own);
    }

    /**
     * The result for an input. What fails is not remembered.
     *
     * @param input everything that the result depends on; equal inputs must give equal results
     * @param work asks nothing but its input
     */
    public <I extends Record, R> R of(I input, Function<? super I, ? extends R> work) {
        @SuppressWarnings("unchecked") // an input's class decides the result's
        R known = (R) own.getOrDefault(input, before.get(input));
        R result = known != null ? known : work.apply(input);
        (known != null ? taken : worked).merge(kind(input.getClass()), 1, Integer::sum);
        own.put(input, result);
        return result;
    }

    private static String kind(Class<?> input) {
        return input.getName().substring(input.getPackageName().length() + 1).replace('$', '.');
    }

    /** How many results were worked out anew, by the kind of input. */
    public Map<String, Integer> worked() {
        return new TreeMap<>(worked);
    }

    /** How many were remembered. */
    public Map<String, Integer> taken() {
        return new TreeMap<>(taken);
    }
}
