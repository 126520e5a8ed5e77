package corewright.repair;

import corewright.survey.Spot;

/**
 * A hole through the outer skin.
 *
 * @param id region, then its number: R1-3, a vent R1-V2
 * @param order place in the working order of its region, from 1, injection holes low to high, then vents
 * @param depthStopMm from the outer surface to the drill's tip
 * @param reachMm how far the mix gets from here within its work time; 0 for a vent
 * @param servedMm3 cavity that this hole fills; 0 for a vent
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
        double servedMm3) {
    /** What a hole is for. */
    public enum Kind {
        INJECTION,
        VENT
    }
}
