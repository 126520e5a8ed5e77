package corewright.report.record;

import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.report.page.PageFrame;
import corewright.report.page.Prose;
import corewright.report.page.RuledTable;
import java.util.ArrayList;
import java.util.List;

/** Blocks laid down one under the other, on as many pages as they take; a table breaks between rows, all else stays whole. */
final class Flow {
    /** What is painted from a place down. */
    @FunctionalInterface
    interface Block {
        void paint(Paper paper, double top);
    }

    private record Placed(Block block, double top) {}

    private static final double GAP = 2.4;

    /** Fewer rows than this do not stand alone on a page. */
    private static final int FEW_ROWS = 3;

    private final List<List<Placed>> pages = new ArrayList<>(List.of(new ArrayList<>()));
    private double y = PageFrame.BODY + 1;

    double left() {
        return PageFrame.BODY_END - y;
    }

    private boolean fresh() {
        return pages.get(pages.size() - 1).isEmpty();
    }

    /** Nothing was laid down. */
    boolean empty() {
        return pages.size() == 1 && fresh();
    }

    void newPage() {
        if (!fresh()) {
            pages.add(new ArrayList<>());
            y = PageFrame.BODY + 1;
        }
    }

    void block(double height, Block block) {
        if (height > left() && !fresh()) {
            newPage();
        }
        pages.get(pages.size() - 1).add(new Placed(block, y));
        y += height;
    }

    /** A question at the left, its answer at the right, a hairline above. */
    void answer(String question, String words) {
        if (words.isBlank()) {
            return;
        }
        double height = 2 * GAP + Math.max(Prose.TEXT.leadMm(), SMALL.height(words, PageFrame.ANSWER_WIDTH));
        block(height, (paper, top) -> {
            PageFrame.hairline(paper, top);
            PageFrame.question(paper, question, top + GAP);
            SMALL.paint(paper, words, PageFrame.ANSWERS, top + GAP, PageFrame.ANSWER_WIDTH, Anchor.LEFT);
        });
    }

    /** 9.5 on 12.5 pt. */
    static final Prose SMALL = new Prose(9.5, 4.5);

    /** A heading over the full width and a table under it, which begins on this page if a few rows of it fit. */
    void table(String heading, RuledTable table) {
        double head = GAP + Prose.TEXT.leadMm() + 1.5;
        int few = Math.min(FEW_ROWS, table.size());
        if (table.fitting(0, left() - head) < few) {
            newPage();
        }
        block(head, (paper, top) -> {
            PageFrame.hairline(paper, top);
            PageFrame.question(paper, heading, top + GAP);
        });
        for (int next = 0; next < table.size(); ) {
            int from = next;
            int fits = Math.max(1, Math.min(table.size() - from, table.fitting(from, left())));
            int rest = table.size() - from - fits;
            // no page with one or two rows left over
            int count = rest > 0 && rest < FEW_ROWS && fits > 2 * FEW_ROWS ? fits - FEW_ROWS : fits;
            block(table.height(from, count), (paper, top) -> table.paint(paper, PageFrame.LEFT, top, from, count));
            next += count;
            if (next < table.size()) {
                newPage();
            }
        }
        y += GAP;
    }

    int pages() {
        return pages.size();
    }

    void paint(Paper paper, int page) {
        pages.get(page).forEach(p -> p.block.paint(paper, p.top));
    }
}
