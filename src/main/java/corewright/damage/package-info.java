/**
 * What the readings say of each face: condition, regions, void depth and volume, each with its uncertainty, and where to
 * read next.
 *
 * <p><b>In:</b> a {@link corewright.survey.Survey}. <b>Out:</b> one {@link corewright.damage.FaceDamage} a face.
 *
 * <p><b>Steps.</b> (1) bays: the plan cut by dividers and openings; (2) meters to one index, taps to one scale, doubts
 * listed; (3) probability of wet and of loose on a raster, a bay at a time; (4) void depth and its simulation; (5)
 * conditions and regions, an exact partition; (6) volumes; (7) where to read next.
 *
 * <p><b>Units.</b> Millimetre; areas in square, volumes in cubic millimetres; probabilities 0 to 1; moisture index 0 at
 * the meter's dry, 100 at its wet reading.
 *
 * <p><b>Sources.</b> Rasmussen and Williams (2006), Gaussian Processes for Machine Learning, chapters 2 to 4; model and
 * constants in docs/damage.md.
 */
@NullMarked
package corewright.damage;

import org.jspecify.annotations.NullMarked;
