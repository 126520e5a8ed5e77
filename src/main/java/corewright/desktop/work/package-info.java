/**
 * Work at the boat: the next hole, its cup, the clocks of the mix, and the work log with big keys.
 *
 * <p><b>In:</b> the injections decided. <b>Out:</b> the frozen plan and lines of the work log, as edits of the survey.
 */
@NullMarked
package corewright.desktop.work;

import org.jspecify.annotations.NullMarked;
