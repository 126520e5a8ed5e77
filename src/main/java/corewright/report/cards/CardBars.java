package corewright.report.cards;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Tone;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.repair.plan.Batch;
import corewright.repair.work.Schedule.Bar;
import corewright.repair.work.Schedule.What;
import java.awt.Color;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * The day of a region over time, a lane a cup: an open box for mixing, a solid bar for each hole, a line until the work time
 * ends, a wedge that grows while the mix rises, a bracket while its warmth can be felt; below them what holds the skin. What comes
 * hours later stands behind a break of the axis.
 */
final class CardBars {
    private static final Set<What> ON_AXIS = EnumSet.of(What.MIX, What.INJECT, What.LEAVE, What.RISE, What.WARM);
    private static final double NAMES = 22;
    private static final double LATER = 58;
    private static final double LATER_WORDS = 19;
    private static final double LATER_LEAD = 5.6;
    private static final double AXIS = 6;

    /** What comes hours later takes three lines. */
    private static final double LEAST = 17;

    private static final double MOST_LANE = 9.5;
    private static final double BAR = 5.4;
    private static final Color RISING = new Color(0xCCCCCC);
    private static final Type NAME = new Type(Typeface.TEXT_BOLD, 11.5);
    private static final Type MINUTE = new Type(Typeface.TEXT_SEMIBOLD, 10.5);
    private static final Type WORD = new Type(Typeface.TEXT_SEMIBOLD, 9.5);
    private static final Type ON_BAR = new Type(Typeface.CONDENSED_BOLD, 9);
    private static final int[] STEPS = {1, 2, 5, 10, 20, 30, 60, 120, 240};
    private static final double LEAST_STEP = 13;

    /**
     * What is drawn of a region.
     *
     * @param cups a lane each
     * @param bars of the whole region
     */
    record Part(InjectionCard card, List<Batch> cups, List<Bar> bars) {}

    private final Paper paper;
    private final InjectionCard card;
    private final List<Batch> cups;
    private final List<Bar> bars;
    private final Box box;
    private final double startS;
    private final double endS;
    private final double lane;

    CardBars(Paper paper, Part part, Box box) {
        this.paper = paper;
        this.card = part.card;
        this.cups = part.cups;
        this.bars = part.bars;
        this.box = box;
        startS = cups.get(0).mixAtS();
        endS = bars.stream()
                .filter(b -> ON_AXIS.contains(b.what()))
                .filter(b -> cups.stream().anyMatch(c -> c.number() == b.batch()))
                .mapToDouble(Bar::endS)
                .max()
                .orElse(startS + 60);
        lane = Math.min(MOST_LANE, (box.height() - AXIS) / lanes(cups, bars));
    }

    /** Paper that it takes downwards, at most {@code most}. */
    static double height(List<Batch> cups, List<Bar> bars, double most) {
        return Math.min(most, Math.max(LEAST, AXIS + MOST_LANE * lanes(cups, bars) + 1));
    }

    private static int lanes(List<Batch> cups, List<Bar> bars) {
        return cups.size() + (held(bars) ? 1 : 0);
    }

    private static boolean held(List<Bar> bars) {
        return bars.stream().anyMatch(b -> b.what() == What.HOLD);
    }

    private double axisEnd() {
        return box.right() - LATER;
    }

    private double x(double dayS) {
        double left = box.x() + NAMES;
        return left + (dayS - startS) / (endS - startS) * (axisEnd() - 6 - left);
    }

    void paint() {
        double y = box.y() + AXIS;
        double foot = y + lane * lanes(cups, bars);
        axis(y, foot);
        for (Batch batch : cups) {
            cup(batch, y);
            y += lane;
        }
        if (held(bars)) {
            hold(y);
        }
        later(foot);
    }

    private void axis(double top, double foot) {
        int step = STEPS[STEPS.length - 1];
        double perMinute = x(card.zeroS() + 60) - x(card.zeroS());
        for (int i = STEPS.length - 1; i >= 0 && STEPS[i] * perMinute >= LEAST_STEP; i--) {
            step = STEPS[i];
        }
        paper.text("minute", box.x(), box.y() + 3.6, CardSheet.WORD, Anchor.LEFT);
        int first = (int) Math.ceil((startS - card.zeroS()) / 60 / step) * step;
        for (int minute = first; card.zeroS() + minute * 60.0 <= endS; minute += step) {
            double x = x(card.zeroS() + 60.0 * minute);
            paper.text(Figures.fixed(minute, 0), x, box.y() + 3.6, MINUTE, Anchor.CENTRE);
            paper.line(Pen.FAINT, x, top - 1, x, foot);
        }
        double end = axisEnd();
        paper.line(Pen.EDGE, box.x() + NAMES, foot, end - 3, foot);
        paper.line(Pen.EDGE, end - 4, foot + 1.6, end - 2, foot - 1.6);
        paper.line(Pen.EDGE, end - 2, foot + 1.6, end, foot - 1.6);
        paper.line(Pen.EDGE, end - 1, foot, box.right(), foot);
    }

    private void cup(Batch batch, double top) {
        double foot = top + (lane + BAR) / 2;
        paper.text("Cup " + card.cup(batch), box.x(), foot - 0.9, NAME, Anchor.LEFT);
        for (Bar bar : bars) {
            if (bar.batch() == batch.number()) {
                bar(bar, foot);
            }
        }
    }

    private void bar(Bar bar, double foot) {
        double from = x(bar.startS());
        double to = x(bar.endS());
        Rectangle2D whole = new Rectangle2D.Double(from, foot - BAR, to - from, BAR);
        switch (bar.what()) {
            case MIX -> {
                paper.fill(whole, Tone.WHITE);
                paper.draw(whole, Pen.MARK);
            }
            case INJECT -> {
                paper.fill(whole);
                String number = Figures.holeNumber(bar.hole());
                if (ON_BAR.width(number) + 0.8 <= to - from) {
                    paper.text(
                            number,
                            (from + to) / 2,
                            foot - (BAR - ON_BAR.capMm()) / 2,
                            ON_BAR,
                            Anchor.CENTRE,
                            Tone.WHITE);
                }
            }
            case LEAVE -> {
                paper.line(Pen.MARK, from, foot - BAR / 2, to, foot - BAR / 2);
                paper.line(Pen.MARK, to, foot - BAR, to, foot);
            }
            case RISE -> wedge(from, to, foot);
            case WARM -> warm(from, to, foot);
            default -> {}
        }
    }

    private void wedge(double from, double to, double foot) {
        Path2D wedge = new Path2D.Double();
        wedge.moveTo(from, foot);
        wedge.lineTo(to, foot);
        wedge.lineTo(to, foot - BAR);
        wedge.closePath();
        paper.fill(wedge, RISING);
        paper.draw(wedge, Pen.MARK);
        if (to - from > 2.4 * WORD.width("rises")) {
            paper.text("rises", from + 2, foot - 2.4, WORD, Anchor.LEFT);
        }
    }

    /** Beyond the wedge's end there is room for the word. */
    private void warm(double from, double to, double foot) {
        double y = foot + 1.3;
        paper.line(Pen.MARK, from, y - 1, from, y, to, y, to, y - 1);
        if (WORD.width("feel by hand") + 1 < to - x(riseEndS(to))) {
            paper.haloText("feel by hand", to - 0.8, foot - 0.6, WORD, Anchor.RIGHT, 0.6);
        }
    }

    /** The last rise that ends before a place on the axis. */
    private double riseEndS(double beforeX) {
        return bars.stream()
                .filter(b -> b.what() == What.RISE && x(b.endS()) <= beforeX)
                .mapToDouble(Bar::endS)
                .max()
                .orElse(startS);
    }

    /** From the first of this card's cups on. */
    private void hold(double top) {
        double heldS = bars.stream()
                .filter(b -> b.what() == What.HOLD)
                .filter(b -> b.batch() == 0 || cups.stream().anyMatch(c -> c.number() == b.batch()))
                .mapToDouble(Bar::startS)
                .min()
                .orElse(endS);
        double foot = top + (lane + BAR) / 2;
        paper.text(card.holding().thing(), box.x(), foot - 0.9, NAME, Anchor.LEFT);
        double from = x(Math.max(startS, Math.min(endS, heldS)));
        double to = axisEnd() - 3;
        paper.fill(new Rectangle2D.Double(from, foot - BAR, to - from, BAR), RISING);
        paper.line(Pen.MARK, to, foot - BAR, from, foot - BAR, from, foot, to, foot);
        String words = card.holding().meanwhile();
        boolean inside = WORD.width(words) + 3 < to - from;
        paper.text(words, inside ? from + 2 : from - 2, foot - 1.2, WORD, inside ? Anchor.LEFT : Anchor.RIGHT);
    }

    /** Hard, hold off, load: each with its hour. */
    private void later(double foot) {
        double left = axisEnd() + 5;
        paper.line(Pen.EDGE, left - 2.5, box.y() + 0.5, left - 2.5, foot);
        double y = box.y() + 3.6;
        y = later(latest(What.HARD), "hard", left, y);
        if (held(bars)) {
            y = later(latest(What.HOLD), card.holding().thing() + " off", left, y);
        }
        later(latest(What.LOAD), card.holding().use() + "; tap, sign", left, y);
    }

    private double later(double atS, String words, double left, double y) {
        paper.text(CardClock.said(atS - card.zeroS()), left, y, NAME, Anchor.LEFT);
        paper.text(words, left + LATER_WORDS, y, CardSheet.WORD, Anchor.LEFT);
        return y + LATER_LEAD;
    }

    private double latest(What what) {
        return bars.stream()
                .filter(b -> b.what() == what)
                .mapToDouble(Bar::endS)
                .max()
                .orElse(0);
    }
}
