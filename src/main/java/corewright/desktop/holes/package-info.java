/**
 * The holes of an injection in the window: moved, added, held in place, and the fill played.
 *
 * <p><b>In:</b> the plan of the region selected. <b>Out:</b> holes placed by hand, as edits of the survey.
 */
@NullMarked
package corewright.desktop.holes;

import org.jspecify.annotations.NullMarked;
