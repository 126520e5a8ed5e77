/**
 * Reads a survey folder into records; the expert commands' files are read in {@code cli} with the same parts.
 *
 * <p><b>In:</b> CSV in any dialect a spreadsheet writes, YAML, drawings. <b>Out:</b> a {@link
 * corewright.survey.Survey} in millimetres and degrees Celsius together with findings, or a {@link
 * corewright.intake.text.RefusedException} that lists every complaint of every file.
 *
 * <p><b>Steps.</b> (1) survey.yaml to values with places ({@code YamlTree}), then section by section ({@code SurveyYaml}
 * and its neighbours); (2) each file found inside the folder and decoded ({@code Folder}, {@code Text}), split into cells
 * ({@code Dialect}, {@code Sheet}) and named columns ({@code Table}, {@code CrossTab}); (3) each cell to a number in
 * the survey's units ({@code Row}, {@code Numerals}, {@code Lengths}); (4) the plan and the readings, names checked
 * against each other; (5) what is merely odd becomes a finding ({@code PlanCheck}, {@code Oddities}, {@code Gaps}).
 *
 * <p><b>Conventions.</b> Readers never stop at the first error: accessors complain to {@code Notes} at their own place,
 * answer null, and the folder is refused once everything has been read. Sizes are bounded before memory is.
 *
 * <p><b>Sources.</b> CSV: RFC 4180 as Commons CSV reads it. Geometry: OGC 06-103r4 (well-known text). YAML 1.1 as
 * SnakeYAML composes it; nodes only, never objects. The inch is 25.4 mm (1959). The format itself: docs/survey-folder.md.
 */
@NullMarked
package corewright.intake;

import org.jspecify.annotations.NullMarked;
