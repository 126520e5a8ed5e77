package corewright.report.cards;

import corewright.drawing.kit.Paper;
import java.util.List;

/** A card of one sheet. */
interface TwoSided {
    /** @param side what card it is, at the upper right; the last stands lowest */
    void front(Paper paper, List<String> side);

    /** @param side as at the front */
    void back(Paper paper, List<String> side);
}
