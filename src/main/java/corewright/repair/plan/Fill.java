package corewright.repair.plan;

import corewright.contour.Raster;
import corewright.survey.Spot;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where the mix of a plan gets to, by simulation of a tight cavity.
 *
 * @param arrivalS when the mix comes to each cell, on the region's own clock from the first cup; NaN where it does not.
 *     The front at any instant is the line of that value; empty where nothing was simulated
 * @param liquidShare liquid in the cavity, before any rise, over the volume of the cavity
 * @param emptyShare share of the cavity that stays empty after the rise
 * @param pockets where air stays enclosed, largest first
 * @param filledMm3 cavity that the mix from each hole came to first, by the hole's id
 */
public record Fill(
        Optional<Raster> arrivalS,
        double liquidShare,
        double emptyShare,
        List<Pocket> pockets,
        Map<String, Double> filledMm3) {
    /** Nothing simulated. */
    public static final Fill NONE = new Fill(Optional.empty(), 0, 0, List.of(), Map.of());

    public Fill {
        pockets = List.copyOf(pockets);
        filledMm3 = Map.copyOf(filledMm3);
    }

    /** Whether a simulation was run. */
    public boolean simulated() {
        return arrivalS.isPresent();
    }

    /** Enclosed air, where most of it is. */
    public record Pocket(Spot spot, double mm3) {}
}
