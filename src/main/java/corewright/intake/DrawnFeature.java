package corewright.intake;

import corewright.intake.text.Row;
import org.locationtech.jts.geom.Geometry;

/**
 * A feature of the plan out of a drawing.
 *
 * @param row what else is said of it, as a plan's row would
 * @param geometry survey millimetres, valid
 */
record DrawnFeature(Row row, DrawnKind kind, Geometry geometry) {}
