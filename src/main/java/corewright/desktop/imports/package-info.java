/**
 * Bringing in a CSV: a preview, guesses that can each be changed, what would come of it, and rows that can be mended.
 *
 * <p><b>In:</b> a file and the survey that is open. <b>Out:</b> one edit with all its readings. {@link
 * corewright.desktop.imports.ImportModel} decides and words, {@code ImportView} shows.
 */
@NullMarked
package corewright.desktop.imports;

import org.jspecify.annotations.NullMarked;
