package corewright.decision;

import corewright.contour.Raster;
import corewright.damage.Surfaces;

/**
 * How a loose skin bears on water on one face. The map of water does not ask whether the skin is loose; where water and looseness
 * go together, core under a loose skin is wet more often than it says. By Bayes' rule the odds of wet core there are the map's times
 * {@code P(loose | wet) / P(loose | dry)}, taken from the maps of both over the face; both shares are drawn to that of the whole
 * face as by one patch of readings' range, so that little of either says little.
 */
final class LooseAndWet {
    /** Area that fields of water have in common: a disc of their range, 110 mm. Common practice. */
    private static final double PATCH_MM2 = Math.PI * 110 * 110;

    private final double ratio;

    LooseAndWet(Surfaces surfaces) {
        Raster wet = surfaces.pWet();
        Raster loose = surfaces.pLoose();
        double wetMm2 = 0;
        double bothMm2 = 0;
        double looseMm2 = 0;
        double allMm2 = 0;
        double cellMm2 = wet.cell() * wet.cell();
        for (int i = 0; i < wet.size(); i++) {
            if (!Double.isNaN(wet.at(i)) && !Double.isNaN(loose.at(i))) {
                wetMm2 += wet.at(i) * cellMm2;
                bothMm2 += wet.at(i) * loose.at(i) * cellMm2;
                looseMm2 += loose.at(i) * cellMm2;
                allMm2 += cellMm2;
            }
        }
        double share = allMm2 > 0 ? looseMm2 / allMm2 : 0;
        ratio = share > 0 ? share(bothMm2, wetMm2, share) / share(looseMm2 - bothMm2, allMm2 - wetMm2, share) : 1;
    }

    private static double share(double looseMm2, double ofMm2, double usual) {
        return (looseMm2 + usual * PATCH_MM2) / (ofMm2 + PATCH_MM2);
    }

    /** Probability of wet core under a loose skin, by that of the map. */
    double wet(double pWet) {
        return pWet * ratio / (pWet * ratio + 1 - pWet);
    }
}
