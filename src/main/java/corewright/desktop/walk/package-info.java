/**
 * The grid walk: a face read point by point at the boat, with one thumb.
 *
 * <p><b>In:</b> a survey, a face and a spacing. <b>Out:</b> an edit for every point kept.
 *
 * <p><b>Steps.</b> (1) {@link corewright.desktop.walk.GridPoints} lays a grid over the face's core and orders it there and back;
 * (2) {@link corewright.desktop.walk.GridWalk} takes keys and gives edits and words; (3) {@code WalkView} shows it, bow up, as
 * the surveyor stands.
 *
 * <p><b>Units.</b> Millimetres from the survey's datum; readings on the meter's own scale.
 */
@NullMarked
package corewright.desktop.walk;

import org.jspecify.annotations.NullMarked;
