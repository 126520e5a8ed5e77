package corewright.repair.plan;

import corewright.survey.Laminate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** How deep a drill may go, from the outer surface to its tip. */
public final class DepthStop {
    /** Least way into the cavity or core, so that the hole opens. */
    private static final double LEAST_MM = 1;

    /** A collar holds half a millimetre. Practice. */
    private static final double COLLAR_STEPS = 2;

    private DepthStop() {}

    /**
     * Outer skin + max(1, void depth - margin), at most outer skin + core - margin (common practice).
     *
     * @param marginMm left under the drill's tip
     */
    public static double mm(Laminate laminate, double voidDepthMm, double marginMm) {
        double wanted = laminate.outerSkinMm() + Math.max(LEAST_MM, voidDepthMm - marginMm);
        return Math.min(wanted, laminate.outerSkinMm() + laminate.coreMm() - marginMm);
    }

    /**
     * What a collar is set to for several holes through one laminate: the least of their stops, in half millimetres upwards
     * where the margin stays, else downwards.
     *
     * @param leastMm the least of the stops
     */
    public static double collarMm(Laminate laminate, double leastMm, double marginMm) {
        double up = Math.ceil(COLLAR_STEPS * leastMm - 1e-9) / COLLAR_STEPS;
        double most = laminate.outerSkinMm() + laminate.coreMm() - marginMm;
        double down = Math.floor(COLLAR_STEPS * leastMm + 1e-9) / COLLAR_STEPS;
        return up <= most + 1e-9 ? up : down > laminate.outerSkinMm() ? down : leastMm;
    }

    /**
     * Settings for holes through several laminates, as few as may be: a laminate is drilled as deep as the next deeper one where
     * its margin stays.
     *
     * @param leastMm the least of the stops of each
     */
    public static Map<Laminate, Double> collarsMm(Map<Laminate, Double> leastMm, double marginMm) {
        Map<Laminate, Double> own = new HashMap<>();
        leastMm.forEach((laminate, mm) -> own.put(laminate, collarMm(laminate, mm, marginMm)));
        List<Laminate> deepestFirst = own.keySet().stream()
                .sorted(Comparator.comparing((Laminate l) -> -own.getOrDefault(l, 0.0))
                        .thenComparing(Laminate::name))
                .toList();
        Map<Laminate, Double> settings = new HashMap<>();
        double setMm = Double.POSITIVE_INFINITY;
        for (Laminate laminate : deepestFirst) {
            boolean allowed = setMm <= laminate.outerSkinMm() + laminate.coreMm() - marginMm + 1e-9;
            setMm = allowed ? setMm : own.getOrDefault(laminate, 0.0);
            settings.put(laminate, setMm);
        }
        return settings;
    }

    /** Whether a hole can break through the outer skin and still leave the margin. */
    public static boolean possible(Laminate laminate, double marginMm) {
        return laminate.coreMm() >= LEAST_MM + marginMm;
    }
}
