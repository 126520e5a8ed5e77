/**
 * Everything a run leaves behind: data files, pictures, pages.
 *
 * <p><b>In:</b> an {@link corewright.assessment.Assessment}. <b>Out:</b> a folder, whole or not at all; its files, keys
 * and columns are listed in docs/outputs.md.
 *
 * <p><b>Steps.</b> (1) a temporary folder beside the wanted one; (2) tables, regions and surfaces; (3) the map plates as
 * pictures; (4) the owner's page and the technician's cards; (5) the summary, last, since it holds the timings; (6) the folder is
 * moved into place.
 *
 * <p><b>Units.</b> Places in survey millimetres. Areas in square metres and volumes in litres as unrounded doubles, so
 * that parts add up to the whole; grams to 0.1, minutes to 0.01, holes to 0.1 mm. Pages round to what is known.
 *
 * <p><b>Sources.</b> RFC 4180 (CSV), RFC 7946 (GeoJSON), DXF release 12, ESRI ASCII grid, SVG 1.1, PDF 1.7.
 */
@NullMarked
package corewright.report;

import org.jspecify.annotations.NullMarked;
