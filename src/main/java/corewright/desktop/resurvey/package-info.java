/**
 * Two surveys of one boat beside each other.
 *
 * <p>In: the survey that is open and another one. Out: pictures of each face before, after and of what changed, in one scale, and
 * the differences that the readings prove. The surveys stay as they are.
 */
@NullMarked
package corewright.desktop.resurvey;

import org.jspecify.annotations.NullMarked;
