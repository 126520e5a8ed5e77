/**
 * The whole chain in one short method.
 *
 * <p><b>In:</b> a {@link corewright.survey.Survey}. <b>Out:</b> an {@link corewright.assessment.Assessment}, which every
 * page, file and screen shows.
 *
 * <p><b>Steps.</b> (1) damage, a face at a time; (2) repair: what each region would take; (3) decision.
 *
 * <p>Pure: no files, clock, locale, hidden randomness or logging.
 */
@NullMarked
package corewright.assessment;

import org.jspecify.annotations.NullMarked;
