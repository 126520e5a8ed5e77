/**
 * The survey file: one GeoPackage that holds a whole survey and every edit made to it. Nothing else reads or writes it.
 *
 * <p><b>In:</b> a {@link corewright.survey.Survey} and the {@link corewright.survey.Edit}s of a person. <b>Out:</b> the
 * same survey to the last digit; a survey folder ({@link corewright.store.FolderWriter}).
 *
 * <p><b>Steps of an edit.</b>
 *
 * <ol>
 *   <li>The edit is applied to the survey in memory; one that does not fit is refused and nothing is written.
 *   <li>In one transaction its rows change, it joins the journal with its inverse, and the undo cursor moves on.
 *   <li>The transaction is on the disk before the call returns (rollback journal, {@code synchronous=FULL}).
 * </ol>
 *
 * <p><b>Conventions.</b> Order within a list is the column {@code position}. Coordinates are survey millimetres in an
 * undefined Cartesian system. Columns are named as the records' components, in snake case. docs/survey-file.md describes
 * the tables.
 *
 * <p><b>Sources.</b> OGC 12-128r18, GeoPackage 1.3.1; sqlite.org, "Atomic Commit In SQLite".
 */
@NullMarked
package corewright.store;

import org.jspecify.annotations.NullMarked;
