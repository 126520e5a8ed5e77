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
 * @param takenMm3 liquid that went in at each hole, by its id
 * @param density what the cavity is filled with
 */
public record Fill(
        Optional<Raster> arrivalS,
        double liquidShare,
        double emptyShare,
        List<Pocket> pockets,
        Map<String, Double> filledMm3,
        Map<String, Double> takenMm3,
        Density density) {
    /** Nothing simulated. */
    public static final Fill NONE = new Fill(Optional.empty(), 0, 0, List.of(), Map.of());

    public Fill {
        pockets = List.copyOf(pockets);
        filledMm3 = Map.copyOf(filledMm3);
        takenMm3 = Map.copyOf(takenMm3);
    }

    /** Without what each hole took. */
    public Fill(
            Optional<Raster> arrivalS,
            double liquidShare,
            double emptyShare,
            List<Pocket> pockets,
            Map<String, Double> filledMm3) {
        this(arrivalS, liquidShare, emptyShare, pockets, filledMm3, Map.of(), Density.NONE);
    }

    /** Whether a simulation was run. */
    public boolean simulated() {
        return arrivalS.isPresent();
    }

    /**
     * Of the cured mix where the space is filled, by volume, kilograms per cubic metre.
     *
     * @param mean all the mix over all it fills
     * @param low one twentieth is lighter
     * @param high one twentieth is heavier
     * @param evenShare of the volume that is within 15 % of the mean
     * @param map NaN where nothing is filled; empty where nothing was simulated
     */
    public record Density(double mean, double low, double high, double evenShare, Optional<Raster> map) {
        static final Density NONE = new Density(0, 0, 0, 0, Optional.empty());
    }

    /** Enclosed air, where most of it is. */
    public record Pocket(Spot spot, double mm3) {}
}
