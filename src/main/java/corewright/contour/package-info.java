/**
 * Rasters to polygons that share their edges exactly. Knows nothing of boats.
 *
 * <p><b>In:</b> a {@link corewright.contour.Raster} and levels, or several rasters and a rule that names each place.
 * <b>Out:</b> polygons that fill the raster's extent (or the area given) without overlap or gap.
 *
 * <p><b>Conventions, written once here.</b> Row 0 of a raster has the smallest y; values stand at cell centres; NaN is
 * "outside" and nothing else. Classes are half-open, {@code lower <= value < upper}. Between centres values are linear
 * along the sides; a saddle is decided by the mean of its four corners; over the outer half cell the edge value
 * continues. No-data ends polygons at cell edges.
 */
@NullMarked
package corewright.contour;

import org.jspecify.annotations.NullMarked;
