/**
 * What is open, what is touched, what is being calculated; plain Java, no controls.
 *
 * <p><b>In:</b> a survey folder or survey file, edits. <b>Out:</b> {@link corewright.desktop.state.Workbench}, which every view listens to.
 */
@NullMarked
package corewright.desktop.state;

import org.jspecify.annotations.NullMarked;
