/**
 * Head, faces, meters and laminates of a survey, each of their values editable.
 *
 * <p><b>In:</b> a survey and what a person types. <b>Out:</b> an edit for every value changed, or a sentence that says what is
 * expected instead.
 *
 * <p><b>Steps.</b> (1) {@link corewright.desktop.setup.SetupModel} lists the values as words in the units of the screen; (2)
 * {@code HeadingEdits}, {@code FaceEdits}, {@code MeterEdits} and {@code LaminateEdits} check what is typed and make the edit, with everything that goes by the changed
 * name; (3) {@code SetupView} shows it.
 *
 * <p><b>Units.</b> Thicknesses as the screen shows them, stored in millimetres; readings on the meter's own scale.
 */
@NullMarked
package corewright.desktop.setup;

import org.jspecify.annotations.NullMarked;
