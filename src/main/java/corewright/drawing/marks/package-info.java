/**
 * One class a mark: what it looks like and how much paper it takes.
 *
 * <p><b>In:</b> a place on the paper, in millimetres. <b>Out:</b> its box, for whoever looks for room, and its strokes. Shapes tell the
 * kind: holes are round, fittings square, open questions are tags, probes point down.
 */
@NullMarked
package corewright.drawing.marks;

import org.jspecify.annotations.NullMarked;
