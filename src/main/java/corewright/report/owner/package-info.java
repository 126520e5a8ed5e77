/**
 * The owner's report.
 *
 * <p><b>In:</b> an {@link corewright.assessment.Assessment}. <b>Out:</b> {@code owner-report.pdf}: the answer first, then each face, then
 * stiffness.
 */
@NullMarked
package corewright.report.owner;

import org.jspecify.annotations.NullMarked;
