package corewright.report.cards;

import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import java.util.List;

/** A side that a continued card leaves free: ruled for notes, so that every card has two sides. */
final class CardNotes {
    private static final double LINE = 9;

    private CardNotes() {}

    static void paint(Paper paper, String region, List<String> side) {
        CardSheet.head(paper, region + " notes", "What differed from the plan, and where.", side);
        for (double y = CardSheet.BODY + LINE; y < CardSheet.BODY_END; y += LINE) {
            paper.line(Pen.FAINT, CardSheet.LEFT, y, CardSheet.RIGHT, y);
        }
    }
}
