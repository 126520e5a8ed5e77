package corewright.damage;

import corewright.contour.Raster;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Location;
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
    /** Mean moisture index over the cells whose centres an area covers, or of the cell under its middle; NaN where unknown. */
    public double meanMoistureIndex(Polygon area) {
        return mean(moistureIndex, area);
    }

    /** Mean standard error of the moisture index over an area; NaN where unknown. */
    public double meanMoistureIndexSd(Polygon area) {
        return mean(moistureIndexSd, area);
    }

    /** Probability that the core is wet at a place; NaN off the core. */
    public double pWetAt(double xMm, double yMm) {
        return pWet.cellAt(xMm, yMm);
    }

    /**
     * How much more often the skin is loose over wet core than over dry: {@code P(loose | wet) / P(loose | dry)} by both maps, 1 where
     * nothing is loose. Both shares are drawn to that of the whole face as by one patch, so that little of either says little.
     */
    public double looseIfWetOverDry(double patchMm2) {
        double all = 0;
        double wet = 0;
        double loose = 0;
        double both = 0;
        for (int i = 0; i < pWet.size(); i++) {
            if (!Double.isNaN(pWet.at(i)) && !Double.isNaN(pLoose.at(i))) {
                all++;
                wet += pWet.at(i);
                loose += pLoose.at(i);
                both += pWet.at(i) * pLoose.at(i);
            }
        }
        if (loose == 0) {
            return 1;
        }
        double patch = patchMm2 / (pWet.cell() * pWet.cell());
        double drawn = patch * loose / all;
        return (both + drawn) / (wet + patch) * (all - wet + patch) / (loose - both + drawn);
    }

    private static double mean(Raster raster, Polygon area) {
        double sum = 0;
        int n = 0;
        Envelope box = area.getEnvelopeInternal();
        IndexedPointInAreaLocator locator = new IndexedPointInAreaLocator(area);
        for (int i = 0; i < raster.size(); i++) {
            double x = raster.centreX(i % raster.columns());
            double y = raster.centreY(i / raster.columns());
            boolean known = box.contains(x, y) && !Double.isNaN(raster.at(i));
            if (known && locator.locate(new Coordinate(x, y)) != Location.EXTERIOR) {
                sum += raster.at(i);
                n++;
            }
        }
        if (n > 0) {
            return sum / n;
        }
        Coordinate middle = area.getInteriorPoint().getCoordinate();
        return middle == null ? Double.NaN : raster.cellAt(middle.x, middle.y);
    }

    /** Expected empty space under the face, cubic millimetres: depth at each cell's centre times the cell. */
    public double expectedVoidMm3() {
        double sum = 0;
        for (int i = 0; i < voidDepthMm.size(); i++) {
            double depth = voidDepthMm.at(i);
            sum += Double.isNaN(depth) ? 0 : depth;
        }
        return sum * voidDepthMm.cell() * voidDepthMm.cell();
    }
}
