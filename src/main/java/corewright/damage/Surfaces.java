package corewright.damage;

import corewright.contour.Raster;

/**
 * Estimates over one face, all on the same cells, NaN off the core.
 *
 * @param moistureIndex 100 (value - dry) / (wet - dry)
 * @param moistureIndexSd its standard error
 * @param pWet probability that the core is wet
 * @param pLoose probability that the skin is off the core
 * @param pVoid probability of a void deeper than the threshold; nowhere above {@code pLoose}
 * @param voidDepthMm expected empty height
 * @param voidDepthSdMm its standard error
 */
public record Surfaces(
        Raster moistureIndex,
        Raster moistureIndexSd,
        Raster pWet,
        Raster pLoose,
        Raster pVoid,
        Raster voidDepthMm,
        Raster voidDepthSdMm) {}
