/**
 * Text into cells, numbers, lengths and geometry, every complaint with its file, line and column.
 *
 * <p><b>In:</b> bytes. <b>Out:</b> a {@link corewright.intake.text.Sheet}, its {@link corewright.intake.text.Row}s, or complaints in
 * {@link corewright.intake.text.Notes}. Knows nothing of a survey's files.
 */
@NullMarked
package corewright.intake.text;

import org.jspecify.annotations.NullMarked;
