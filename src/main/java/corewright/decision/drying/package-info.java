/**
 * How long wet core takes to dry to the gate.
 *
 * <p><b>In:</b> survey and damage. <b>Out:</b> a {@link corewright.decision.drying.DryingTime} for every wet region and way. Times
 * are days, diffusion mm2 a day, moisture water over dry mass in per cent.
 *
 * <p><b>Steps.</b> (1) what the core is, and which way its grain runs; (2) what the air holds it at ({@link
 * corewright.decision.drying.EquilibriumMoisture}); (3) draws of diffusion, surface, start and equilibrium; (4) for each draw the
 * time until the place that dries last is at the gate, in a {@link corewright.decision.drying.Sheet}, a {@link
 * corewright.decision.drying.Block} or round a {@link corewright.decision.drying.RoundHole}; (5) readings taken meanwhile weigh the
 * draws. Sources stand at each class and in {@code docs/repair.md}.
 */
@NullMarked
package corewright.decision.drying;

import org.jspecify.annotations.NullMarked;
