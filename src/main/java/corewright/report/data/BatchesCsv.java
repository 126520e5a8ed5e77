package corewright.report.data;

import corewright.assessment.Assessment;
import corewright.repair.plan.Batch;
import corewright.repair.plan.InjectionPlan;
import corewright.report.page.Conversions;
import corewright.report.page.Numbers;
import java.util.List;

/** batches.csv: every mix, in the order of the day. */
public final class BatchesCsv {
    private BatchesCsv() {}

    public static CsvTable of(Assessment assessment) {
        return of(assessment.decision().injections());
    }

    /** Of other plans, such as what is left. */
    public static CsvTable of(List<InjectionPlan> plans) {
        CsvTable table = new CsvTable(
                "batch,region,holes,part_a_g,part_b_g,mix_at_min,work_until_min,first_rise_min,hard_at_min");
        for (InjectionPlan plan : plans) {
            for (Batch batch : plan.batches()) {
                table.add(
                        Integer.toString(batch.number()),
                        batch.region(),
                        String.join(" ", batch.holes()),
                        Numbers.grams(batch.partAG()).toPlainString(),
                        Numbers.grams(batch.partBG()).toPlainString(),
                        minutes(batch.mixAtS()),
                        minutes(batch.workUntilS()),
                        minutes(batch.firstRiseS()),
                        minutes(batch.hardAtS()));
            }
        }
        return table;
    }

    private static String minutes(double seconds) {
        return Numbers.rounded(seconds / Conversions.SECONDS_PER_MINUTE, 2);
    }
}
