/**
 * Readings and features in hand: what is touched on the plan, its values as fields, and the edits of what is typed.
 *
 * <p>In: the survey, what the program found of its readings. Out: edits. Units: millimetres inside, the reader's in fields.
 *
 * <ol>
 *   <li>{@link corewright.desktop.touch.Nearby} finds what lies under the finger.
 *   <li>A {@link corewright.desktop.touch.Form} says what it is and makes an edit of what is typed.
 *   <li>{@link corewright.desktop.touch.TouchDesk} shows it in the slip; {@link corewright.desktop.touch.HandReading} adds one.
 * </ol>
 */
@NullMarked
package corewright.desktop.touch;

import org.jspecify.annotations.NullMarked;
