/**
 * What was worked out before, kept by all that went in.
 *
 * <p><b>In:</b> an input, a record of everything a result depends on, and the work. <b>Out:</b> the result, from the memory or
 * anew; the same either way. Knows nothing of boats.
 */
@NullMarked
package corewright.reuse;

import org.jspecify.annotations.NullMarked;
