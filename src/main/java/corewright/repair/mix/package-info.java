/**
 * The mix: grams of each part, how it thickens and rises, how far it gets in a gap, how it is parted into cups.
 *
 * <p><b>Sources.</b> Hele-Shaw (1898) for the flow between skins; the rest in {@code docs/repair.md}.
 */
@NullMarked
package corewright.repair.mix;

import org.jspecify.annotations.NullMarked;
