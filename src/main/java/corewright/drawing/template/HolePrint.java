package corewright.drawing.template;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.drawing.placing.Obstacles;
import corewright.repair.plan.Hole;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A hole at full size: cross-hair, the bit's circle, a ring to find it by, and beside it its number as on the card, the collar over
 * its figure, and what it is. Where a nozzle goes through an opening the ring is broken and nothing is drilled.
 *
 * @param x on the sheet
 * @param stop figure under the collar's bar; empty where nothing is drilled
 */
record HolePrint(double x, double y, double bitMm, String number, String stop, String what) {
    static final double RING = Tiling.RING;

    private static final double ARM = 13;
    private static final double CENTRE = 1.2;
    private static final double CLEAR = 0.8;
    private static final double BESIDE = 11;
    private static final double BEYOND_ARM = 14.5;
    private static final double UP = 8.5;
    private static final Type NUMBER = new Type(Typeface.TEXT_BOLD, 22);
    private static final Type STOP = new Type(Typeface.CONDENSED_BOLD, 13);
    private static final Type WORD = new Type(Typeface.TEXT_SEMIBOLD, 8.5);
    private static final Type SMALL = new Type(Typeface.CONDENSED_BOLD, 9);
    private static final double BAR = 0.6;
    private static final double HIGH = 17;

    /** Above the middle of a label's box: the arm of the cross-hair. */
    private static final double OVER = 7.2;

    static HolePrint of(Hole hole, double x, double y, Measure measure) {
        String what =
                switch (hole.kind()) {
                    case INJECTION -> "inject";
                    case VENT -> "vent";
                    case NOZZLE -> "nozzle: do not drill";
                };
        String stop = hole.drilled() ? measure.stopFigure(hole.depthStopMm()) : "";
        return new HolePrint(x, y, hole.diameterMm(), Figures.holeNumber(hole.id()), stop, what);
    }

    Box ring() {
        return Box.round(x, y, RING / 2);
    }

    private boolean drilled() {
        return !stop.isEmpty();
    }

    private double width() {
        return Math.max(NUMBER.width(number), Math.max(STOP.width(stop) + 2, WORD.width(what)));
    }

    /** The best free place for the words inside a frame; null where there is none. */
    @Nullable
    Box label(Box frame, Obstacles taken) {
        double w = width();
        double level = y - OVER;
        List<Box> places = List.of(
                new Box(x + BESIDE, level, w, HIGH),
                new Box(x - BESIDE - w, level, w, HIGH),
                new Box(x + BEYOND_ARM, level - UP, w, HIGH),
                new Box(x - BEYOND_ARM - w, level - UP, w, HIGH),
                new Box(x + BEYOND_ARM, level + UP, w, HIGH),
                new Box(x - BEYOND_ARM - w, level + UP, w, HIGH),
                new Box(x + 1.5, y - BEYOND_ARM - HIGH + 3, w, HIGH),
                new Box(x - 1.5 - w, y - BEYOND_ARM - HIGH + 3, w, HIGH),
                new Box(x + 1.5, y + BESIDE, w, HIGH),
                new Box(x - 1.5 - w, y + BESIDE, w, HIGH));
        return places.stream()
                .filter(frame::holds)
                .filter(p -> taken.free(p.grown(0.3)))
                .findFirst()
                .orElse(null);
    }

    /** Circles and cross-hair. */
    void paint(Paper paper) {
        if (!drilled()) {
            paper.draw(Paper.circle(x, y, RING), Pen.REACH); // no cross-hair: a drill would find it
            return;
        }
        paper.draw(Paper.circle(x, y, RING), Pen.LEADER);
        paper.draw(Paper.circle(x, y, bitMm), Pen.MARK);
        double from = bitMm / 2 + CLEAR;
        paper.line(Pen.LEADER, x - ARM, y, x - from, y);
        paper.line(Pen.LEADER, x + from, y, x + ARM, y);
        paper.line(Pen.LEADER, x, y - ARM, x, y - from);
        paper.line(Pen.LEADER, x, y + from, x, y + ARM);
        paper.line(Pen.LEADER, x - CENTRE, y, x + CENTRE, y);
        paper.line(Pen.LEADER, x, y - CENTRE, x, y + CENTRE);
    }

    /** Number, collar and word in that box. */
    void words(Paper paper, Box label) {
        double middle = label.middleX();
        paper.haloText(
                number,
                drilled() ? middle : label.x() + NUMBER.width(number) / 2,
                label.y() + NUMBER.capMm(),
                NUMBER,
                Anchor.CENTRE,
                0.5);
        double bar = label.y() + OVER + 1.9;
        if (drilled()) {
            double half = STOP.width(stop) / 2 + 1;
            paper.draw(Paper.path(middle - half, bar, middle + half, bar), Pen.solid(BAR));
            paper.haloText(stop, middle, bar + 1.1 + STOP.capMm(), STOP, Anchor.CENTRE, 0.5);
        }
        double foot = drilled() ? label.bottom() - WORD.descentMm() : bar + WORD.capMm();
        paper.haloText(what, middle, foot, WORD, Anchor.CENTRE, 0.5);
    }

    /** Number and collar inside the ring, where there is no room beside it. */
    void wordsWithin(Paper paper) {
        double left = x + 1.2;
        paper.haloText(number, left, y - bitMm / 2 - 1.2, SMALL, Anchor.LEFT, 0.4);
        if (drilled()) {
            double bar = y + bitMm / 2 + 1.2;
            paper.draw(Paper.path(left, bar, left + SMALL.width(stop), bar), Pen.solid(BAR));
            paper.haloText(stop, left, bar + 0.8 + SMALL.capMm(), SMALL, Anchor.LEFT, 0.4);
        }
    }
}
