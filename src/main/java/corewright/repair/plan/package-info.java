/**
 * What a repair of one region or one space is: holes, cups, grams, the fill that the plan gives; the cut and its materials. Records
 * that every page and file reads, and the small sums on them.
 */
@NullMarked
package corewright.repair.plan;

import org.jspecify.annotations.NullMarked;
