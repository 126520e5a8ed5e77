/**
 * The plan of a work card: one region at the largest scale, holes as discs that can be read at arm's length, and the section at the
 * deepest hole.
 */
@NullMarked
package corewright.drawing.cards;

import org.jspecify.annotations.NullMarked;
