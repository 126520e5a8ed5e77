package corewright.report.page;

import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Parts.Part;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import java.util.List;

/** The frame of every upright page: head, foot, and questions at the left of their answers. */
public final class PageFrame {
    public static final double WIDTH = 210;
    public static final double LEFT = 18;
    public static final double RIGHT = 192;
    public static final double ANSWERS = 58;
    public static final double ANSWER_WIDTH = RIGHT - ANSWERS;
    public static final double FULL_WIDTH = RIGHT - LEFT;

    /** First place below the head. */
    public static final double BODY = 24.5;

    private static final double HEAD_BASELINE = 19.4;
    private static final double HEAD_RULE = 22.2;
    private static final double FOOT_RULE = 2.4;
    private static final double FOOT_BASELINE = 6.6;
    private static final Type NAME = new Type(Typeface.TEXT_BOLD, 10.5);
    private static final Type DATA = new Type(Typeface.TEXT, 9);
    private static final Type QUESTION = new Type(Typeface.TEXT_BOLD, 10.5);
    private static final double NAME_SHARE = 0.62;
    private static final int HEAD_LINES = 3;
    private static final double LEAST_POINTS = 6.5;
    private static final Type FOOT = new Type(Typeface.TEXT, 7.5);

    private PageFrame() {}

    /** Head: the name at the left, the data at the right. What one line does not hold takes more of them, upwards. */
    public static void head(Paper paper, String name, List<String> data) {
        String all = String.join(" · ", data);
        double beside = FULL_WIDTH - DATA.width(all) - 5;
        boolean oneLine = NAME.width(name) <= beside;
        double widest = data.stream().mapToDouble(DATA::width).max().orElse(0) + 0.5;
        double right = oneLine ? DATA.width(all) + 1 : Math.min(widest, FULL_WIDTH * (1 - NAME_SHARE) - 5);
        double left = oneLine ? beside : FULL_WIDTH - right - 5;
        Type large = NAME.within(name, left, HEAD_LINES);
        paper.part(Part.TITLE, p -> lines(p, large.wrap(name, left), LEFT, large, Anchor.LEFT));
        List<String> apart = oneLine ? List.of(all) : data;
        Type small = small(apart, right);
        paper.part(Part.ASIDE, p -> lines(p, wrapped(apart, small, right), RIGHT, small, Anchor.RIGHT));
        paper.line(Pen.EDGE, LEFT, HEAD_RULE, RIGHT, HEAD_RULE);
    }

    private static Type small(List<String> texts, double width) {
        Type small = DATA;
        while (small.points() > LEAST_POINTS && wrapped(texts, small, width).size() > HEAD_LINES) {
            small = small.at(small.points() - 0.5);
        }
        return small;
    }

    private static List<String> wrapped(List<String> texts, Type type, double width) {
        return texts.stream().flatMap(t -> type.wrap(t, width).stream()).toList();
    }

    /** The last line stands on the head's baseline. */
    private static void lines(Paper paper, List<String> lines, double x, Type type, Anchor anchor) {
        for (int i = 0; i < lines.size(); i++) {
            double up = (lines.size() - 1 - i) * type.leadMm() * 0.9;
            paper.text(lines.get(i), x, HEAD_BASELINE - up, type, anchor);
        }
    }

    /** Foot: what stands on every page, in full, and the page's number. */
    public static void foot(Paper paper, PageSize size, String words, int page, int pages) {
        double rule = size.bodyEnd() + FOOT_RULE;
        paper.line(Pen.FAINT, LEFT, rule, RIGHT, rule);
        String number = "page " + page + " of " + pages;
        List<String> lines = wrapped(List.of(words.split("\n")), FOOT, FULL_WIDTH - FOOT.width(number) - 5);
        double baseline = size.bodyEnd() + FOOT_BASELINE;
        paper.part(Part.ASIDE, p -> {
            for (int i = 0; i < lines.size(); i++) {
                p.text(lines.get(i), LEFT, baseline + i * FOOT.leadMm(), FOOT, Anchor.LEFT);
            }
            p.text(number, RIGHT, baseline, FOOT, Anchor.RIGHT);
        });
    }

    /** The question in its column, its first line level with 10.5 pt text that begins at {@code top}. */
    public static void question(Paper paper, String words, double top) {
        double baseline = top + (Prose.TEXT.leadMm() + QUESTION.capMm()) / 2;
        paper.part(Part.HEADING, p -> p.text(words, LEFT, baseline, QUESTION, Anchor.LEFT));
    }

    public static void hairline(Paper paper, double y) {
        paper.line(Pen.FAINT, LEFT, y, RIGHT, y);
    }
}
