package corewright.decision;

import corewright.decision.drying.DryingTime;
import java.util.List;

/**
 * What stands behind the decision, for whoever wants to argue with it.
 *
 * @param drying every wet region in every way
 */
public record Weighing(List<DryingTime> drying) {
    /** Nothing weighed. */
    public static final Weighing NONE = new Weighing(List.of());

    public Weighing {
        drying = List.copyOf(drying);
    }
}
