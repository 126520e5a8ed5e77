package corewright.damage;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What was fitted to one state of a survey, bay by bay: range, sill and drift of every hidden field, and the bays' results,
 * so that a bay whose readings did not change need not be worked again.
 */
public final class Parameters {
    /** Nothing fitted yet. */
    public static final Parameters NONE = new Parameters(List.of(), Map.of());

    private final Map<String, BayWork> bays = new HashMap<>();
    private final Map<String, List<NextReading>> next;

    /** @param next suggested readings by face */
    Parameters(List<BayWork> works, Map<String, List<NextReading>> next) {
        this.next = Map.copyOf(next);
        works.forEach(w -> bays.put(w.input().bay().name(), w));
    }

    /** What was suggested for a face; null where it was not there. */
    @Nullable
    List<NextReading> next(String face) {
        return next.get(face);
    }

    @Nullable
    BayWork of(Bay bay) {
        return bays.get(bay.name());
    }
}
