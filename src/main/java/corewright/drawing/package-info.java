/**
 * The one map painter: what is on paper, in paper millimetres, for pictures, SVG and PDF alike.
 *
 * <p><b>In:</b> an {@link corewright.assessment.Assessment}. <b>Out:</b> strokes and words on a
 * {@link java.awt.Graphics2D} whose unit is one millimetre, origin top left, y down. Writing files belongs to
 * {@code report}.
 *
 * <p><b>Steps of a plate.</b> (1) the largest standard scale at which the face and its labels fit; (2) places of marks,
 * then names of features, then region labels with leaders that never cross, then the readings there is room for; (3)
 * paint in the fixed order: voice grid, pattern, likely edge, possible edge, supports, dividers, openings, outline,
 * readings, fittings, probes, holes, tags, leaders, words; (4) the sheet round it: title, how to read the map, areas, title
 * strip, caution, print check.
 *
 * <p><b>The fill check</b> shows the part of a face round what was felt or tapped ({@link corewright.drawing.placing.MapSpec#part}):
 * the same steps on a face that is cut down, with filled spaces and places still hollow instead of regions.
 *
 * <p><b>The plan of a work card</b> ({@link corewright.drawing.cards.CardPlan}) is one region at the largest scale: (1) discs as
 * large as the holes' distances allow, arrows, depth stops where there is room; (2) names and the minutes of arrival clear
 * of them; (3) paint.
 *
 * <p><b>Units.</b> Paper millimetres with y down; {@link corewright.drawing.kit.PlanView} turns survey millimetres (x aft, y to
 * starboard) into them as the person sees
 * the face who works there: bow to the left; starboard at the top from above, port at the top from below. Type sizes are points (1/72 inch).
 *
 * <p><b>Rules.</b> Everything is told apart in black on white. Nothing depends on the machine: the six typefaces are
 * bundled, widths come from their own tables, figures are formatted without a locale. Shapes of marks are ours: holes are
 * round, fittings square, open questions are tags, probes point down.
 */
@NullMarked
package corewright.drawing;

import org.jspecify.annotations.NullMarked;
