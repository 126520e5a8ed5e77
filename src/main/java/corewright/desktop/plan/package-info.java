/**
 * The plan in the window: camera, painting off the window's thread, the legend that is the layer control.
 */
@NullMarked
package corewright.desktop.plan;

import org.jspecify.annotations.NullMarked;
