/**
 * What was observed and decided on a boat: plan, faces, laminates, meters, readings, settings, judgements. Records only.
 *
 * <p><b>In:</b> nothing; {@code intake} fills these records from files. <b>Out:</b> a {@link
 * corewright.survey.Survey} that every later stage reads and none changes.
 *
 * <p><b>Change.</b> A person's change is an {@link corewright.survey.Edit} of a {@link corewright.survey.Part}; it gives a
 * new survey and knows its own inverse.
 *
 * <p><b>Units and conventions.</b> Millimetre, gram, second, degree Celsius, megapascal; names carry the unit. On a face
 * x runs aft from the survey's datum and y to starboard; seen from the outer skin +y lies 90 degrees counter-clockwise of
 * +x. A meter's scale is relative and has no unit. Geometries are JTS and are treated as frozen once in a record.
 */
@NullMarked
package corewright.survey;

import org.jspecify.annotations.NullMarked;
