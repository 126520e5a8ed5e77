/**
 * The owner's view: one page without jargon, which can be turned round on a table.
 *
 * <p><b>In:</b> what is found. <b>Out:</b> nothing; it only shows.
 */
@NullMarked
package corewright.desktop.owner;

import org.jspecify.annotations.NullMarked;
