/**
 * Work cards for the technician, two sides a region.
 *
 * <p><b>In:</b> an {@link corewright.assessment.Assessment}. <b>Out:</b> {@code work-cards.pdf}, lying sheets.
 */
@NullMarked
package corewright.report.cards;

import org.jspecify.annotations.NullMarked;
