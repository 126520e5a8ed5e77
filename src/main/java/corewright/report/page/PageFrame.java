package corewright.report.page;

import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import java.util.List;

/** The frame of every A4 page for the owner: head, foot, and questions at the left of their answers. */
public final class PageFrame {
    public static final double WIDTH = 210;
    public static final double HEIGHT = 297;
    public static final double LEFT = 18;
    public static final double RIGHT = 192;
    public static final double ANSWERS = 58;
    public static final double ANSWER_WIDTH = RIGHT - ANSWERS;
    public static final double FULL_WIDTH = RIGHT - LEFT;

    /** First place below the head. */
    public static final double BODY = 24.5;

    /** Last place above the foot. */
    public static final double BODY_END = 281;

    private static final double HEAD_BASELINE = 19.4;
    private static final double HEAD_RULE = 22.2;
    private static final double FOOT_RULE = 283.4;
    private static final double FOOT_BASELINE = 287.6;
    private static final Type NAME = new Type(Typeface.TEXT_BOLD, 10.5);
    private static final Type DATA = new Type(Typeface.TEXT, 9);
    private static final Type QUESTION = new Type(Typeface.TEXT_BOLD, 10.5);
    private static final Type FOOT = new Type(Typeface.TEXT, 7.5);

    private PageFrame() {}

    /**
     * Head: the name takes what it needs, up to three quarters; of the data as much as fits beside it.
     *
     * @param data the last stays longest
     */
    public static void head(Paper paper, String name, List<String> data) {
        String left = NAME.fit(name, FULL_WIDTH * 0.75);
        double room = FULL_WIDTH - NAME.width(left) - 5;
        List<String> kept = data;
        while (kept.size() > 1 && DATA.width(String.join(" · ", kept)) > room) {
            kept = kept.subList(1, kept.size());
        }
        paper.text(left, LEFT, HEAD_BASELINE, NAME, Anchor.LEFT);
        paper.text(DATA.fit(String.join(" · ", kept), room), RIGHT, HEAD_BASELINE, DATA, Anchor.RIGHT);
        paper.line(Pen.EDGE, LEFT, HEAD_RULE, RIGHT, HEAD_RULE);
    }

    public static void foot(Paper paper, String words, int page, int pages) {
        paper.line(Pen.FAINT, LEFT, FOOT_RULE, RIGHT, FOOT_RULE);
        String number = "page " + page + " of " + pages;
        paper.text(FOOT.fit(words, FULL_WIDTH - FOOT.width(number) - 5), LEFT, FOOT_BASELINE, FOOT, Anchor.LEFT);
        paper.text(number, RIGHT, FOOT_BASELINE, FOOT, Anchor.RIGHT);
    }

    /** The question in its column, its first line level with 10.5 pt text that begins at {@code top}. */
    public static void question(Paper paper, String words, double top) {
        paper.text(words, LEFT, top + (Prose.TEXT.leadMm() + QUESTION.capMm()) / 2, QUESTION, Anchor.LEFT);
    }

    public static void hairline(Paper paper, double y) {
        paper.line(Pen.FAINT, LEFT, y, RIGHT, y);
    }
}
