/**
 * The map and the charts as the window shows them: the same marks and patterns, with tints, by day and by night.
 *
 * <p><b>Units.</b> Pixels at {@link corewright.drawing.screen.ScreenMap#PX_PER_MM} a paper millimetre.
 */
@NullMarked
package corewright.drawing.screen;

import org.jspecify.annotations.NullMarked;
