package corewright.report.cards;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.repair.mix.Lifts;
import corewright.repair.plan.Batch;
import corewright.repair.work.Schedule.Bar;
import corewright.repair.work.Schedule.What;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The day of a region as a short list, minute 0 where its first cup is mixed. */
final class CardDay {
    /** @param atS on the card's clock */
    record Line(double atS, String words) {}

    private static final Type HEAD = new Type(Typeface.TEXT_BOLD, 12);
    private static final Type TIME = new Type(Typeface.TEXT_BOLD, 10.5);
    private static final Type WORDS = new Type(Typeface.TEXT, 10.5);
    private static final double LEAD = 4.4;
    private static final double TIMES = 17;

    /** From the top of the list to its first line, and left free under its last; more lines stand closer. */
    private static final double FIRST = 10;

    private static final double FOOT = 2;

    private final InjectionCard card;
    private final List<Batch> cups;
    private final List<Bar> bars;

    /** @param cups whose lines are told; what concerns all cups is told with any */
    CardDay(InjectionCard card, List<Batch> cups, List<Bar> bars) {
        this.card = card;
        this.cups = cups;
        this.bars = bars;
    }

    /** What is done when, in the order of the clock. */
    List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        for (Batch batch : cups) {
            List<Bar> own = bars.stream()
                    .filter(b -> b.batch() == batch.number())
                    .sorted(Comparator.comparingDouble(Bar::startS))
                    .toList();
            mixing(batch, own, lines);
            rising(batch, own, lines);
        }
        double hardS = bars.stream()
                .filter(b -> b.what() == What.HARD)
                .mapToDouble(Bar::startS)
                .max()
                .orElse(0);
        lines.add(line(hardS, card.plan().batches().size() > 1 ? "the last cup is hard" : "hard"));
        for (Bar bar : bars) {
            if (bar.what() == What.HOLD
                    && (bar.batch() == 0 || cups.stream().anyMatch(c -> c.number() == bar.batch()))) {
                lines.add(line(bar.startS(), held(bar)));
            } else if (bar.what() == What.LOAD) {
                lines.add(line(bar.startS(), card.holding().cured()));
            }
        }
        double heldS = bars.stream()
                .filter(b -> b.what() == What.HOLD)
                .mapToDouble(Bar::endS)
                .max()
                .orElse(hardS);
        lines.add(line(heldS, card.holding().thing() + " off"));
        lines.sort(Comparator.comparingDouble(Line::atS));
        return lines;
    }

    /** Weights lie where all is plugged; a plate is there before. */
    private String held(Bar bar) {
        String thing = card.holding().thing();
        if (bar.batch() == 0) {
            return thing + " on, holes left free";
        }
        boolean one = card.plan().batches().size() == 1;
        return thing + " on" + (one ? "" : " round cup " + cup(bar.batch()) + "’s holes") + ", all plugged";
    }

    private String cup(int batch) {
        return cups.stream()
                .filter(c -> c.number() == batch)
                .map(c -> String.valueOf(card.cup(c)))
                .findFirst()
                .orElse("");
    }

    private Line line(double atS, String words) {
        return new Line(atS - card.zeroS(), words);
    }

    private String clock(double atS) {
        return CardClock.minutes(atS - card.zeroS());
    }

    private void mixing(Batch batch, List<Bar> own, List<Line> lines) {
        double doneS = own.stream()
                .filter(b -> b.what() == What.INJECT)
                .mapToDouble(Bar::endS)
                .max()
                .orElse(batch.workUntilS());
        boolean helper = own.stream().anyMatch(b -> b.what() == What.MIX && b.worker() == 2);
        String late = doneS > batch.workUntilS() ? "" : ", work time ends at " + clock(batch.workUntilS());
        if (Lifts.number(batch, card.plan().batches()) > 1) {
            lines.add(line(batch.mixAtS(), "only when the lift below is hard and cold: clear the holes with a wire"));
        }
        lines.add(line(
                batch.mixAtS(),
                (helper ? "helper mixes " : "mix ") + card.cupName(batch) + "; in by " + clock(doneS) + late));
    }

    private void rising(Batch batch, List<Bar> own, List<Line> lines) {
        for (Bar bar : own) {
            if (bar.what() == What.RISE) {
                lines.add(line(bar.startS(), "cup " + card.cup(batch) + " rises, until " + clock(bar.endS())));
            } else if (bar.what() == What.FEEL) {
                lines.add(line(
                        bar.startS(),
                        "feel cup " + card.cup(batch) + "’s holes by hand; warm until " + clock(coldS(own, bar))));
            }
        }
    }

    private static double coldS(List<Bar> own, Bar round) {
        return own.stream()
                .filter(b -> b.what() == What.WARM)
                .mapToDouble(Bar::endS)
                .max()
                .orElse(round.endS());
    }

    void paint(Paper paper, Box box) {
        String head = card.zeroS() > 0
                ? "The day, from the first cup: minute " + CardClock.minutes(card.zeroS()) + " of the whole day"
                : "The day, from the first cup";
        paper.text(head, box.x(), box.y() + 4, HEAD, Anchor.LEFT);
        List<Line> lines = lines();
        int parts = lines.stream().mapToInt(l -> wrapped(l, box).size()).sum();
        double lead = Math.min(LEAD, (box.height() - FIRST - FOOT) / Math.max(1, parts - 1));
        double y = box.y() + FIRST;
        for (Line line : lines) {
            paper.text(CardClock.said(line.atS), box.x() + TIMES - 2, y, TIME, Anchor.RIGHT);
            for (String part : wrapped(line, box)) {
                paper.text(part, box.x() + TIMES, y, WORDS, Anchor.LEFT);
                y += lead;
            }
        }
    }

    private static List<String> wrapped(Line line, Box box) {
        return WORDS.wrap(line.words, box.width() - TIMES);
    }
}
