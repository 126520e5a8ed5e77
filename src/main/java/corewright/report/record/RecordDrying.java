package corewright.report.record;

import corewright.assessment.Assessment;
import corewright.decision.Method;
import corewright.decision.drying.DryingCurve;
import corewright.decision.drying.DryingCurve.Day;
import corewright.decision.drying.DryingTime;
import corewright.decision.drying.DryingTimes;
import corewright.decision.drying.Way;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.screen.Chart;
import corewright.drawing.screen.Chart.At;
import corewright.drawing.screen.Chart.Axis;
import corewright.drawing.screen.Chart.Sign;
import corewright.drawing.screen.ChartPainter;
import corewright.report.page.Flow;
import corewright.report.page.PageFrame;
import corewright.report.page.Prose;
import corewright.report.page.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

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
                    p -> ChartPainter.onPaper(p, chart(curve), new Box(PageFrame.LEFT, top + 7.5, WIDTH, CHART)));
            Flow.SMALL.paint(paper, words, left, top + 11, beside, Anchor.LEFT);
        });
    }

    static Chart chart(DryingCurve curve) {
        double end = curve.days().get(curve.days().size() - 1).day();
        double most = curve.days().stream().mapToDouble(Day::p90).max().orElse(1);
        Axis days = Axis.upTo(end, curve.from().isPresent() ? "days since the first reading" : "days");
        double gate = curve.gatePercent();
        List<Chart.Element> elements = new ArrayList<>(List.of(
                new Chart.Line(List.of(new At(0, gate), new At(days.end(), gate)), true),
                new Chart.End(points(curve, Day::p10)),
                new Chart.End(points(curve, Day::p90)),
                new Chart.Line(points(curve, Day::p50), false)));
        if (!curve.readings().isEmpty()) {
            elements.add(new Chart.Marks(
                    curve.readings().stream()
                            .map(r -> new At(r.day(), r.percent()))
                            .toList(),
                    Sign.RING));
        }
        return new Chart(days, Axis.upTo(most, "water where it dries last, % of the core's dry mass"), elements);
    }

    private static List<At> points(DryingCurve curve, ToDoubleFunction<Day> share) {
        return curve.days().stream()
                .map(d -> new At(d.day(), share.applyAsDouble(d)))
                .toList();
    }

    private static String words(DryingTime time, DryingCurve curve) {
        String lines =
                "Heavy line: the middle case. Thin lines: one case of ten dries faster, one slower. Broken: the gate, "
                        + Figures.atMost(curve.gatePercent(), 1) + " %.";
        String readings = curve.readings().isEmpty()
                ? ""
                : " Rings: what the readings leave of what stood above dry, mean of the places read; it runs ahead of where the core "
                        + "dries last.";
        return lines + readings + " " + Prose.bold(dry(time, curve)) + " " + Prose.plain(time.note())
                + " A meter proves nothing: a plug does.";
    }

    private static String dry(DryingTime time, DryingCurve curve) {
        var days = time.days();
        if (days == null || Double.isInfinite(days.p50())) {
            return "It may never be dry so.";
        }
        String most =
                Double.isInfinite(days.p90()) ? "or more" : String.format(Locale.ROOT, "to %s", whole(days.p90()));
        return (curve.readings().isEmpty() ? "Dry in " + whole(days.p50()) : "Dry " + whole(days.p50()) + " more")
                + " days"
                + (curve.readings().isEmpty() ? "" : " after the last reading") + ", in 8 cases of 10 "
                + whole(days.p10()) + " " + most + ".";
    }

    private static String whole(double days) {
        return Wording.days(days, days);
    }
}
