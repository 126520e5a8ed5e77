/**
 * Geostatistics on plain arrays: how alike are values a given way apart, what is the value in between, how sure is that.
 * Knows nothing of boats.
 *
 * <p><b>In:</b> samples (place, value, optional error variance) and nodes. <b>Out:</b> a variogram, estimates with their
 * variance, leave-one-out scores, conditional draws. Coordinates are in any one unit and the variogram's range is in it
 * too; variances are in the value's unit squared; angles are degrees from +x towards +y.
 *
 * <p><b>Steps.</b> (1) {@link corewright.field.Samples#merged() merge} coincident samples; (2) {@link
 * corewright.field.ExperimentalVariogram}: mean squared half-differences by distance; (3) {@link
 * corewright.field.VariogramFit}: one shape through them; (4) {@link corewright.field.CrossValidation}: how well each
 * shape foretells a sample from the others; (5) {@link corewright.field.ModelChoice}: the best of them; (6) {@link
 * corewright.field.OrdinaryKriging} at the nodes. Apart from these {@link corewright.field.LatentField}: a field seen
 * through values and bounds, its estimates and its draws.
 *
 * <p><b>Sources.</b> Cressie (1985), Math. Geology 17:563-586; Dubrule (1983), Math. Geology 15:687-699; Isaaks and
 * Srivastava (1989), An Introduction to Applied Geostatistics; Chiles and Delfiner (2012), Geostatistics, 2nd ed.;
 * Pebesma (2004), Computers and Geosciences 30:683-691 (the conventions of the R package gstat, which the tests compare
 * with).
 */
@NullMarked
package corewright.field;

import org.jspecify.annotations.NullMarked;
