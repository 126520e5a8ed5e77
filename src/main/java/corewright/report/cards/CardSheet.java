package corewright.report.cards;

import corewright.drawing.kit.LyingSheet;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Parts.Part;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.report.page.Prose;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * The frame of a work card, lying, read at arm's length with gloves on; boxes are for a carpenter's pencil. It is as wide on every sheet
 * and stands in its middle: A4 and Letter have the same cards at the same scales.
 */
final class CardSheet {
    static final double TABLE_TOP = 36;
    static final double LEFT = LyingSheet.LEFT;

    /** Leaves 7.2 mm at either side of Letter, the narrower sheet. */
    static final double RIGHT = 277;

    static final double FULL_WIDTH = RIGHT - LEFT;

    /** First place below the head. */
    static final double BODY = 25.5;

    static final double BODY_END = 203;

    /** Height of a box to write in. */
    static final double BOX = 8;

    /** 10.5 on 13 pt. */
    static final Prose TEXT = new Prose(10.5, 4.6);

    static final Type WORD = new Type(Typeface.TEXT, 10.5);
    static final Type HEAD = new Type(Typeface.TEXT_BOLD, 14);
    static final Type TOOL = new Type(Typeface.TEXT_BOLD, 18);

    private static final Prose HEAD_WORDS = new Prose(11, 5.0);
    private static final int HEAD_LINES = 2;
    private static final Type TITLE = new Type(Typeface.TEXT_BOLD, 30);
    private static final Type SIDE = new Type(Typeface.TEXT, 10.5);
    private static final double TITLE_BASELINE = 20;
    private static final double HEAD_RULE = 23;
    private static final double GAP = 6;

    /** Many regions filled as one have a long title. */
    private static final double MOST_TITLE = 105;

    private static final double LEAST_TITLE = 14;
    private static final double LEAST_FACTS = 6.5;
    private static final double LEAD_PER_POINT = 0.46;

    /** From the upper margin to the rule. */
    private static final double HEAD_ROOM = 15;

    private CardSheet() {}

    /**
     * Region and verb, the facts beside them (in smaller type where two lines do not hold them), and what card it is.
     *
     * @param side the last stands lowest
     */
    static void head(Paper paper, String title, String facts, List<String> side) {
        Type large = TITLE;
        while (large.width(title) > MOST_TITLE && large.points() > LEAST_TITLE) {
            large = large.at(large.points() - 1);
        }
        List<String> names = large.wrap(title, MOST_TITLE);
        Type type = large;
        paper.part(Part.TITLE, p -> title(p, names, type));
        double sideWidth = side.stream().mapToDouble(SIDE::width).max().orElse(0);
        for (int i = 0; i < side.size(); i++) {
            double up = (side.size() - 1 - i) * HEAD_WORDS.leadMm();
            paper.text(side.get(i), RIGHT, TITLE_BASELINE - up, SIDE, Anchor.RIGHT);
        }
        double left = LEFT + names.stream().mapToDouble(large::width).max().orElse(0) + GAP;
        double width = RIGHT - sideWidth - GAP - left;
        Prose prose = HEAD_WORDS;
        double most = HEAD_LINES * HEAD_WORDS.leadMm();
        while (prose.height(facts, width) > most && prose.points() > LEAST_FACTS) {
            prose = new Prose(prose.points() - 0.5, (prose.points() - 0.5) * LEAD_PER_POINT);
            most = HEAD_ROOM;
        }
        prose.paint(paper, facts, left, HEAD_RULE - 1.6 - prose.height(facts, width), width, Anchor.LEFT);
        paper.line(new Pen(0.7, List.of()), LEFT, HEAD_RULE, RIGHT, HEAD_RULE);
    }

    private static void title(Paper paper, List<String> names, Type type) {
        for (int i = 0; i < names.size(); i++) {
            double up = (names.size() - 1 - i) * type.leadMm() * 0.85;
            paper.text(names.get(i), LEFT, TITLE_BASELINE - up, type, Anchor.LEFT);
        }
    }

    /** What is to be ticked before the first tool goes in, from margin to margin below the head. */
    static void ticks(Paper paper, List<String> all) {
        double words = all.stream().mapToDouble(WORD::width).sum();
        double gap = (FULL_WIDTH - words - all.size() * (BOX + 2)) / (all.size() - 1);
        double x = LEFT;
        for (String gear : all) {
            box(paper, x, BODY, BOX);
            x += BOX + 2;
            double y = level(WORD, BODY, BOX);
            paper.text(gear, x, y, WORD, Anchor.LEFT);
            x += WORD.width(gear) + gap;
        }
    }

    /** An empty box. */
    static void box(Paper paper, double left, double top, double width) {
        box(paper, left, top, width, BOX);
    }

    static void box(Paper paper, double left, double top, double width, double height) {
        paper.draw(new Rectangle2D.Double(left, top, width, height), Pen.MARK);
    }

    /** A heading with its rule; returns the first place below. */
    static double heading(Paper paper, String words, double left, double top, double width) {
        paper.part(Part.HEADING, p -> p.text(words, left, top + HEAD.capMm() + 0.6, HEAD, Anchor.LEFT));
        double rule = top + HEAD.capMm() + 2.6;
        paper.line(Pen.EDGE, left, rule, left + width, rule);
        return rule + 1;
    }

    /** Words level with the middle of a box whose top is given. */
    static double level(Type type, double top, double height) {
        return top + height / 2 + type.capMm() / 2;
    }
}
