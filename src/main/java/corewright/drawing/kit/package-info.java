/**
 * What every drawing is made with: paper, pens, type, patterns, and the view that turns survey millimetres into paper millimetres.
 *
 * <p><b>In:</b> shapes and words. <b>Out:</b> strokes on a {@link java.awt.Graphics2D} whose unit is one millimetre. Knows nothing of
 * findings or plans.
 */
@NullMarked
package corewright.drawing.kit;

import org.jspecify.annotations.NullMarked;
