package corewright.stiffness;

import corewright.damage.Quantiles;
import corewright.sandwich.FootLoadMap;

/**
 * How a panel gives way under a foot in one state.
 *
 * @param deflectionMm of the outer skin under the foot at the place that is softest as found
 * @param stiffnessNPerMm force over deflection there, linear
 * @param ofAsBuilt that stiffness over the one as built; p10 in the worse tenth of cases, p90 in the better one
 * @param feet the same at every place of a grid
 */
public record StateStiffness(double deflectionMm, double stiffnessNPerMm, Quantiles ofAsBuilt, FootLoadMap feet) {}
