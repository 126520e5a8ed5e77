package corewright.contour;

import org.locationtech.jts.geom.Geometry;

/**
 * Where a raster's value lies between two levels.
 *
 * @param lower values in the band are at least this; minus infinity where open
 * @param upper and less than this; plus infinity where open
 * @param area a Polygon or MultiPolygon, never empty
 */
public record Band(double lower, double upper, Geometry area) {}
