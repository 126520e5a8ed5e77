/**
 * {@code survey-record.pdf}: what was done, read and concluded, and what that rests on.
 *
 * <p>In: an assessment, and how its maps stand up to their readings. Out: A4 pages. Steps: {@link
 * corewright.report.record.RecordFacts} the visit and the instruments; {@link corewright.report.record.RecordFound} what was found; {@link
 * corewright.report.record.RecordChecks} how well readings foretell each other; {@link corewright.report.record.RecordMaps} the
 * readings on the plan; {@link corewright.report.record.ReadingList} all of them in figures; {@link
 * corewright.report.page.Flow} lays them on pages.
 */
@NullMarked
package corewright.report.record;

import org.jspecify.annotations.NullMarked;
