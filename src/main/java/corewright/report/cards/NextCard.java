package corewright.report.cards;

import corewright.assessment.Assessment;
import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.work.CuredFill;
import corewright.repair.work.NextPapers;
import corewright.repair.work.WorkLog;
import corewright.repair.work.WorkProgress;
import corewright.report.page.Prose;
import corewright.survey.About;
import corewright.survey.Finding;
import corewright.survey.Subject;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is next in a region whose filling has begun: holes done and open, the cups for the rest, and what the log means. */
final class NextCard {
    /** What is left is less than with wider grids: docs/performance.md. */
    private static final String AFTER_CURE =
            Prose.bold("Once it is hard, tap the whole fill every 40 mm, and two rows past its edge.")
                    + " Enter the taps as cured_taps and run again: hollow places get second shots.";

    private static final double LEFT_WIDTH = 118;
    private static final double RIGHT_LEFT = 140;
    private static final double RIGHT_WIDTH = CardSheet.RIGHT - RIGHT_LEFT;
    private static final double ROW = 7;
    private static final double MOST_ROWS = 166;
    private static final double[] HOLES = {0, 36, 60, 84, 88};
    private static final double[] CUPS = {0, 12, 98, 121};
    private static final Type HEADING = new Type(Typeface.TEXT_SEMIBOLD, 9);
    private static final Type CELL = new Type(Typeface.TEXT, 10.5);
    private static final Type STRONG = new Type(Typeface.TEXT_BOLD, 10.5);

    private final Assessment assessment;
    private final InjectionPlan plan;
    private final WorkLog log;
    private final Quantiles cavityMm3;
    private final NextPapers papers;
    private final Measure measure;

    NextCard(Assessment assessment, WorkProgress progress) {
        this.assessment = assessment;
        plan = plan(assessment, progress);
        log = progress.log();
        cavityMm3 = progress.cavityMm3();
        papers = NextPapers.of(assessment.survey(), plan, log);
        measure = Measure.of(assessment.survey());
    }

    /** Regions that are begun. */
    static List<WorkProgress> wanted(Assessment assessment) {
        return assessment.work().progress().stream()
                .filter(p -> !p.log().holes().isEmpty())
                .toList();
    }

    private static InjectionPlan plan(Assessment assessment, WorkProgress progress) {
        return assessment.decision().injections().stream()
                .filter(p -> p.region().equals(progress.region()))
                .findFirst()
                .orElseThrow();
    }

    void paint(Paper paper, List<String> side) {
        CardSheet.head(paper, plan.region() + " next", measure.say(facts()), side);
        double y = CardSheet.heading(paper, "Holes", CardSheet.LEFT, CardSheet.BODY, LEFT_WIDTH);
        holes(paper, y);
        double right = CardSheet.heading(paper, "Next cups", RIGHT_LEFT, CardSheet.BODY, RIGHT_WIDTH);
        right = cups(paper, right);
        right = CardSheet.heading(paper, "What the log means", RIGHT_LEFT, right + 3, RIGHT_WIDTH);
        String words = measure.say(words());
        double room = CardSheet.BODY_END - right;
        Stream.of(CardSheet.TEXT, Prose.CELL, Prose.NOTE, new Prose(7.5, 3.3))
                .filter(p -> p.height(words, RIGHT_WIDTH) <= room)
                .findFirst()
                .orElse(new Prose(6.5, 2.8))
                .paint(paper, words, RIGHT_LEFT, right + 0.5, RIGHT_WIDTH, Anchor.LEFT);
    }

    private String facts() {
        long done = papers.holes().stream().filter(NextPapers.Line::done).count();
        return Prose.bold(done + " of " + papers.holes().size() + " holes filled, " + papers.takenG() + " g in, about "
                        + papers.leftG() + " g to go.")
                + " Holes take " + Figures.fixed(log.factor(), 2) + " times their plan (in 8 cases of 10 between "
                + Figures.fixed(log.factorP10(), 2) + " and " + Figures.fixed(log.factorP90(), 2)
                + "). With it the cavity holds " + range(cavityMm3) + " litres, by the readings alone "
                + range(plan.cavityMm3()) + "."
                + (log.leftG() > 0 ? " Have mix for " + Figures.fixed(log.leftP90G(), 0) + " g at hand." : "");
    }

    private static String range(Quantiles mm3) {
        return Figures.litres(mm3.p10()) + " to " + Figures.litres(mm3.p90());
    }

    private void holes(Paper paper, double top) {
        double row = Math.min(ROW, MOST_ROWS / (papers.holes().size() + 2));
        row(paper, CardSheet.LEFT, top, row, HOLES, HEADING, "hole", "planned, g", "in, g", "to go, g", "");
        paper.line(Pen.MARK, CardSheet.LEFT, top + row, CardSheet.LEFT + LEFT_WIDTH, top + row);
        double y = top + row;
        BigDecimal planned = BigDecimal.ZERO;
        for (NextPapers.Line line : papers.holes()) {
            boolean done = line.done();
            planned = planned.add(line.plannedG());
            row(
                    paper,
                    CardSheet.LEFT,
                    y,
                    row,
                    HOLES,
                    done ? CELL : STRONG,
                    line.hole(),
                    line.plannedG().toPlainString(),
                    line.logged() ? line.takenG().toPlainString() : "",
                    done ? "" : line.leftG().toPlainString(),
                    "");
            paper.text(
                    done ? "done" : line.logged() ? "again" : "open",
                    CardSheet.LEFT + HOLES[4],
                    CardSheet.level(CELL, y, row),
                    done ? CELL : STRONG,
                    Anchor.LEFT);
            if (!done) {
                CardSheet.box(paper, CardSheet.LEFT + LEFT_WIDTH - 16, y + 0.6, 16, row - 1.2);
            }
            y += row;
            paper.line(Pen.FAINT, CardSheet.LEFT, y, CardSheet.LEFT + LEFT_WIDTH, y);
        }
        row(
                paper,
                CardSheet.LEFT,
                y,
                row,
                HOLES,
                STRONG,
                "together",
                planned.toPlainString(),
                papers.takenG().toPlainString(),
                papers.leftG().toPlainString(),
                "");
    }

    private double cups(Paper paper, double top) {
        double row = Math.min(ROW, 75.0 / (papers.cups().size() + 3));
        row(paper, RIGHT_LEFT, top, row, CUPS, HEADING, "cup", "", "resin to, g", "hardener to, g");
        paper.text("for holes", RIGHT_LEFT + CUPS[1], CardSheet.level(HEADING, top, row), HEADING, Anchor.LEFT);
        paper.line(Pen.MARK, RIGHT_LEFT, top + row, CardSheet.RIGHT, top + row);
        double y = top + row;
        BigDecimal resin = BigDecimal.ZERO;
        BigDecimal hardener = BigDecimal.ZERO;
        for (NextPapers.Cup cup : papers.cups()) {
            resin = resin.add(cup.partAG());
            hardener = hardener.add(cup.partBG());
            row(
                    paper,
                    RIGHT_LEFT,
                    y,
                    row,
                    CUPS,
                    CELL,
                    String.valueOf(cup.number()),
                    "",
                    cup.partAG().toPlainString(),
                    cup.bothG().toPlainString());
            paper.text(which(cup.holes()), RIGHT_LEFT + CUPS[1], CardSheet.level(CELL, y, row), CELL, Anchor.LEFT);
            CardSheet.box(paper, CardSheet.RIGHT - 20, y + 0.6, 20, row - 1.2);
            y += row;
        }
        paper.line(Pen.EDGE, RIGHT_LEFT, y, CardSheet.RIGHT, y);
        String sum = papers.cups().isEmpty()
                ? "Every hole is filled: no further cup."
                : "Cups together " + papers.mixedG() + " g; still to mix: " + resin + " g resin, " + hardener
                        + " g hardener.";
        paper.text(sum, RIGHT_LEFT, CardSheet.level(STRONG, y, row), STRONG, Anchor.LEFT);
        return y + row;
    }

    private static String which(List<String> holes) {
        List<String> numbers = holes.stream().map(Figures::holeNumber).toList();
        return numbers.size() > 6
                ? String.join(", ", numbers.subList(0, 5)) + " to " + numbers.get(numbers.size() - 1)
                : String.join(", ", numbers);
    }

    /** Findings on its holes, the gravest first; then places still hollow after cure. */
    private String words() {
        List<String> own = plan.holes().stream().map(h -> h.id()).toList();
        String said = assessment.findings().stream()
                .filter(f -> f.subject() == Subject.WORK_LOG || f.subject() == Subject.FILL_CHECK)
                .filter(f -> f.about() instanceof About.OfHole hole ? own.contains(hole.id()) : here(f))
                .map(f -> Prose.bold(Prose.plain(f.message())) + " " + Prose.plain(f.effect()))
                .collect(Collectors.joining("\n"));
        String hollow = assessment.work().cured().stream()
                .filter(c -> c.region().equals(plan.region()))
                .map(CuredFill::shots)
                .flatMap(List::stream)
                .map(s -> Prose.bold("Second shot " + s.id() + ".") + " Leave a hole beside it open as its vent.")
                .collect(Collectors.joining("\n"));
        boolean tapped =
                assessment.work().cured().stream().anyMatch(c -> c.region().equals(plan.region()));
        return Stream.of(
                        said.isEmpty() && hollow.isEmpty()
                                ? "Every hole took about what was planned."
                                        + (papers.cups().isEmpty() ? "" : " Go on with the next cup.")
                                : "",
                        said,
                        hollow,
                        tapped ? "" : AFTER_CURE)
                .filter(w -> !w.isEmpty())
                .collect(Collectors.joining("\n"));
    }

    private boolean here(Finding finding) {
        var spot = finding.about().spot();
        return spot != null
                && finding.subject() == Subject.FILL_CHECK
                && assessment.damage().regions().stream()
                        .filter(r -> plan.part(r.id()).isPresent() && r.face().equals(spot.face()))
                        .map(Region::likely)
                        .anyMatch(a -> a.distance(a.getFactory().createPoint(spot.coordinate())) == 0);
    }

    private static void row(Paper paper, double left, double top, double row, double[] at, Type type, String... words) {
        double base = CardSheet.level(type, top, row);
        for (int i = 0; i < words.length; i++) {
            paper.text(words[i], left + at[i], base, type, i == 0 ? Anchor.LEFT : Anchor.RIGHT);
        }
    }
}
