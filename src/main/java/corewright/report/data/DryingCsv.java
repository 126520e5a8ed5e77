package corewright.report.data;

import corewright.assessment.Assessment;
import corewright.damage.Quantiles;
import corewright.decision.drying.DryingTime;
import corewright.report.page.Numbers;

/** drying.csv: how long every wet region takes to the gate; empty cells where no time is told or none is enough. */
public final class DryingCsv {
    private DryingCsv() {}

    public static CsvTable of(Assessment assessment) {
        CsvTable table = new CsvTable("face,region,way,from_percent,gate_percent,days_p10,days_p50,days_p90,note");
        for (DryingTime time : assessment.decision().weighing().drying()) {
            Quantiles days = time.days();
            table.add(
                    time.face(),
                    time.region(),
                    time.way().word(),
                    Numbers.rounded(time.fromPercent(), 1),
                    Numbers.rounded(time.gatePercent(), 1),
                    days == null ? "" : Numbers.rounded(days.p10(), 1),
                    days == null ? "" : Numbers.rounded(days.p50(), 1),
                    days == null ? "" : Numbers.rounded(days.p90(), 1),
                    time.note());
        }
        return table;
    }
}
