package corewright.report.owner;

import corewright.assessment.Assessment;
import corewright.damage.Quantiles;
import corewright.decision.Choice;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.drawing.screen.Chart.Axis;
import corewright.report.page.Flow;
import corewright.report.page.PageFrame;
import corewright.report.page.Prose;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Cost against stiffness: a row a choice, its range of cost at the left and of stiffness at the right. */
final class ChoiceChart {
    private static final double ROW = 6;
    private static final double HEAD = 7;
    private static final double FOOT = 6;
    private static final double COST = 68;
    private static final double STIFFNESS = 134;
    private static final double WIDTH = 54;
    private static final Type NAME = new Type(Typeface.TEXT, 9);
    private static final Type TITLE = new Type(Typeface.TEXT_SEMIBOLD, 8.5);
    private static final Type TICK = new Type(Typeface.TEXT, 7.5);

    private ChoiceChart() {}

    /** Nothing where there is nothing to compare. */
    static void of(Flow flow, Assessment assessment) {
        List<Choice> choices = assessment.decision().choices();
        if (assessment.verdict().withheld()
                || choices.size() < 2
                || choices.stream().anyMatch(c -> c.ofAsBuilt().isEmpty())) {
            return;
        }
        String currency = Prose.plain(assessment.survey().settings().costs().currency());
        Axis cost =
                Axis.upTo(choices.stream().mapToDouble(Choice::costHigh).max().orElse(1), "Cost, " + currency);
        double stiffest = choices.stream()
                .flatMap(c -> c.ofAsBuilt().stream())
                .mapToDouble(Quantiles::p90)
                .max()
                .orElse(1);
        Axis stiffness = stiffest > 1.2
                ? Axis.upTo(100 * stiffest, "Stiffness*, as built = 100")
                : new Axis("Stiffness*, as built = 100", 120, 6);
        double height = 2 * Flow.GAP + HEAD + choices.size() * ROW + FOOT;
        flow.block(height, (paper, top) -> {
            PageFrame.hairline(paper, top);
            PageFrame.question(paper, "Cost against stiffness", top + Flow.GAP);
            paper.figure(
                    "The figures of the table above as bars: what each choice costs, and what stiffness it leaves.",
                    p -> {
                        double y = top + Flow.GAP + HEAD;
                        double foot = y + choices.size() * ROW;
                        axis(p, cost, COST, y, foot);
                        axis(p, stiffness, STIFFNESS, y, foot);
                        for (Choice choice : choices) {
                            row(p, choice, cost, stiffness, y + ROW / 2);
                            y += ROW;
                        }
                    });
        });
    }

    private static void axis(Paper paper, Axis axis, double left, double top, double foot) {
        paper.text(axis.title(), left, top - 2, TITLE, Anchor.LEFT);
        paper.line(Pen.FAINT, left, foot, left + WIDTH, foot);
        for (int i = 0; i <= axis.parts(); i++) {
            double x = left + WIDTH * i / axis.parts();
            paper.line(Pen.FAINT, x, foot, x, foot + 1);
            paper.text(Figures.fixed(axis.end() * i / axis.parts(), 0), x, foot + 4, TICK, Anchor.CENTRE);
        }
        paper.line(Pen.FAINT, left, top, left, foot);
    }

    private static void row(Paper paper, Choice choice, Axis cost, Axis stiffness, double y) {
        Type name = (choice.advised() ? new Type(Typeface.TEXT_BOLD, NAME.points()) : NAME)
                .within(choice.title(), COST - PageFrame.LEFT - 3, 1);
        paper.text(Prose.plain(choice.title()), PageFrame.LEFT, y + NAME.capMm() / 2, name, Anchor.LEFT);
        double middle = (choice.costLow() + choice.costHigh()) / 2;
        bar(paper, cost, COST, new Quantiles(choice.costLow(), middle, choice.costHigh()), y);
        choice.ofAsBuilt().ifPresent(q -> bar(paper, stiffness, STIFFNESS, q.times(100), y));
    }

    /** The middle as a tall tick. */
    private static void bar(Paper paper, Axis axis, double left, Quantiles range, double y) {
        double per = WIDTH / axis.end();
        double from = left + range.p10() * per;
        paper.fill(new Rectangle2D.Double(from, y - 0.7, (range.p90() - range.p10()) * per, 1.4));
        paper.fill(new Rectangle2D.Double(left + range.p50() * per - 0.45, y - 2, 0.9, 4));
    }
}
