/**
 * Finite elements for sandwich panels: two thin skins, each with its own stretching, bending and deflection, joined by a
 * core with transverse shear and through-thickness stiffness; where there is a void the skins are on their own.
 *
 * <p><b>In:</b> a {@link corewright.sandwich.spec.PanelSpec}, a {@link corewright.sandwich.MeshSize}, {@link
 * corewright.sandwich.spec.Load}s. <b>Out:</b> a {@link corewright.sandwich.PanelModel}, factored once, that answers loads with
 * {@link corewright.sandwich.Response}s; a {@link corewright.sandwich.FootLoadMap}; {@link corewright.sandwich.Margin}s.
 *
 * <p><b>Steps.</b> (1) {@code Mesher}: a graded grid over the outline, its nodes moved onto outline and rims, cells that the
 * boundary crosses split in two; (2) {@code Nodes}: what is free at each node, after supports and oblique edges, and where
 * the core has a second layer; (3) {@code CellStiffness} of each cell, added up; (4) factor; (5) {@code LoadVector}; (6)
 * solve; (7) {@code Response}: deflections, reactions, stresses; (8) {@code Contact} where a loose skin meets what is below, {@code PanelPull} and, in loose areas, {@code LargeDeflection} where slopes
 * pull; (9) {@code FootLoads}: all this for feet everywhere.
 *
 * <p>Units: millimetre, newton, megapascal. z and deflections point inward, in the direction of a load on the outer skin.
 *
 * <p>Sources: named at each class; the whole, with limits and what it was checked against, is in docs/stiffness.md.
 */
@NullMarked
package corewright.sandwich;

import org.jspecify.annotations.NullMarked;
