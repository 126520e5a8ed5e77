/**
 * How the mix fills a cavity through the planned holes, cup by cup: pressure, front, trapped air, rise and gel.
 *
 * <p><b>In:</b> a cavity, holes and cups. <b>Out:</b> {@link corewright.repair.plan.Fill}. Mass is exact.
 */
@NullMarked
package corewright.repair.fill;

import org.jspecify.annotations.NullMarked;
