/**
 * Deciding in the window: what each method asks and gives in a region, and the whole deck for a stiffness or a sum.
 *
 * <p><b>In:</b> what was weighed. <b>Out:</b> decisions by hand, each with its reason, as edits of the survey.
 */
@NullMarked
package corewright.desktop.decide;

import org.jspecify.annotations.NullMarked;
