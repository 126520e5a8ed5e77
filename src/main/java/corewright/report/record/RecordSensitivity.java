package corewright.report.record;

import corewright.assessment.Assessment;
import corewright.decision.Sensitivity;
import corewright.decision.Sensitivity.Bar;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.screen.SwingChart;
import corewright.report.page.Flow;
import corewright.report.page.PageFrame;
import corewright.report.page.Prose;
import corewright.report.page.SensitivityWords;
import java.util.List;

/** What moves the advised plan's cost and stiffness most: a chart and words for each. */
final class RecordSensitivity {
    private static final double WIDTH = (PageFrame.FULL_WIDTH - 6) / 2;
    private static final String KEY =
            "Each input alone goes from one end of its range to the other, all else as it is. Hatched: at its low end. Solid: at its "
                    + "high end. What is not in a chart moves nothing there worth telling.";

    private RecordSensitivity() {}

    /** Nothing where nothing moves anything. */
    static void of(Flow flow, Assessment assessment) {
        Sensitivity all = assessment.decision().weighing().sensitivity();
        if (assessment.verdict().withheld() || all.ofCost().isEmpty()) {
            return;
        }
        SensitivityWords words = new SensitivityWords(assessment);
        String currency = Prose.plain(assessment.survey().settings().costs().currency());
        SwingChart cost =
                chart("Cost of what is advised, " + currency, all.advised().cost(), all.ofCost(), 1, words);
        SwingChart stiffness = chart(
                "Stiffness after it, as built = 100",
                100 * all.advised().ofAsBuilt().orElse(1.0),
                all.ofStiffness(),
                100,
                words);
        List<String> below = List.of(
                words.cost(), all.advised().ofAsBuilt().isEmpty() ? "No panel was calculated." : words.stiffness());
        double height = Math.max(cost.heightMm(), stiffness.heightMm());
        double said = Math.max(Flow.SMALL.height(below.get(0), WIDTH), Flow.SMALL.height(below.get(1), WIDTH));
        double key = Flow.SMALL.height(KEY, PageFrame.FULL_WIDTH);
        flow.block(8 + key + height + said + 3, (paper, top) -> {
            PageFrame.hairline(paper, top);
            PageFrame.question(paper, "What moves cost and stiffness most", top + Flow.GAP);
            Flow.SMALL.paint(paper, KEY, PageFrame.LEFT, top + 7.5, PageFrame.FULL_WIDTH, Anchor.LEFT);
            double y = top + 8 + key;
            side(paper, cost, below.get(0), PageFrame.LEFT, y, height);
            side(paper, stiffness, below.get(1), PageFrame.LEFT + WIDTH + 6, y, height);
        });
    }

    private static SwingChart chart(String title, double middle, List<Bar> bars, double per, SensitivityWords words) {
        return new SwingChart(
                title,
                middle,
                bars.stream()
                        .map(b -> new SwingChart.Row(
                                SensitivityWords.name(b.input()),
                                words.range(b.input()),
                                per * b.atLow(),
                                per * b.atHigh()))
                        .toList());
    }

    private static void side(Paper paper, SwingChart chart, String words, double left, double top, double height) {
        if (!chart.rows().isEmpty()) {
            paper.figure(words, p -> chart.paint(p, new Box(left, top, WIDTH, height)));
        }
        double below = top + (chart.rows().isEmpty() ? 0 : height);
        Flow.SMALL.paint(paper, words, left, below, WIDTH, Anchor.LEFT);
    }
}
