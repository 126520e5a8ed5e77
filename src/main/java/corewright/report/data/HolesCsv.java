package corewright.report.data;

import corewright.assessment.Assessment;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.work.WorkLog;
import corewright.report.page.Conversions;
import corewright.report.page.Numbers;
import java.util.Locale;
import java.util.Map;

/** holes.csv: every hole to be drilled and every place that a nozzle fills, in working order. */
public final class HolesCsv {
    private HolesCsv() {}

    public static CsvTable of(Assessment assessment) {
        CsvTable table = new CsvTable("id,face,region,kind,order,x,y,diameter_mm,depth_stop_mm,reach_mm,served_l"
                + ",access,push_in_mm,simulated_l,low_g,planned_g,high_g,taken_g");
        double waste = assessment.survey().settings().drilling().wasteFraction();
        for (InjectionPlan plan : assessment.decision().injections()) {
            Map<String, Double> planned = WorkLog.planned(plan, waste);
            double gPerMm3 = assessment.survey().settings().resin(plan.resin()).densityKgM3() * 1e-6;
            for (Hole hole : plan.holes()) {
                Hole.Nozzle nozzle = hole.nozzle();
                table.add(
                        hole.id(),
                        hole.spot().face(),
                        hole.region(),
                        hole.kind().name().toLowerCase(Locale.ROOT),
                        Integer.toString(hole.order()),
                        Numbers.rounded(hole.spot().xMm(), 1),
                        Numbers.rounded(hole.spot().yMm(), 1),
                        Numbers.rounded(hole.diameterMm(), 2),
                        Numbers.rounded(hole.depthStopMm(), 1),
                        Numbers.rounded(hole.reachMm(), 1),
                        Numbers.rounded(hole.servedMm3() / Conversions.MM3_PER_LITRE, 3),
                        nozzle == null ? "" : nozzle.access(),
                        nozzle == null ? "" : Numbers.rounded(nozzle.pushMm(), 0),
                        simulated(plan, hole),
                        hole.fills() ? Numbers.grams(hole.range().lowG()).toPlainString() : "",
                        unless0(planned.getOrDefault(hole.id(), 0.0)),
                        unless0(hole.range().highG()),
                        unless0(gPerMm3 * plan.fill().takenMm3().getOrDefault(hole.id(), 0.0)));
            }
        }
        return table;
    }

    private static String unless0(double grams) {
        return grams > 0 ? Numbers.grams(grams).toPlainString() : "";
    }

    /** Cavity that its mix came to first; nothing where nothing was simulated or nothing goes in. */
    private static String simulated(InjectionPlan plan, Hole hole) {
        Double mm3 = plan.fill().filledMm3().get(hole.id());
        return mm3 == null ? "" : Numbers.rounded(mm3 / Conversions.MM3_PER_LITRE, 3);
    }
}
