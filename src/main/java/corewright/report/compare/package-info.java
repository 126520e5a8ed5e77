/**
 * What changed between two surveys, on paper and as a table.
 *
 * <p><b>In:</b> a {@link corewright.comparison.Comparison}. <b>Out:</b> comparison.pdf, comparison.csv, and a map of each face before, after and of
 * what changed.
 */
@NullMarked
package corewright.report.compare;

import org.jspecify.annotations.NullMarked;
