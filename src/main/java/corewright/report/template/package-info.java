/**
 * The full-size template: what is to be drilled and cut, 1 : 1, to be laid on the face.
 *
 * <p>In: an assessment. Out: {@code drill-template.pdf}, sheets of the reader's paper, and {@code drill-template-sheet.pdf}, for each
 * place one sheet as large as it is. Steps: {@link corewright.report.template.Jobs} gathers what belongs to one card; {@link
 * corewright.drawing.template.Tiling} lays sheets over it and keeps those that hold something; {@link
 * corewright.report.template.TilePage} paints a sheet round {@link corewright.drawing.template.TilePlan}.
 */
@NullMarked
package corewright.report.template;

import org.jspecify.annotations.NullMarked;
