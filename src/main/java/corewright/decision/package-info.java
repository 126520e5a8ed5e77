/**
 * Which method for which region, and why; what the choices cost; what to buy.
 *
 * <p>Rules and sums only. <b>In:</b> survey, damage, the {@link corewright.repair.plan.RepairOptions} of each region alone;
 * later those put together and the {@link corewright.stiffness.Gains}. <b>Out:</b> {@link corewright.decision.Methods}, then a
 * {@link corewright.decision.Decision}.
 *
 * <p><b>Steps.</b> {@link corewright.decision.Methods}: (1) evidence in and around each region; (2) the rules, in order, each
 * leaving its reason. {@link corewright.decision.Treated}: what the choices do to the core. {@link
 * corewright.decision.Decider}: (3) the chosen plans put one after another; (4) the choices side by side with their cost;
 * (5) the buying list.
 *
 * <p>Rules and allowances are listed in {@code docs/repair.md}.
 *
 * <p>It advises; an owner, a surveyor or a naval architect decides.
 */
@NullMarked
package corewright.decision;

import org.jspecify.annotations.NullMarked;
