package corewright.report.record;

import corewright.assessment.Assessment;
import corewright.decision.Method;
import corewright.decision.drying.DryingCurve;
import corewright.decision.drying.DryingTime;
import corewright.decision.drying.DryingTimes;
import corewright.decision.drying.Way;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.screen.ChartPainter;
import corewright.report.page.DryingChart;
import corewright.report.page.Flow;
import corewright.report.page.PageFrame;
import corewright.report.page.Prose;

/** How the wet core dries that is advised to be dried, or that was read meanwhile: water against days, with the gate. */
final class RecordDrying {
    private static final double CHART = 56;
    private static final double WIDTH = 104;

    private RecordDrying() {}

    static void of(Flow flow, Assessment assessment) {
        if (assessment.verdict().withheld()) {
            return;
        }
        for (DryingTime time : assessment.decision().weighing().drying()) {
            if (time.way() == Way.THROUGH_HOLES) {
                boolean advised = assessment.decision().on(time.region()).method() == Method.DRY_OUT;
                assessment.damage().regions().stream()
                        .filter(r -> r.id().equals(time.region()))
                        .flatMap(r -> DryingTimes.curve(assessment.survey(), r).stream())
                        .filter(c -> advised || !c.readings().isEmpty())
                        .forEach(c -> one(flow, c, words(time, c)));
            }
        }
    }

    private static void one(Flow flow, DryingCurve curve, String words) {
        double left = PageFrame.LEFT + WIDTH + 4;
        double beside = PageFrame.RIGHT - left;
        double height = Math.max(CHART, Flow.SMALL.height(words, beside) + 4);
        flow.block(9 + height, (paper, top) -> {
            PageFrame.hairline(paper, top);
            PageFrame.question(paper, "How " + curve.region() + " dries through holes", top + Flow.GAP);
            paper.figure(
                    words,
                    p -> ChartPainter.onPaper(
                            p, DryingChart.of(curve), new Box(PageFrame.LEFT, top + 7.5, WIDTH, CHART)));
            Flow.SMALL.paint(paper, words, left, top + 11, beside, Anchor.LEFT);
        });
    }

    private static String words(DryingTime time, DryingCurve curve) {
        return DryingChart.lines(curve) + " " + Prose.bold(DryingChart.dry(time, curve)) + " "
                + Prose.plain(time.note()) + " A meter proves nothing: a plug does.";
    }
}
