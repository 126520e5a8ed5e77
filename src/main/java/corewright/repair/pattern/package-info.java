/**
 * Where holes, vents and nozzles go: the fewest whose reach covers the cavity, measured inside it, clear of what may not be drilled.
 *
 * <p><b>In:</b> a {@link corewright.repair.pattern.Cavity} and the reach. <b>Out:</b> {@link
 * corewright.repair.pattern.PlacedHoles}.
 *
 * <p><b>Sources.</b> Kershner (1939) for the covering.
 */
@NullMarked
package corewright.repair.pattern;

import org.jspecify.annotations.NullMarked;
