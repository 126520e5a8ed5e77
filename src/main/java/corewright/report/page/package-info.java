/**
 * What every page and picture file is made of: PDF, SVG and PNG files, the frame of a page, ruled tables, words and figures.
 */
@NullMarked
package corewright.report.page;

import org.jspecify.annotations.NullMarked;
