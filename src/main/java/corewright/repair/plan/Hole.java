package corewright.repair.plan;

import corewright.survey.Spot;
import org.jspecify.annotations.Nullable;

/**
 * A hole through the outer skin, or a place that a long nozzle fills without one.
 *
 * @param id region, then its number: R1-3, a vent R1-V2, a place of the nozzle R1-N1
 * @param order place in the working order of its region, from 1: the nozzle, injection holes low to high, then vents
 * @param depthStopMm from the outer surface to the drill's tip; 0 where nothing is drilled
 * @param reachMm how far the mix gets from here within its work time; 0 for a vent
 * @param servedMm3 cavity that this hole fills; 0 for a vent
 * @param nozzle how the place is reached, null where a hole is drilled
 */
public record Hole(
        String id,
        String region,
        Kind kind,
        int order,
        Spot spot,
        double diameterMm,
        double depthStopMm,
        double reachMm,
        double servedMm3,
        @Nullable Nozzle nozzle) {
    /** Whether it is drilled. */
    public boolean drilled() {
        return nozzle == null;
    }

    /** Whether mix is put in here. */
    public boolean fills() {
        return kind != Kind.VENT;
    }

    /**
     * A long nozzle.
     *
     * @param access name of the opening
     * @param in where it goes in
     * @param pushMm from there to its mouth
     */
    public record Nozzle(String access, Spot in, double pushMm) {}

    /** What a hole is for. */
    public enum Kind {
        INJECTION,
        VENT,
        NOZZLE
    }
}
