/**
 * Which method for which region, and why; what the choices cost; what to buy; what would change it.
 *
 * <p>Rules and sums only. <b>In:</b> survey, damage, the {@link corewright.repair.plan.RepairOptions} of each region alone;
 * later those put together, the {@link corewright.stiffness.Gains} and the {@link corewright.stiffness.PanelGains}. <b>Out:</b>
 * {@link corewright.decision.Methods}, then a {@link corewright.decision.Decision}.
 *
 * <p><b>Steps.</b> {@link corewright.decision.Methods}: (1) the facts of each region, how long it dries, and what is cut out
 * beside it; (2) the rules of the book, in order, each leaving its reason; (3) what people decided. {@link
 * corewright.decision.Treated}: what the choices do to the core. {@link corewright.decision.Decider}: (4) the chosen plans put one after
 * another; (5) the choices side by side with their cost; (6) the buying list; (7) the {@link corewright.decision.Weighing}: drying, every
 * method of every region, the least work that reaches a goal, what would change a method.
 *
 * <p>Rules and allowances are listed in {@code docs/repair.md}.
 *
 * <p>It advises; an owner, a surveyor or a naval architect decides.
 */
@NullMarked
package corewright.decision;

import org.jspecify.annotations.NullMarked;
