/**
 * The panels of a survey and how stiff they are: as built, as found, and with given areas treated in a given way.
 *
 * <p>Enters: a {@link corewright.survey.Survey} and its {@link corewright.damage.DamageMap}. Leaves: a {@link
 * corewright.stiffness.StiffnessMap}. Millimetre, newton, megapascal; stiffness is newton per millimetre.
 *
 * <ol>
 *   <li>{@link corewright.stiffness.DeckPanels} cuts each face along its supports and openings into panels and says how each side is
 *       held.
 *   <li>{@link corewright.stiffness.Patches} turns the regions on a panel into patches of the finite-element model: wet core is
 *       softer, a loose skin and a void are a skin by itself. {@link corewright.stiffness.Treatment}s change them: foam, new core,
 *       dried core.
 *   <li>{@link corewright.stiffness.Outlook} moves extents and depths to where they lie in the better and the worse tenth of
 *       cases, so that every ratio has a range.
 *   <li>{@link corewright.stiffness.PanelStudy} puts a foot on every place of a panel in every state; {@link
 *       corewright.stiffness.Stiffness} does so for the whole survey.
 * </ol>
 *
 * <p>The panel model and its checks against solid elements are in {@code sandwich}; what follows from softened wood and
 * foam is in {@link corewright.stiffness.Softening} and {@link corewright.stiffness.Foam}, each figure with its source. The classic
 * formulas are the model's limits, not its method. A calculation supports a naval architect's judgement and does not
 * replace it.
 */
@NullMarked
package corewright.stiffness;

import org.jspecify.annotations.NullMarked;
