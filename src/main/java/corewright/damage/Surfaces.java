package corewright.damage;

import corewright.contour.Raster;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

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
        Raster voidDepthSdMm) {
    /** Mean moisture index over the cells whose centres an area covers; NaN where there is none. */
    public double meanMoistureIndex(Polygon area) {
        double sum = 0;
        int n = 0;
        for (int i = 0; i < moistureIndex.size(); i++) {
            Coordinate at = new Coordinate(
                    moistureIndex.centreX(i % moistureIndex.columns()),
                    moistureIndex.centreY(i / moistureIndex.columns()));
            boolean known = !Double.isNaN(moistureIndex.at(i));
            if (known
                    && area.getEnvelopeInternal().contains(at)
                    && area.covers(area.getFactory().createPoint(at))) {
                sum += moistureIndex.at(i);
                n++;
            }
        }
        return n > 0 ? sum / n : Double.NaN;
    }
}
