/**
 * Field sheets, to fill in by hand where no screen goes.
 *
 * <p><b>In:</b> a survey, with or without readings. <b>Out:</b> one PDF: of every face its plan with numbered places, and a row for each.
 */
@NullMarked
package corewright.report.sheets;

import org.jspecify.annotations.NullMarked;
