package corewright.report.cards;

import corewright.assessment.Assessment;
import corewright.damage.Region;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.repair.CutOut;
import corewright.repair.plan.Holding;
import corewright.report.page.Prose;
import corewright.survey.Meter;
import corewright.survey.settings.Resin;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The side for closing a cut: steps, plies, cups, and what to read before it is closed. */
final class CutOutBack {
    private static final double LEFT_WIDTH = 128;
    private static final double RIGHT_LEFT = 150;
    private static final double RIGHT_WIDTH = CardSheet.RIGHT - RIGHT_LEFT;
    private static final double ROW = 6.4;
    private static final double SECONDS_PER_HOUR = 3600;
    private static final double OUNCE_PER_YARD2 = 33.906; // grams per square metre: NIST SP 811 (2008), appendix B.8
    private static final Type HEADING = new Type(Typeface.TEXT_SEMIBOLD, 9);
    private static final Type CELL = new Type(Typeface.TEXT, 10.5);
    private static final Type STRONG = new Type(Typeface.TEXT_BOLD, 10.5);

    private final Assessment assessment;
    private final Region region;
    private final CutOut cut;
    private final Measure measure;

    CutOutBack(Assessment assessment, Region region, CutOut cut) {
        this.assessment = assessment;
        this.region = region;
        this.cut = cut;
        measure = Measure.of(assessment.survey());
    }

    private static Optional<Resin> resin(Assessment assessment) {
        return assessment.survey().settings().resins().stream()
                .filter(r -> r.structural() && r.expansion() <= 1)
                .findFirst();
    }

    static String facts(Assessment assessment) {
        return resin(assessment)
                .map(r -> Prose.bold("By weight, resin 100 to hardener " + Figures.atMost(100 * r.hardenerPerResin(), 1)
                                + ".")
                        + " Zero with the empty cup. Never more than "
                        + Figures.atMost(
                                assessment.survey().settings().drilling().largestBatchG(), 0)
                        + " g in one cup, then into the tray at once.")
                .orElse("No structural epoxy is listed that does not rise: its sheet says how it is mixed.");
    }

    void paint(Paper paper, int first) {
        double y = CardSheet.heading(paper, "Close", CardSheet.LEFT, CardSheet.BODY, LEFT_WIDTH);
        y = CardSteps.paint(paper, steps(), first, CardSheet.LEFT, y, LEFT_WIDTH);
        y = CardSheet.heading(paper, "Before closing, read", CardSheet.LEFT, y + 4, LEFT_WIDTH);
        y = readings(paper, y + 1);
        String words = measure.say(words());
        Prose.CELL.paint(paper, words, CardSheet.LEFT, y + 3, LEFT_WIDTH, Anchor.LEFT);
        double right = CardSheet.heading(paper, "Weigh", RIGHT_LEFT, CardSheet.BODY, RIGHT_WIDTH);
        right = cups(paper, right);
        right = CardSheet.heading(
                paper,
                cut.plies().isEmpty() ? "Plies" : "Plies, if laminated anew",
                RIGHT_LEFT,
                right + 5,
                RIGHT_WIDTH);
        plies(paper, right);
        sign(paper);
    }

    private List<CardSteps.Step> steps() {
        Holding holding = Holding.of(assessment.survey().face(region.face()).posture());
        int pieces = cut.columns() * cut.rows();
        List<CardSteps.Step> steps = new ArrayList<>();
        steps.add(new CardSteps.Step(
                "Dry fit " + pieces + " core " + (pieces == 1 ? "piece" : "pieces") + " of "
                        + cut.plan().core() + ", "
                        + measure.lengthFigure(cut.pieceAlongMm()) + " x " + measure.lengthFigure(cut.pieceAcrossMm())
                        + ", "
                        + measure.depthFigure(cut.plan().coreMm()) + " " + measure.depthUnit() + " thick",
                String.valueOf(pieces),
                1));
        steps.add(new CardSteps.Step("Wet out inner skin, core and edges", "", 1));
        steps.add(new CardSteps.Step("Bed and joints with filler, then the core in, no air under it", "", 1));
        steps.add(new CardSteps.Step("Film, boards, " + holding.thing() + ". Leave it until hard" + hours(), "", 1));
        steps.add(new CardSteps.Step("Key the core. Taps over it clear, a, b, c read as below", "", 1));
        steps.add(new CardSteps.Step(
                "Refit the kept skin in wetted filler, its edge ground to the scarf; or laminate the plies", "", 1));
        steps.add(new CardSteps.Step("Cured: tap all round, fair, fit what was taken off in sealed holes", "", 1));
        return steps;
    }

    private String hours() {
        double c = assessment.survey().settings().climate().temperatureC();
        return resin(assessment)
                .map(r ->
                        measure.say(", " + Figures.atMost(Math.ceil(r.hardS() * r.timeFactor(c) / SECONDS_PER_HOUR), 0)
                                + " h at " + Figures.atMost(c, 0) + " °C"))
                .orElse("");
    }

    private double readings(Paper paper, double top) {
        double x = CardSheet.LEFT;
        for (String letter : List.of("a", "b", "c")) {
            paper.text(letter, x, CardSheet.level(STRONG, top, CardSheet.BOX), STRONG, Anchor.LEFT);
            CardSheet.box(paper, x + 5, top, 20);
            x += 30;
        }
        CardSheet.box(paper, x, top, CardSheet.BOX);
        paper.text("taps clear", x + CardSheet.BOX + 2, CardSheet.level(CELL, top, CardSheet.BOX), CELL, Anchor.LEFT);
        return top + CardSheet.BOX;
    }

    private String words() {
        String meters = assessment.survey().meters().stream()
                .filter(m -> m.dry() != null)
                .map(CutOutBack::dry)
                .collect(Collectors.joining("; "));
        return (meters.isEmpty() ? "" : "Go on where the meter reads as over dry core or less (" + meters + "). ")
                + "A meter proves nothing: percent is from core plugs only. "
                + "The thickness of a ply is of glass laid by hand, a third of it glass (common practice); wetting 0.8 mm of it, bed 1.5 mm, joints 4 mm (common practice). The yard's schedule and the naval architect win"
                + " over this card.";
    }

    private static String dry(Meter m) {
        return Prose.plain(m.name()) + ": dry " + Figures.atMost(m.dry() == null ? 0 : m.dry(), 1);
    }

    private double cups(Paper paper, double top) {
        double[] at = {0, 62, 84, 108, RIGHT_WIDTH};
        head(paper, top, at, "for", "cups", "resin to, g", "hardener to, g", "weighed");
        double y = top + ROW;
        BigDecimal all = BigDecimal.ZERO;
        for (CutOut.Cups c : cut.cups()) {
            BigDecimal a = tenths(c.partAG());
            BigDecimal both = a.add(tenths(c.partBG()));
            all = all.add(both.multiply(BigDecimal.valueOf(c.count())));
            row(paper, y, at, CELL, c.step(), c.count() + " x", a.toPlainString(), both.toPlainString());
            CardSheet.box(paper, RIGHT_LEFT + RIGHT_WIDTH - 16, y + 0.6, 16, ROW - 1.2);
            y += ROW;
        }
        paper.line(Pen.EDGE, RIGHT_LEFT, y, CardSheet.RIGHT, y);
        row(paper, y, at, STRONG, "together", "", "", all.toPlainString());
        return y + ROW;
    }

    private static BigDecimal tenths(double grams) {
        return BigDecimal.valueOf(grams).setScale(1, RoundingMode.HALF_UP);
    }

    private void plies(Paper paper, double top) {
        if (cut.plies().isEmpty()) {
            Prose.CELL.paint(
                    paper,
                    "The skin's cloth is not known here: laminate as it was built, by the architect's schedule.",
                    RIGHT_LEFT,
                    top + 1,
                    RIGHT_WIDTH,
                    Anchor.LEFT);
            return;
        }
        double[] at = {0, 40, 84, 108, RIGHT_WIDTH};
        boolean us = measure == Measure.US;
        head(
                paper,
                top,
                at,
                "ply",
                us ? "glass, oz/yd²" : "glass, g/m²",
                "size, " + measure.depthUnit(),
                "epoxy, g",
                "thick, " + measure.depthUnit());
        double y = top + ROW;
        double thick = 0;
        double epoxy = 0;
        for (int i = 0; i < cut.plies().size(); i++) {
            CutOut.Ply ply = cut.plies().get(i);
            double mm = CutOut.thicknessMm(ply.clothGM2());
            thick += mm;
            epoxy += ply.epoxyG();
            row(
                    paper,
                    y,
                    at,
                    CELL,
                    String.valueOf(i + 1),
                    Figures.atMost(us ? ply.clothGM2() / OUNCE_PER_YARD2 : ply.clothGM2(), us ? 1 : 0),
                    measure.lengthFigure(ply.alongMm()) + " x " + measure.lengthFigure(ply.acrossMm()),
                    Figures.fixed(ply.epoxyG(), 0),
                    two(mm));
            y += ROW;
        }
        paper.line(Pen.EDGE, RIGHT_LEFT, y, CardSheet.RIGHT, y);
        row(paper, y, at, STRONG, "together", "", "", Figures.fixed(epoxy, 0), two(thick));
    }

    private String two(double mm) {
        return measure == Measure.US ? Figures.fixed(mm / Measure.MM_PER_INCH, 3) : Figures.fixed(mm, 2);
    }

    private static void head(Paper paper, double top, double[] at, String... words) {
        row(paper, top, at, HEADING, words);
        paper.line(Pen.MARK, RIGHT_LEFT, top + ROW, CardSheet.RIGHT, top + ROW);
    }

    private static void row(Paper paper, double top, double[] at, Type type, String... words) {
        double base = CardSheet.level(type, top, ROW);
        for (int i = 0; i < words.length; i++) {
            paper.text(words[i], RIGHT_LEFT + at[i], base, type, i == 0 ? Anchor.LEFT : Anchor.RIGHT);
        }
    }

    private void sign(Paper paper) {
        double y = CardSheet.BODY_END - 1;
        String words = assessment.decision().on(region.id()).architect() ? "Schedule decided by" : "Done by";
        paper.text(words, RIGHT_LEFT, y, STRONG, Anchor.LEFT);
        double x = RIGHT_LEFT + STRONG.width(words) + 2;
        paper.line(Pen.MARK, x, y + 1, RIGHT_LEFT + 78, y + 1);
        paper.text("date", RIGHT_LEFT + 82, y, CELL, Anchor.LEFT);
        paper.line(Pen.MARK, RIGHT_LEFT + 92, y + 1, CardSheet.RIGHT, y + 1);
    }
}
