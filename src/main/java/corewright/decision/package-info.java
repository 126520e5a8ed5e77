/**
 * Which method for which region, and why; what the choices cost; what to buy.
 *
 * <p><b>In:</b> survey, damage and {@link corewright.repair.plan.RepairOptions}. <b>Out:</b> a {@link
 * corewright.decision.Decision}.
 *
 * <p><b>Steps.</b> (1) evidence in and around each region; (2) the rules, in order, each leaving its reason; (3) the
 * chosen plans put one after another; (4) the choices side by side with their cost; (5) the buying list.
 *
 * <p>Rules and allowances are listed in {@code docs/repair.md}.
 *
 * <p>It advises; an owner, a surveyor or a naval architect decides.
 */
@NullMarked
package corewright.decision;

import org.jspecify.annotations.NullMarked;
