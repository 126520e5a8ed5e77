package corewright.report.cards;

import corewright.assessment.Assessment;
import corewright.decision.BuyingItem;
import corewright.decision.LeftToDo;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.repair.mix.HeldCups;
import corewright.repair.plan.Batch;
import corewright.repair.plan.InjectionPlan;
import corewright.report.data.CupFigures;
import corewright.report.page.PdfFile;
import corewright.report.page.Prose;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Everything that is left once the work has begun: the cups of all regions on one clock, second shots, and what to buy. */
final class LeftCard {
    private static final int ROWS = 22;
    private static final double ROW = 7;
    private static final double LEFT_WIDTH = 138;
    private static final double RIGHT_LEFT = 160;
    private static final double RIGHT_WIDTH = CardSheet.RIGHT - RIGHT_LEFT;
    private static final double[] CUPS = {0, 12, 94, 119, 136};
    private static final double[] BUY = {0, RIGHT_WIDTH - 45, RIGHT_WIDTH - 22, RIGHT_WIDTH - 20};
    private static final Type HEADING = new Type(Typeface.TEXT_SEMIBOLD, 9);
    private static final Type CELL = new Type(Typeface.TEXT, 10);
    private static final Type STRONG = new Type(Typeface.TEXT_BOLD, 10);
    private static final double SECONDS_PER_MINUTE = 60;

    private final Assessment assessment;
    private final LeftToDo left;

    private LeftCard(Assessment assessment) {
        this.assessment = assessment;
        left = assessment.left();
    }

    /** None before any work. */
    static List<PdfFile.Painting> pages(Assessment assessment, String revision) {
        if (NextCard.wanted(assessment).isEmpty()) {
            return List.of();
        }
        LeftCard card = new LeftCard(assessment);
        List<Batch> cups = card.cups();
        int cupPages = Math.max(1, (cups.size() + ROWS - 1) / ROWS);
        int of = Math.max(cupPages, (card.left.buying().size() + ROWS - 1) / ROWS);
        List<PdfFile.Painting> pages = new ArrayList<>();
        for (int i = 0; i < of; i++) {
            int page = i;
            List<String> side = List.of("page " + (page + 1) + " of " + of, revision);
            pages.add(paper -> card.paint(paper, page, cupPages, side));
        }
        return pages;
    }

    /** Those for holes in the order of the day, then what is held back. */
    private List<Batch> cups() {
        List<Batch> cups = new ArrayList<>(
                left.plans().stream().flatMap(p -> p.batches().stream()).toList());
        cups.addAll(HeldCups.of(left.plans(), assessment.survey().settings()));
        return cups;
    }

    private void paint(Paper paper, int page, int cupPages, List<String> side) {
        CardSheet.head(paper, "Left to do", Measure.of(assessment.survey()).say(facts()), side);
        List<Batch> cups = cups();
        double top = CardSheet.heading(paper, "Cups to mix", CardSheet.LEFT, CardSheet.BODY, LEFT_WIDTH);
        double y = top;
        cells(paper, CardSheet.LEFT, y, CUPS, HEADING, "cup", "", "resin to, g", "hardener to, g", "mix at, min");
        paper.text("for holes", CardSheet.LEFT + CUPS[1], CardSheet.level(HEADING, y, ROW), HEADING, Anchor.LEFT);
        y += ROW;
        paper.line(Pen.MARK, CardSheet.LEFT, y, CardSheet.LEFT + LEFT_WIDTH, y);
        for (Batch cup : part(cups, page)) {
            CupFigures figures = CupFigures.of(cup);
            cells(
                    paper,
                    CardSheet.LEFT,
                    y,
                    CUPS,
                    CELL,
                    String.valueOf(cup.number()),
                    "",
                    figures.firstG().toPlainString(),
                    figures.secondG().toPlainString(),
                    Figures.fixed(cup.mixAtS() / SECONDS_PER_MINUTE, 0));
            fitted(paper, cup.region() + which(cup), CardSheet.LEFT + CUPS[1], y, 58);
            y += ROW;
            paper.line(Pen.FAINT, CardSheet.LEFT, y, CardSheet.LEFT + LEFT_WIDTH, y);
        }
        if (page == cupPages - 1) {
            paper.text(sums(), CardSheet.LEFT, CardSheet.level(STRONG, y, ROW), STRONG, Anchor.LEFT);
        }
        buying(paper, page);
    }

    private void buying(Paper paper, int page) {
        double y = CardSheet.heading(paper, "To have at hand", RIGHT_LEFT, CardSheet.BODY, RIGHT_WIDTH);
        cells(paper, RIGHT_LEFT, y, BUY, HEADING, "item", "needed", "buy");
        y += ROW;
        paper.line(Pen.MARK, RIGHT_LEFT, y, CardSheet.RIGHT, y);
        for (BuyingItem item : part(left.buying(), page)) {
            int decimals = item.unit().equals("g") ? 1 : 2;
            boolean grams = decimals == 1;
            cells(
                    paper,
                    RIGHT_LEFT,
                    y,
                    BUY,
                    CELL,
                    "",
                    grams ? Figures.fixed(item.plan(), 1) : Figures.atMost(item.plan(), decimals),
                    Figures.atMost(item.buy(), decimals));
            fitted(paper, item.item(), RIGHT_LEFT, y, BUY[1] - 14);
            paper.text(item.unit(), RIGHT_LEFT + BUY[3], CardSheet.level(CELL, y, ROW), CELL, Anchor.LEFT);
            y += ROW;
            paper.line(Pen.FAINT, RIGHT_LEFT, y, CardSheet.RIGHT, y);
        }
    }

    private String facts() {
        String done = assessment.work().progress().stream()
                .filter(p -> !p.log().holes().isEmpty())
                .map(p -> p.region())
                .reduce((a, b) -> a + ", " + b)
                .orElse("");
        return Prose.bold("Begun: " + done + ".")
                + " What the log has is taken off. Minute 0 is the first of these cups. What was bought already is not known"
                + " to the log: see what stands there first. A cut that was made still has its things in the list.";
    }

    /** Each mix over all its cups: the figures of the list. */
    private String sums() {
        List<String> sums = new ArrayList<>();
        for (String resin :
                left.plans().stream().map(InjectionPlan::resin).distinct().toList()) {
            BigDecimal partA = BigDecimal.ZERO;
            BigDecimal both = BigDecimal.ZERO;
            Set<String> regions = left.plans().stream()
                    .filter(p -> p.resin().equals(resin))
                    .map(InjectionPlan::region)
                    .collect(Collectors.toSet());
            for (Batch cup : cups()) {
                if (regions.contains(cup.region())) {
                    partA = partA.add(CupFigures.of(cup).firstG());
                    both = both.add(CupFigures.of(cup).secondG());
                }
            }
            sums.add(resin + ": " + partA.toPlainString() + " g and "
                    + both.subtract(partA).toPlainString() + " g");
        }
        return sums.isEmpty() ? "Every hole is filled: no further cup." : String.join("; ", sums);
    }

    private static <T> List<T> part(List<T> all, int page) {
        return all.subList(Math.min(all.size(), page * ROWS), Math.min(all.size(), (page + 1) * ROWS));
    }

    private static String which(Batch cup) {
        if (HeldCups.heldBack(cup)) {
            return ", held back: where no mix shows";
        }
        List<String> numbers = cup.holes().stream().map(Figures::holeNumber).toList();
        return ": "
                + (numbers.size() > 7
                        ? String.join(", ", numbers.subList(0, 6)) + " to " + numbers.get(numbers.size() - 1)
                        : String.join(", ", numbers));
    }

    private static void fitted(Paper paper, String words, double left, double top, double width) {
        Type type = CELL;
        while (type.width(words) > width && type.points() > 6.5) {
            type = type.at(type.points() - 0.5);
        }
        List<String> lines = type.wrap(words, width);
        for (int i = 0; i < lines.size(); i++) {
            double base = CardSheet.level(type, top, ROW) + (i - (lines.size() - 1) / 2.0) * type.leadMm() * 0.8;
            paper.text(lines.get(i), left, base, type, Anchor.LEFT);
        }
    }

    private static void cells(Paper paper, double left, double top, double[] at, Type type, String... words) {
        double base = CardSheet.level(type, top, ROW);
        for (int i = 0; i < words.length; i++) {
            paper.text(words[i], left + at[i], base, type, i == 0 ? Anchor.LEFT : Anchor.RIGHT);
        }
    }
}
