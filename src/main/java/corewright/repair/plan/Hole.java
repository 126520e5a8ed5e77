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
 * @param range grams into it in a small and in a large cavity
 * @param gapMm empty height round it, the middle of what lies near; 0 where it is not known or nothing goes in
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
        @Nullable Nozzle nozzle,
        Range range,
        double gapMm) {

    /** The same with other grams in a small and in a large cavity. */
    public Hole with(Range other) {
        return new Hole(
                id, region, kind, order, spot, diameterMm, depthStopMm, reachMm, servedMm3, nozzle, other, gapMm);
    }

    /** The same drilled to another depth. */
    public Hole stoppedAt(double mm) {
        return new Hole(id, region, kind, order, spot, diameterMm, mm, reachMm, servedMm3, nozzle, range, gapMm);
    }

    /** The same with another share of the cavity. */
    public Hole serving(double mm3) {
        return new Hole(id, region, kind, order, spot, diameterMm, depthStopMm, reachMm, mm3, nozzle, range, gapMm);
    }

    /** The same with a part of the height still empty, over the lifts that are in. */
    public Hole over(double share) {
        return new Hole(
                id,
                region,
                kind,
                order,
                spot,
                diameterMm,
                depthStopMm,
                reachMm,
                servedMm3,
                nozzle,
                range,
                share * gapMm);
    }

    /** Whether it is drilled. */
    public boolean drilled() {
        return nozzle == null;
    }

    /** Whether mix is put in here. */
    public boolean fills() {
        return kind != Kind.VENT;
    }

    /**
     * Grams without waste.
     *
     * @param lowG enough in a cavity as small as one in ten
     * @param highG at most, with what is held back, in one as large as one in ten; for a vent what is held back for it
     */
    public record Range(double lowG, double highG) {
        public static final Range NONE = new Range(0, 0);
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
