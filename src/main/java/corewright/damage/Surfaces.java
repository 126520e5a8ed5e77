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
        double sum = 0;
        int n = 0;
        Envelope box = area.getEnvelopeInternal();
        IndexedPointInAreaLocator locator = new IndexedPointInAreaLocator(area);
        for (int i = 0; i < moistureIndex.size(); i++) {
            double x = moistureIndex.centreX(i % moistureIndex.columns());
            double y = moistureIndex.centreY(i / moistureIndex.columns());
            boolean known = box.contains(x, y) && !Double.isNaN(moistureIndex.at(i));
            if (known && locator.locate(new Coordinate(x, y)) != Location.EXTERIOR) {
                sum += moistureIndex.at(i);
                n++;
            }
        }
        if (n > 0) {
            return sum / n;
        }
        Coordinate middle = area.getInteriorPoint().getCoordinate();
        return middle == null ? Double.NaN : moistureIndex.cellAt(middle.x, middle.y);
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
