/**
 * How a panel gives under a foot, in the window: its states as equal pictures, and a foot set down anywhere.
 *
 * <p><b>In:</b> the panels of what is found. <b>Out:</b> nothing; it only shows.
 */
@NullMarked
package corewright.desktop.stiffness;

import org.jspecify.annotations.NullMarked;
