package corewright.report.page;

import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import java.util.ArrayList;
import java.util.List;

/** Blocks laid down one under the other, on as many pages as they take; a table breaks between rows, all else stays whole. */
public final class Flow {
    /** What is painted from a place down. */
    @FunctionalInterface
    public interface Block {
        void paint(Paper paper, double top);
    }

    private record Placed(Block block, double top) {}

    /** 9.5 on 12.5 pt. */
    public static final Prose SMALL = new Prose(9.5, 4.5);

    public static final double GAP = 2.4;
    private static final double FIRST = PageFrame.BODY + 1;

    /** Fewer rows than this do not stand alone on a page, neither the first of a table nor the last. */
    private static final int FEW_ROWS = 3;

    /** What was made to fit a page fits, whatever the last digit of a sum is. */
    static final double ROUNDING = 1e-6;

    private final List<List<Placed>> pages = new ArrayList<>(List.of(new ArrayList<>()));
    private final List<Integer> laidRows = new ArrayList<>();
    private final double end;
    private double y = FIRST;

    public Flow(PageSize size) {
        end = size.bodyEnd();
    }

    /** Height that is free on this page. */
    public double left() {
        return end - y;
    }

    private boolean fresh() {
        return pages.get(pages.size() - 1).isEmpty();
    }

    /** Nothing was laid down. */
    public boolean empty() {
        return pages.size() == 1 && fresh();
    }

    public void newPage() {
        if (!fresh()) {
            pages.add(new ArrayList<>());
            y = FIRST;
        }
    }

    public void gap(double height) {
        y += height;
    }

    public void block(double height, Block block) {
        if (height > left() + ROUNDING && !fresh()) {
            newPage();
        }
        pages.get(pages.size() - 1).add(new Placed(block, y));
        y += height;
    }

    /** Words over the full width. */
    public void words(Prose prose, String words) {
        if (!words.isBlank()) {
            block(
                    prose.height(words, PageFrame.FULL_WIDTH),
                    (paper, top) -> prose.paint(paper, words, PageFrame.LEFT, top, PageFrame.FULL_WIDTH, Anchor.LEFT));
        }
    }

    /** A question at the left, its answer at the right, a hairline above. */
    public void answer(String question, String words) {
        answer(question, words, SMALL);
    }

    public void answer(String question, String words, Prose prose) {
        if (words.isBlank()) {
            return;
        }
        double height = 2 * GAP + Math.max(Prose.TEXT.leadMm(), prose.height(words, PageFrame.ANSWER_WIDTH));
        block(height, (paper, top) -> {
            PageFrame.hairline(paper, top);
            PageFrame.question(paper, question, top + GAP);
            prose.paint(paper, words, PageFrame.ANSWERS, top + GAP, PageFrame.ANSWER_WIDTH, Anchor.LEFT);
        });
    }

    /** A heading over the full width and a table under it. */
    public void table(String heading, RuledTable table) {
        double head = GAP + Prose.TEXT.leadMm() + 1.5;
        if (first(table, head) == 0) {
            newPage();
        }
        int rows = Math.max(1, first(table, head));
        laidRows.add(Math.min(rows, table.size()));
        block(Math.min(end - FIRST, head + table.height(0, Math.min(rows, table.size()))), (paper, top) -> {
            PageFrame.hairline(paper, top);
            PageFrame.question(paper, heading, top + GAP);
            table.paint(paper, PageFrame.LEFT, top + head, 0, Math.min(rows, table.size()));
        });
        rows(table, rows);
        y += GAP;
    }

    /** A table without a heading. */
    public void table(RuledTable table) {
        if (first(table, 0) == 0) {
            newPage();
        }
        rows(table, 0);
        y += GAP;
    }

    private int first(RuledTable table, double headMm) {
        return rows(table.size(), 0, table.fitting(0, left() - headMm), fresh());
    }

    private void rows(RuledTable table, int from) {
        for (int next = from; next < table.size(); ) {
            if (next > 0) {
                newPage();
            }
            int at = next;
            int count = Math.max(1, rows(table.size(), at, table.fitting(at, left()), fresh()));
            laidRows.add(count);
            block(table.height(at, count), (paper, top) -> table.paint(paper, PageFrame.LEFT, top, at, count));
            next += count;
        }
    }

    /**
     * How many rows to lay down here so that no few of them stand alone; none sends the table to the next page.
     *
     * @param from the first row not laid down yet
     * @param fitting how many would fit
     * @param fresh nothing stands on this page yet
     */
    static int rows(int size, int from, int fitting, boolean fresh) {
        int left = size - from;
        if (fitting >= left) {
            return left;
        }
        int rest = left - fitting;
        int count = rest < FEW_ROWS ? left - FEW_ROWS : fitting;
        boolean few = count < FEW_ROWS;
        return few ? (fresh ? fitting : 0) : count;
    }

    /** Of all tables, how many rows were laid down together, part by part. */
    List<Integer> laidRows() {
        return List.copyOf(laidRows);
    }

    public int pages() {
        return pages.size();
    }

    public void paint(Paper paper, int page) {
        pages.get(page).forEach(p -> p.block.paint(paper, p.top));
    }
}
