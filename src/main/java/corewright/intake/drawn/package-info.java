/**
 * Drawings, DXF and SVG, into lines, areas and words with their layer.
 */
@NullMarked
package corewright.intake.drawn;

import org.jspecify.annotations.NullMarked;
