/**
 * Whole sheets: the plan as a map, how to read it, its title strip; and pictures of a panel's deflection.
 *
 * <p><b>In:</b> an assessment and a face. <b>Out:</b> a painted plate, A4, to scale.
 */
@NullMarked
package corewright.drawing.plates;

import org.jspecify.annotations.NullMarked;
