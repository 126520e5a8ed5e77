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
 *
 * <p><b>Steps</b> of {@link corewright.contour.LevelPartition}: (1) the data as quadrilaterals that meet side to side ({@code
 * Mesh}); (2) in each the level line from crossing to crossing, marching squares ({@code Quad}); (3) these lines, the
 * area's edge and any dividers noded on a fine grid (snap rounding: J. Hobby, Computational Geometry 13, 1999, as in JTS)
 * and polygonised, so that neighbours share every vertex; (4) each face asks every raster on which side it lies. {@link
 * corewright.contour.Coverage} joins the pieces again without moving a vertex. The bands of a single raster need no noding, as lines of
 * several levels never cross: {@link corewright.contour.Contours} links the sides found in one pass to rings ({@code BandSides}, {@code
 * BandPolygons}, {@code Nesting}).
 *
 * <p><b>Units.</b> None: lengths are those of the rasters.
 */
@NullMarked
package corewright.contour;

import org.jspecify.annotations.NullMarked;
