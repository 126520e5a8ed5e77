/**
 * The whole chain in one short method.
 *
 * <p><b>In:</b> a {@link corewright.survey.Survey}. <b>Out:</b> an {@link corewright.assessment.Assessment}, which every
 * page, file and screen shows.
 *
 * <p><b>Steps</b> of {@link corewright.assessment.Assessor}, each called here once and from nowhere else:
 *
 * <ol>
 *   <li>damage: regions, volumes, places to read next, a face at a time
 *   <li>stiffness: every panel as built, as found, after the two standard repairs
 *   <li>options: what each region alone would take; of what may be filled together where the holes would be
 *   <li>methods: the rules, by the evidence
 *   <li>joined plans: one plan for what opens into each other and is injected
 *   <li>gains: what the choices give back of the stiffness
 *   <li>decision: the day, the choices, what to buy
 *   <li>work: what was done of the plans, and how it turned out
 * </ol>
 *
 * <p>What a stage worked out for one bay, panel or region is taken again where all that went in is the same ({@link
 * corewright.assessment.Earlier}). A part may be missing or {@link corewright.assessment.Age old}; {@link
 * corewright.assessment.Ages} says so. A defect costs the panel or region it is in, {@link
 * corewright.assessment.Assessment#defects}.
 *
 * <p>Pure: no files, clock, locale, hidden randomness or logging.
 */
@NullMarked
package corewright.assessment;

import org.jspecify.annotations.NullMarked;
