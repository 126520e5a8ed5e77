package corewright.report.data;

import corewright.assessment.Assessment;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.report.page.Conversions;
import corewright.report.page.Numbers;
import java.util.Locale;

/** holes.csv: every hole to be drilled and every place that a nozzle fills, in working order. */
public final class HolesCsv {
    private HolesCsv() {}

    public static CsvTable of(Assessment assessment) {
        CsvTable table = new CsvTable("id,face,region,kind,order,x,y,diameter_mm,depth_stop_mm,reach_mm,served_l"
                + ",access,push_in_mm,simulated_l");
        for (InjectionPlan plan : assessment.decision().injections()) {
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
                        simulated(plan, hole));
            }
        }
        return table;
    }

    /** Cavity that its mix came to first; nothing where nothing was simulated or nothing goes in. */
    private static String simulated(InjectionPlan plan, Hole hole) {
        Double mm3 = plan.fill().filledMm3().get(hole.id());
        return mm3 == null ? "" : Numbers.rounded(mm3 / Conversions.MM3_PER_LITRE, 3);
    }
}
