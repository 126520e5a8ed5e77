package corewright.report.cards;

import corewright.drawing.kit.Across;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.repair.plan.Hole;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Holes to be drilled and filled, each with what is planned and a box for what came of it. */
final class HoleTable {
    static final double WIDTH = 118;
    private static final double HEAD_HEIGHT = 11;
    private static final double FOOT = 194;
    private static final double ROOM = FOOT - CardSheet.TABLE_TOP - HEAD_HEIGHT;
    private static final double LEAST_ROW = 9.2;
    private static final double MOST_ROW = 12.4;
    private static final Type HEAD = new Type(Typeface.CONDENSED_SEMIBOLD, 10.5);
    private static final Type PLACE = new Type(Typeface.CONDENSED_SEMIBOLD, 14);
    private static final Type SMALL = new Type(Typeface.CONDENSED_SEMIBOLD, 9.5);
    private static final double SMALL_LEAD = 3.9;
    private static final Type CUP = new Type(Typeface.TEXT, 12);
    private static final Type TOOL = new Type(Typeface.CONDENSED_BOLD, 18);
    private static final Pen CUP_RULE = Pen.EDGE;
    private static final Pen COLLAR = new Pen(0.9, List.of());

    /** Middle of each column from the left. */
    private static final double HOLE = 5.5;

    private static final double AFT = 18.5;
    private static final double ACROSS = 33;
    private static final double STOP = 46;
    private static final double DRILLED = 58;
    private static final double FELT = 71;
    private static final double CUPS = 83.5;
    private static final double CUP_WIDTH = 8.5;
    private static final double GRAMS = 94.5;
    private static final double WENT = 110;
    private static final double WIDE = 15;
    private static final double VENT_GAP = 1.5;
    private static final String SEEN = "seen, min";

    /** Between the boxes for the depth felt and for what went in. */
    static final double VENT_ROOM = WENT - FELT - WIDE - 2 * VENT_GAP;

    static final Type VENT_TYPE = SMALL;

    private final InjectionCard card;
    private final List<Hole> holes;
    private final boolean last;
    private final HoleGrams grams;
    private final Across across;

    private HoleTable(InjectionCard card, List<Hole> holes, boolean last) {
        this.card = card;
        this.holes = holes;
        this.last = last;
        grams = card.grams();
        across = Across.of(card.face().face(), card.plan().holes());
    }

    /**
     * As many tables as it takes, the holes shared out evenly; the last has the total.
     *
     * @param cards as many tables where there are holes enough, so that each card has something to drill
     */
    static List<HoleTable> of(InjectionCard card, int cards) {
        List<Hole> all = card.plan().holes();
        int fit = (int) Math.floor(ROOM / LEAST_ROW + 1e-9) - 1;
        int tables = Math.max(Math.min(cards, all.size()), (all.size() + fit - 1) / fit);
        List<HoleTable> list = new ArrayList<>();
        for (int i = 0; i < tables; i++) {
            List<Hole> part = all.subList(all.size() * i / tables, all.size() * (i + 1) / tables);
            list.add(new HoleTable(card, part, i == tables - 1));
        }
        return list;
    }

    void paint(Paper paper, double left, double top) {
        head(paper, left, top);
        double row = Math.min(MOST_ROW, ROOM / (holes.size() + 1));
        double y = top + HEAD_HEIGHT;
        paper.line(Pen.EDGE, left, y, left + WIDTH, y);
        boolean totalled = false;
        for (int i = 0; i < holes.size(); i++) {
            Hole hole = holes.get(i);
            boolean vent = hole.kind() == Hole.Kind.VENT;
            if (vent && last && !totalled) {
                y = total(paper, left, y, row);
                totalled = true;
            }
            line(paper, hole, left, y, row);
            y += row;
            boolean nextCup = i + 1 < holes.size() && !card.cups(hole).equals(card.cups(holes.get(i + 1)));
            paper.line(nextCup ? CUP_RULE : Pen.FAINT, left, y, left + WIDTH, y);
        }
        if (last && !totalled) {
            total(paper, left, y, row);
        }
    }

    private void head(Paper paper, double left, double top) {
        head(paper, left + HOLE, top, "hole", "");
        head(paper, left + AFT, top, "aft", card.measure().depthUnit());
        head(paper, left + ACROSS, top, across.name(), card.measure().depthUnit());
        head(paper, left + STOP, top, "stop", card.measure().depthUnit());
        head(paper, left + DRILLED, top, "drilled", "");
        head(paper, left + FELT, top, "depth felt", card.measure().depthUnit());
        head(paper, left + CUPS, top, "cup", "");
        head(paper, left + GRAMS, top, "mix in", "g");
        head(paper, left + WENT, top, "went in", "g");
    }

    private static void head(Paper paper, double middle, double top, String name, String unit) {
        double foot = top + HEAD_HEIGHT - 2;
        paper.text(name, middle, unit.isEmpty() ? foot : foot - 4.2, HEAD, Anchor.CENTRE);
        if (!unit.isEmpty()) {
            paper.text(unit, middle, foot, HEAD, Anchor.CENTRE);
        }
    }

    private void line(Paper paper, Hole hole, double left, double y, double row) {
        double base = CardSheet.level(TOOL, y, row);
        double small = CardSheet.level(PLACE, y, row);
        paper.text(Figures.holeNumber(hole.id()), left + HOLE, base, TOOL, Anchor.CENTRE);
        paper.text(Across.signed(hole.spot().xMm(), card.measure(), 2), left + AFT, small, PLACE, Anchor.CENTRE);
        paper.text(across.figure(hole.spot().yMm(), card.measure(), 2), left + ACROSS, small, PLACE, Anchor.CENTRE);
        double box = y + (row - CardSheet.BOX) / 2;
        Hole.Nozzle nozzle = hole.nozzle();
        if (nozzle == null) {
            paper.text(card.measure().stopFigure(hole.depthStopMm()), left + STOP, base, TOOL, Anchor.CENTRE);
            double bar = base - TOOL.capMm() - 0.9;
            paper.line(COLLAR, left + STOP - 6, bar, left + STOP + 6, bar);
            CardSheet.box(paper, left + DRILLED - CardSheet.BOX / 2, box, CardSheet.BOX);
            CardSheet.box(paper, left + FELT - WIDE / 2, box, WIDE);
        } else {
            String push = card.measure().say("nozzle " + Figures.atMost(nozzle.pushMm(), 0) + " mm")
                    + (card.measure() == Measure.METRIC ? " in" : " deep");
            paper.text(push, left + STOP - 6, small, PLACE, Anchor.LEFT);
        }
        if (hole.kind() == Hole.Kind.VENT) {
            vent(paper, hole, left, y, row);
        } else {
            String cups = card.cups(hole);
            Type type = CUP.width(cups) <= CUP_WIDTH ? CUP : SMALL;
            paper.text(cups, left + CUPS, CardSheet.level(type, y, row), type, Anchor.CENTRE);
            String mix = Objects.requireNonNull(grams.ofHole().get(hole.id())).toPlainString();
            String range = range(hole);
            double lifted = range.isEmpty() ? base : base - SMALL_LEAD / 2;
            paper.text(mix, left + GRAMS, lifted, TOOL, Anchor.CENTRE);
            paper.text(range, left + GRAMS, lifted + SMALL_LEAD, SMALL, Anchor.CENTRE);
            CardSheet.box(paper, left + WENT - WIDE / 2, box, WIDE);
        }
    }

    /** Grams in a small and, with what is held back, in a large cavity; nothing where none were found. */
    private static String range(Hole hole) {
        return hole.range().highG() > 0
                ? Figures.atMost(hole.range().lowG(), 0) + " to "
                        + Figures.atMost(hole.range().highG(), 0)
                : "";
    }

    /** When mix is due at a vent by the simulation, what to give there if none shows, and a box for when it was seen. */
    private void vent(Paper paper, Hole hole, double left, double y, double row) {
        double due = card.plan()
                .fill()
                .arrivalS()
                .map(r -> r.cellAt(hole.spot().xMm(), hole.spot().yMm()))
                .orElse(Double.NaN);
        double box = left + WENT - WIDE / 2;
        List<String> words = words(due, hole.range().highG());
        double base = CardSheet.level(SMALL, y, row) - (words.size() - 1) * SMALL_LEAD / 2;
        for (int i = 0; i < words.size(); i++) {
            paper.text(words.get(i), box - VENT_GAP, base + i * SMALL_LEAD, SMALL, Anchor.RIGHT);
        }
        CardSheet.box(paper, box, y + (row - CardSheet.BOX) / 2, WIDE);
        if (!words.get(words.size() - 1).equals(SEEN)) {
            paper.text("min", box + WIDE - 1, CardSheet.level(SMALL, y, row), SMALL, Anchor.RIGHT);
        }
    }

    /** @param dueS NaN where mix is due at no time, but in a larger space */
    static List<String> words(double dueS, double heldG) {
        List<String> words = new ArrayList<>();
        if (!Double.isNaN(dueS)) {
            words.add("mix due " + CardClock.said(dueS));
        } else if (heldG > 0) {
            words.add("due only if large");
        }
        words.add(heldG > 0 ? "else " + Figures.atMost(heldG, 0) + " g" : SEEN);
        return words;
    }

    private double total(Paper paper, double left, double y, double row) {
        BigDecimal total = grams.total();
        double base = CardSheet.level(TOOL, y, row);
        double words = CardSheet.level(CardSheet.WORD, y, row);
        paper.text("together, g", left + CUPS + 2, words, CardSheet.WORD, Anchor.RIGHT);
        paper.text(total.toPlainString(), left + GRAMS, base, TOOL, Anchor.CENTRE);
        CardSheet.box(paper, left + WENT - WIDE / 2, y + (row - CardSheet.BOX) / 2, WIDE);
        paper.line(CUP_RULE, left, y + row, left + WIDTH, y + row);
        return y + row;
    }
}
