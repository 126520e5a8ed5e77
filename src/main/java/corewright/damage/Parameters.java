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
    public static final Parameters NONE = new Parameters(List.of());

    private final Map<String, BayWork> bays = new HashMap<>();

    Parameters(List<BayWork> works) {
        works.forEach(w -> bays.put(w.input().bay().name(), w));
    }

    @Nullable
    BayWork of(Bay bay) {
        return bays.get(bay.name());
    }
}
