/**
 * Reads a survey folder, and the open formats of the expert commands, into records.
 *
 * <p><b>In:</b> CSV in any dialect a spreadsheet writes, YAML, ESRI ASCII grids. <b>Out:</b> a {@link
 * corewright.survey.Survey} in millimetres and degrees Celsius together with findings, or a {@link
 * corewright.intake.RefusedException} that lists every complaint of every file.
 *
 * <p><b>Steps.</b> (1) survey.yaml; (2) each file: encoding, separator, decimal sign, columns; (3) each cell to a number
 * in the survey's units; (4) names checked against each other; (5) what is merely odd becomes a finding.
 */
@NullMarked
package corewright.intake;

import org.jspecify.annotations.NullMarked;
