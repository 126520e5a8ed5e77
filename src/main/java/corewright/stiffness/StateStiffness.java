package corewright.stiffness;

import corewright.damage.Quantiles;
import corewright.sandwich.FootLoadMap;

/**
 * How a panel gives way under a foot in one state, with contact of loose skins and von Karman's strain where a skin is loose.
 *
 * @param deflectionMm of the outer skin under the foot at the place that is softest as found
 * @param linearMm the same without contact and von Karman's strain
 * @param ofAsBuilt stiffness there over the one as built; p10 in the worse tenth of cases, p90 in the better one
 * @param feet the same at every place of a grid
 */
public record StateStiffness(double deflectionMm, double linearMm, Quantiles ofAsBuilt, FootLoadMap feet) {
    /** Force over deflection. */
    public double stiffnessNPerMm() {
        return FootLoadMap.FORCE_N / deflectionMm;
    }

    /** Force over the linear deflection. */
    public double linearNPerMm() {
        return FootLoadMap.FORCE_N / linearMm;
    }
}
