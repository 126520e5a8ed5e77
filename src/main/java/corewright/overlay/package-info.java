/**
 * The one door to polygon overlays.
 *
 * <p><b>In:</b> geometries, in any unit. <b>Out:</b> what they have in common, together, or one less the other. Knows nothing
 * of boats.
 *
 * <p>Overlays of the older kind fail where two lines nearly touch; {@code ArchitectureTest} keeps everybody to this door.
 *
 * <p><b>Source.</b> JTS, {@code OverlayNGRobust}: full precision, then snapping, then snap-rounding, the first that succeeds.
 */
@NullMarked
package corewright.overlay;

import org.jspecify.annotations.NullMarked;
