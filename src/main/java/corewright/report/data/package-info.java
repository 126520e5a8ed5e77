/**
 * Files for other programs: CSV, JSON, GeoJSON, ASCII grids, GeoPackage and DXF.
 *
 * <p><b>In:</b> an {@link corewright.assessment.Assessment}. <b>Out:</b> the files of {@code docs/outputs.md}, the same bytes every time.
 */
@NullMarked
package corewright.report.data;

import org.jspecify.annotations.NullMarked;
