package corewright.report.cards;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.repair.plan.Batch;
import corewright.report.data.CupFigures;
import java.awt.Color;
import java.awt.geom.Path2D;
import java.util.List;

/** One cup as a drawing: the lower line is resin, the upper resin with hardener, each with what the scale shows. */
final class CardCup {
    private static final Color RESIN = new Color(0xD8D8D8);
    private static final Pen WALL = new Pen(0.7, List.of());
    private static final Type NAME = new Type(Typeface.TEXT_BOLD, 15);
    private static final Type HOLES = new Type(Typeface.TEXT_SEMIBOLD, 11.5);
    private static final Type FIGURE = new Type(Typeface.TEXT_BOLD, 22);
    private static final Type WORD = new Type(Typeface.TEXT_SEMIBOLD, 10.5);

    /** Fill of the drawn cup at the largest cup there may be. */
    private static final double FULL = 0.92;

    /** Lines nearer than this would run into each other; the drawing is a picture, the figure counts. */
    private static final double LEAST_FILL = 0.45;

    private static final double LEAST_APART = 5;

    /** Height of a figure with its words. */
    private static final double LEGEND = 12;

    private final Paper paper;
    private final Box box;
    private final double foot;
    private final double rim;

    CardCup(Paper paper, Box box) {
        this.paper = paper;
        this.box = box;
        rim = box.y() + 10;
        foot = box.bottom() - 16;
    }

    /** @param name of the cup in its region */
    void paint(Batch batch, String name, double largestG) {
        CupFigures cup = CupFigures.of(batch);
        CardSheet.box(paper, box.x(), box.y(), box.width(), box.height());
        String head = "C" + name.substring(1);
        paper.text(head, box.x() + 3, box.y() + 6.6, NAME, Anchor.LEFT);
        holes(InjectionCard.holes(batch), head);
        double whole = (foot - rim)
                * FULL
                * Math.max(LEAST_FILL, Math.min(1, cup.secondG().doubleValue() / largestG));
        double share = cup.firstG().doubleValue() / cup.secondG().doubleValue();
        double upper = foot - whole;
        double lower = Math.max(upper + LEAST_APART, foot - whole * share);
        body(upper, lower);
        double top = Math.min(upper, lower - LEGEND - 1.5);
        double second = Math.max(box.y() + 16, Math.min(top + FIGURE.capMm() / 2, foot - 2 * LEGEND + 6));
        figure(upper, second, cup.secondG() + " g", "hardener to here");
        figure(lower, second + LEGEND + 1.2, cup.firstG() + " g", "resin to here");
        paper.text(cup.hardenerG() + " g hardener", box.x() + 4, foot + 4.8, CardSheet.WORD, Anchor.LEFT);
        boxes();
    }

    /** Ranged right beside the cup's name, in smaller type where one line does not hold them. */
    private void holes(String holes, String head) {
        double room = box.width() - NAME.width(head) - 8;
        Type type = HOLES.within(holes, room, 1);
        if (type.width(holes) > room) {
            type = HOLES.within(holes, room, 2);
        }
        List<String> lines = type.wrap(holes, room);
        double y = box.y() + 6.4 - (lines.size() - 1) * type.leadMm() / 2;
        for (String line : lines) {
            paper.text(line, box.right() - 2.5, y, type, Anchor.RIGHT);
            y += type.leadMm();
        }
    }

    private void body(double upper, double lower) {
        double left = box.x() + 5;
        Path2D resin = new Path2D.Double();
        resin.moveTo(wall(left, lower, true), lower);
        resin.lineTo(wall(left, lower, false), lower);
        resin.lineTo(wall(left, foot, false), foot);
        resin.lineTo(wall(left, foot, true), foot);
        resin.closePath();
        paper.fill(resin, RESIN);
        paper.line(
                WALL,
                wall(left, rim, true),
                rim,
                wall(left, foot, true),
                foot,
                wall(left, foot, false),
                foot,
                wall(left, rim, false),
                rim);
        paper.line(Pen.EDGE, wall(left, upper, true), upper, wall(left, upper, false), upper);
        paper.line(Pen.EDGE, wall(left, lower, true), lower, wall(left, lower, false), lower);
    }

    /** A wall of the cup, 24 wide at the rim and 17 at the foot. */
    private double wall(double left, double y, boolean leftWall) {
        double in = 3.5 * (y - rim) / (foot - rim);
        return leftWall ? left + in : left + 24 - in;
    }

    private void figure(double line, double baseline, String figure, String words) {
        double left = box.x() + 33.5;
        double from = wall(box.x() + 5, line, false);
        double middle = baseline - FIGURE.capMm() / 2;
        paper.line(Pen.MARK, from, line, left - 2.5, line, left - 1, middle);
        paper.text(figure, left, baseline, FIGURE, Anchor.LEFT);
        paper.text(words, left, baseline + 4.6, WORD, Anchor.LEFT);
    }

    private void boxes() {
        double top = box.bottom() - CardSheet.BOX - 1.8;
        double y = CardSheet.level(CardSheet.WORD, top, CardSheet.BOX);
        double middle = box.x() + box.width() / 2;
        paper.text("mixed at", box.x() + 3, y, CardSheet.WORD, Anchor.LEFT);
        double after = box.x() + 3 + CardSheet.WORD.width("mixed at") + 1.2;
        CardSheet.box(paper, after, top, middle - 0.5 - after);
        paper.text("weighed", middle + 1, y, CardSheet.WORD, Anchor.LEFT);
        after = middle + 1 + CardSheet.WORD.width("weighed") + 1.2;
        CardSheet.box(paper, after, top, box.right() - 2 - after);
    }
}
