package corewright.decision;

import corewright.decision.drying.DryingTime;
import java.util.List;

/**
 * What stands behind the decision, for whoever wants to argue with it.
 *
 * @param drying every wet region in every way
 * @param options every region with every method, then the whole deck
 * @param flips what would change a method
 * @param sensitivity what moves cost and stiffness most
 */
public record Weighing(List<DryingTime> drying, List<Option> options, List<Flip> flips, Sensitivity sensitivity) {
    /** Nothing weighed. */
    public static final Weighing NONE = new Weighing(List.of(), List.of(), List.of(), Sensitivity.NONE);

    public Weighing {
        drying = List.copyOf(drying);
        options = List.copyOf(options);
        flips = List.copyOf(flips);
    }
}
