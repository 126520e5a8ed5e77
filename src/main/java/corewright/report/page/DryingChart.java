package corewright.report.page;

import corewright.decision.drying.DryingCurve;
import corewright.decision.drying.DryingCurve.Day;
import corewright.decision.drying.DryingTime;
import corewright.drawing.kit.Figures;
import corewright.drawing.screen.Chart;
import corewright.drawing.screen.Chart.At;
import corewright.drawing.screen.Chart.Axis;
import corewright.drawing.screen.Chart.Sign;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/** How one region dries, as a chart with its words. */
public final class DryingChart {
    private DryingChart() {}

    /** Water against days: the middle case, one case of ten at either side, the gate, and what was read. */
    public static Chart of(DryingCurve curve) {
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

    /** What each line is. */
    public static String lines(DryingCurve curve) {
        String lines =
                "Heavy line: the middle case. Thin lines: one case of ten dries faster, one slower. Broken: the gate, "
                        + Figures.atMost(curve.gatePercent(), 1) + " %.";
        String readings = curve.readings().isEmpty()
                ? ""
                : " Rings: what the readings leave of what stood above dry, mean of the places read; it runs ahead of where the core "
                        + "dries last.";
        return lines + readings;
    }

    /** When it is dry, as a sentence. */
    public static String dry(DryingTime time, DryingCurve curve) {
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
