package corewright.repair.fill;

import java.util.BitSet;
import java.util.HashSet;
import java.util.Set;

/**
 * How the air of a fill got out. Openings act on a fill by one thing alone: whether an area of air has one. Where other openings would
 * have said the same of every area at every step, the fill with them is this one to the last digit.
 */
final class AirWays {
    /** Cells in which air was ever enclosed. */
    private final BitSet enclosed;

    /** The openings of every area of air that had any, each set once. */
    private final Set<BitSet> open;

    AirWays() {
        this(new BitSet(), new HashSet<>());
    }

    private AirWays(BitSet enclosed, Set<BitSet> open) {
        this.enclosed = enclosed;
        this.open = open;
    }

    /** As it is now; the fill may go on. */
    AirWays copy() {
        return new AirWays((BitSet) enclosed.clone(), new HashSet<>(open));
    }

    void enclosed(int cell) {
        enclosed.set(cell);
    }

    /** @param openings of an area of air, not to be changed */
    void open(BitSet openings) {
        open.add(openings);
    }

    /**
     * Whether the fill would be the same with others open. Where one is given up for another in the same area that is not seen.
     *
     * @param openings cells that were open
     * @param others cells
     */
    boolean sameWith(BitSet openings, BitSet others) {
        BitSet added = (BitSet) others.clone();
        added.andNot(openings);
        return !added.intersects(enclosed) && open.stream().allMatch(area -> area.intersects(others));
    }
}
