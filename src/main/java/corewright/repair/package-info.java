/**
 * What a repair of each region would take: holes, reach, depth stops, litres, grams, batches; or the cut and the new
 * core. It chooses nothing; {@code decision} does.
 *
 * <p><b>In:</b> the survey and its {@link corewright.damage.FaceDamage}. <b>Out:</b> a {@link
 * corewright.repair.plan.RepairOptions}.
 *
 * <p><b>Steps</b> for each loose region: (1) gap, mix and reach; (2) hole pattern, clear of fittings, supports and edges;
 * (3) coverage on a fine raster, measured inside the cavity; (4) vents, working order, depth stops; (5) litres to grams;
 * (6) batches within the work time. For every region: (7) the cut and its materials.
 *
 * <p>While the work goes on: {@link corewright.repair.work.WorkProgress} by the log and the skin's warmth, {@link
 * corewright.repair.work.CuredFill} by taps after cure, with second shots.
 *
 * <p><b>Units.</b> Millimetre, gram, second, degree Celsius.
 *
 * <p><b>Sources.</b> Hele-Shaw (1898) for the flow, Kershner (1939) for the covering; rules, allowances and limits are
 * listed in {@code docs/repair.md}.
 */
@NullMarked
package corewright.repair;

import org.jspecify.annotations.NullMarked;
