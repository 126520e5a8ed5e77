/**
 * What changed between two surveys of one boat, and whether the readings prove it.
 *
 * <p><b>In:</b> two assessments, each with what was fitted on the way. <b>Out:</b> a {@link corewright.comparison.Comparison}:
 * figures before, after and their difference with its limits, what became of every region, what is new, what cannot be compared.
 *
 * <p><b>Steps.</b> (1) faces matched by name, outline and datum; (2) whether both were read, and on scales that can be compared; (3) areas and
 * volumes of the whole face and of every region from the draws of both surveys; (4) what became of each region of the first survey;
 * (5) what is damaged in the second only; (6) panels.
 *
 * <p><b>Uncertainty.</b> Each survey's draws hold the errors of its own readings and of what was fitted to them. They are put together in
 * pairs as if they had nothing in common. What both share (the same truth where nothing was done, the same places, the same priors)
 * would bring the two nearer together, so that the limits are rather too wide than too narrow; docs/verification.md has how often a change was
 * claimed where there was none.
 *
 * <p><b>Units.</b> Square and cubic millimetres, newton per millimetre.
 */
@NullMarked
package corewright.comparison;

import org.jspecify.annotations.NullMarked;
