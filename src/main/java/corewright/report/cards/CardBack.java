package corewright.report.cards;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.repair.plan.Batch;
import corewright.repair.plan.Closing;
import corewright.repair.work.Schedule;
import corewright.repair.work.Schedule.Bar;
import corewright.report.data.CupFigures;
import corewright.report.page.Prose;
import corewright.report.page.Wording;
import corewright.survey.settings.Drilling;
import corewright.survey.settings.Resin;
import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The side for mixing: cups, the day as bars and as a list, when to stop, warmth, what holds the skin down. */
final class CardBack {
    /** Boxes beside each other; the list of the day takes what the cups leave free. */
    private static final int SLOTS = 4;

    private static final int MOST_CUPS = 2;

    private static final double GAP = 3;
    private static final double SLOT = (CardSheet.FULL_WIDTH - (SLOTS - 1) * GAP) / SLOTS;
    private static final double CUPS_HEIGHT = 52;
    private static final double DAY_TOP = CardSheet.BODY + CUPS_HEIGHT + 1.5;
    private static final double MOST_DAY = 38;
    private static final double NOTE_HEIGHT = 7;
    private static final double STOPS_WIDTH = 146;
    private static final double RIGHT_LEFT = CardSheet.LEFT + STOPS_WIDTH + 6;
    private static final double RIGHT_WIDTH = CardSheet.RIGHT - RIGHT_LEFT;
    private static final double SUM = 6.5;
    /** For the desk, not for gloves. */
    private static final Prose SMALL = new Prose(7.5, 3.3);

    private static final Prose SMALLEST = new Prose(6.5, 2.9);

    private static final Type NUMBER = new Type(Typeface.TEXT_BOLD, 16);
    private static final Type COLD = new Type(Typeface.TEXT_SEMIBOLD, 12);
    private static final Pen TODAY = new Pen(0.7, List.of());
    private static final double STEP_C = 5;

    private final InjectionCard card;
    private final List<Batch> cups;
    private final List<Bar> bars;
    private final double dayHeight;
    private final double bottomTop;

    /** @param cups those of this card, at most two */
    CardBack(InjectionCard card, List<Batch> cups) {
        this.card = card;
        this.cups = cups;
        bars = Schedule.of(
                        card.assessment().survey(), card.assessment().decision().injections())
                .of(card.plan().region())
                .bars();
        dayHeight = CardBars.height(cups, bars, MOST_DAY);
        bottomTop = DAY_TOP + dayHeight + NOTE_HEIGHT;
    }

    /** The cups of each back, in order. */
    static List<List<Batch>> cups(InjectionCard card) {
        List<Batch> all = card.plan().batches();
        int backs = Math.max(1, (all.size() + MOST_CUPS - 1) / MOST_CUPS);
        return IntStream.range(0, backs)
                .mapToObj(i -> all.subList(all.size() * i / backs, all.size() * (i + 1) / backs))
                .toList();
    }

    void paint(Paper paper, List<String> side) {
        CardSheet.head(paper, card.title() + " mix", facts(), side);
        double largest = card.settings().drilling().largestBatchG();
        for (int i = 0; i < cups.size(); i++) {
            Box box = new Box(CardSheet.LEFT + i * (SLOT + GAP), CardSheet.BODY, SLOT, CUPS_HEIGHT);
            new CardCup(paper, box).paint(cups.get(i), card.cupName(cups.get(i)), largest);
        }
        double left = CardSheet.LEFT + cups.size() * (SLOT + GAP) + 1;
        new CardDay(card, cups, bars).paint(paper, new Box(left, CardSheet.BODY, CardSheet.RIGHT - left, CUPS_HEIGHT));
        new CardBars(
                        paper,
                        new CardBars.Part(card, cups, bars),
                        new Box(CardSheet.LEFT, DAY_TOP, CardSheet.FULL_WIDTH, dayHeight))
                .paint();
        CardSheet.TEXT.paint(paper, underBars(), CardSheet.LEFT, bottomTop - 6, CardSheet.FULL_WIDTH, Anchor.LEFT);
        double y = stops(paper);
        String desk = mixing(paper, y) ? "" : " " + reach();
        y = warmth(paper);
        holding(paper, y, desk);
        boxes(paper);
    }

    private String facts() {
        Resin resin = card.resin();
        return Prose.bold("By weight, resin 100 to hardener " + Figures.atMost(100 * resin.hardenerPerResin(), 1) + ".")
                + " Zero the scale with the empty cup. Resin to the lower figure, hardener to the upper. Stir, scrape the"
                + " wall. Never more than "
                + Figures.atMost(card.settings().drilling().largestBatchG(), 0)
                + " g in one cup.";
    }

    /** How to read the bars; where the clock breaks the rule on rising cups, which ones to look at instead. */
    private String underBars() {
        if (card.resin().expansion() <= 1) {
            return "Open: mix. Solid: a hole. Line: work time.";
        }
        String rule = Prose.bold("A cup may be mixed while another rises only where their served areas do not touch.");
        List<String> early = cups.stream()
                .filter(this::mixedWhileOneRises)
                .map(c -> String.valueOf(card.cup(c)))
                .toList();
        if (!early.isEmpty()) {
            return rule + " Check " + (early.size() == 1 ? "cup " : "cups ") + Wording.list(early) + ".";
        }
        return "Open: mix. Solid: a hole. Line: work time. Wedge: it rises. " + rule;
    }

    private boolean mixedWhileOneRises(Batch cup) {
        return bars.stream()
                .filter(b -> b.what() == Schedule.What.RISE && b.batch() != cup.number())
                .anyMatch(b -> b.startS() <= cup.mixAtS() && cup.mixAtS() < b.endS());
    }

    private double stops(Paper paper) {
        double y = CardSheet.heading(paper, "Stop when", CardSheet.LEFT, bottomTop, STOPS_WIDTH);
        double words = CardSheet.LEFT + 8;
        double width = STOPS_WIDTH - 8;
        List<String> stops =
                card.words().stops().stream().map(card.measure()::say).toList();
        for (int i = 0; i < stops.size(); i++) {
            double height = CardSheet.TEXT.height(stops.get(i), width);
            paper.text(String.valueOf(i + 1), CardSheet.LEFT, y + 5.1, NUMBER, Anchor.LEFT);
            CardSheet.TEXT.paint(paper, stops.get(i), words, y + 0.7, width, Anchor.LEFT);
            y += height + 1.8;
            paper.line(Pen.FAINT, CardSheet.LEFT, y - 0.2, CardSheet.LEFT + STOPS_WIDTH, y - 0.2);
        }
        return y;
    }

    /** What to heed at the cups, and the reach where there is room for it; whether there was. */
    private boolean mixing(Paper paper, double top) {
        String words = card.measure()
                .say(Prose.bold(card.words().mixing()) + " "
                        + String.join(
                                " ", CardCautions.of(card.plan().cautions()).mixing()));
        double room = CardSheet.BODY_END - top - 0.8;
        String more = words + " " + card.measure().say(reach());
        boolean both = fitting(more, STOPS_WIDTH, room).points() >= Prose.NOTE.points();
        String all = both ? more : words;
        fitting(all, STOPS_WIDTH, room).paint(paper, all, CardSheet.LEFT, top + 0.8, STOPS_WIDTH, Anchor.LEFT);
        return both;
    }

    private String reach() {
        Drilling drilling = card.settings().drilling();
        return Prose.bold("Reach of a hole") + " in the middle gap: "
                + Figures.atMost(card.plan().reachMm(), 0)
                + " mm, set by the " + card.plan().reachGovernedBy() + "; relied on is "
                + Figures.atMost(100 * drilling.reachSafety(), 0) + " % of what is computed, at most "
                + Figures.atMost(drilling.reachCapMm(), 0) + " mm.";
    }

    /** The largest type that fits. */
    private static Prose fitting(String words, double width, double room) {
        return Stream.of(CardSheet.TEXT, Prose.NOTE, SMALL)
                .filter(p -> p.height(words, width) <= room)
                .findFirst()
                .orElse(SMALLEST);
    }

    /** Work time at the planned temperature, framed, and five degrees to either side. */
    private double warmth(Paper paper) {
        double y = CardSheet.heading(paper, "Work time depends on warmth", RIGHT_LEFT, bottomTop, RIGHT_WIDTH);
        Resin resin = card.resin();
        double today = card.settings().climate().temperatureC();
        double row = 6.6;
        paper.text("mix at", RIGHT_LEFT, CardSheet.level(CardSheet.WORD, y, row), CardSheet.WORD, Anchor.LEFT);
        paper.text("runs for", RIGHT_LEFT, CardSheet.level(CardSheet.WORD, y + row, row), CardSheet.WORD, Anchor.LEFT);
        double column = (RIGHT_WIDTH - 20) / 3;
        for (int i = 0; i < 3; i++) {
            double c = today + (i - 1) * STEP_C;
            double middle = RIGHT_LEFT + 20 + (i + 0.5) * column;
            double base = CardSheet.level(COLD, y, row);
            paper.text(
                    card.measure().say(Figures.atMost(c, 1).replace("-", "−") + " °C"),
                    middle,
                    base,
                    COLD,
                    Anchor.CENTRE);
            String runs = CardClock.said(resin.workS() * resin.timeFactor(c));
            paper.text(runs, middle, base + row, COLD, Anchor.CENTRE);
            if (i == 1) {
                paper.draw(new Rectangle2D.Double(middle - column / 2 + 1, y + 0.3, column - 2, 2 * row - 0.6), TODAY);
            }
        }
        paper.text(
                card.measure().say("Framed: as planned. Times halve for each 10 °C more."),
                RIGHT_LEFT,
                y + 2 * row + 4.4,
                CardSheet.WORD,
                Anchor.LEFT);
        return y + 2 * row + 6.5;
    }

    /** What holds the skin down and, at the foot, how the grams come about. */
    private void holding(Paper paper, double top, String desk) {
        double y = CardSheet.heading(paper, card.holding().head(), RIGHT_LEFT, top, RIGHT_WIDTH) + 0.3;
        String words = card.measure()
                .say(String.join(" ", CardCautions.of(card.plan().cautions()).holding()) + closing());
        String sum = card.measure()
                .say(Prose.bold("The grams.") + " "
                        + String.join(" ", card.plan().arithmetic()) + desk);
        double end = CardSheet.BODY_END - CardSheet.BOX - SUM;
        boolean full = SMALLEST.height(words, RIGHT_WIDTH) > end - SMALL.height(sum, RIGHT_WIDTH) - GAP - y;
        Prose type = full ? SMALLEST : SMALL;
        double foot = end - type.height(sum, RIGHT_WIDTH);
        fitting(words, RIGHT_WIDTH, foot - y - GAP).paint(paper, words, RIGHT_LEFT, y, RIGHT_WIDTH, Anchor.LEFT);
        type.paint(paper, sum, RIGHT_LEFT, foot, RIGHT_WIDTH, Anchor.LEFT);
    }

    /** Filled and faired when all has cured. */
    private String closing() {
        Closing closing = Closing.of(card.plan().holes());
        if (closing.holes() == 0) {
            return "";
        }
        String all = closing.holes() == 1 ? "the hole" : "all " + closing.holes() + " holes";
        return " " + Prose.bold("When cured") + " tap; dish " + all + ", fill flush ("
                + Figures.atMost(closing.fillerG(), 1) + " g), sand, touch up: "
                + Figures.atMost(60 * closing.hoursLow(), 0) + " to " + Figures.atMost(60 * closing.hoursHigh(), 0)
                + " min.";
    }

    private void boxes(Paper paper) {
        double top = CardSheet.BODY_END - CardSheet.BOX;
        BigDecimal mixed = card.plan().batches().stream()
                .map(b -> CupFigures.of(b).secondG())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        double heldG = card.plan().outlook().heldLikelyG();
        double moreG = card.plan().outlook().heldBackG() - heldG;
        String sum = "All cups " + mixed + " g: " + card.grams().total() + " g into holes."
                + (heldG > 0 ? " Held back " + Figures.atMost(heldG, 0) + " g" : "")
                + (moreG > 0 ? (heldG > 0 ? ", " : " ") + Figures.atMost(moreG, 0) + " g more if large" : "")
                + (heldG > 0 || moreG > 0 ? "." : "");
        paper.text(sum, RIGHT_LEFT, top - 2.2, CardSheet.WORD, Anchor.LEFT);
        double x = RIGHT_LEFT;
        double base = CardSheet.level(CardSheet.WORD, top, CardSheet.BOX);
        String degree = card.measure() == Measure.METRIC ? "°C" : "°F";
        for (String name : List.of("deck " + degree, "mix " + degree, "left, g", "done by")) {
            double word = CardSheet.WORD.width(name) + 1.2;
            paper.text(name, x, base, CardSheet.WORD, Anchor.LEFT);
            CardSheet.box(paper, x + word, top, RIGHT_WIDTH / 4 - word - 1.5);
            x += RIGHT_WIDTH / 4;
        }
    }
}
