/**
 * The papers in the window: pages as they will print, one paper or everything to a folder.
 *
 * <p><b>In:</b> what is found of the survey that is open. <b>Out:</b> files, by the same door as the command {@code run}.
 */
@NullMarked
package corewright.desktop.papers;

import org.jspecify.annotations.NullMarked;
