package corewright.report.data;

import corewright.assessment.Assessment;
import corewright.repair.mix.HeldCups;
import corewright.repair.mix.Lifts;
import corewright.repair.plan.Batch;
import corewright.repair.plan.InjectionPlan;
import corewright.report.page.Conversions;
import corewright.report.page.Numbers;
import java.util.ArrayList;
import java.util.List;

/** batches.csv: every mix, in the order of the day; what is held back last. */
public final class BatchesCsv {
    private BatchesCsv() {}

    public static CsvTable of(Assessment assessment) {
        return of(all(assessment));
    }

    /** Of other cups, such as those that are left. */
    public static CsvTable of(List<Batch> cups) {
        CsvTable table = new CsvTable(
                "batch,region,holes,part_a_g,part_b_g,mix_at_min,work_until_min,first_rise_min,hard_at_min,kind,lift");
        cups.forEach(b -> row(table, b, cups));
        return table;
    }

    /** Every cup, in the order of the day; what is held back last. */
    static List<Batch> all(Assessment assessment) {
        List<InjectionPlan> plans = assessment.decision().injections();
        List<Batch> cups = new ArrayList<>();
        plans.forEach(p -> cups.addAll(p.batches()));
        cups.addAll(HeldCups.of(plans, assessment.survey().settings()));
        return cups;
    }

    private static void row(CsvTable table, Batch batch, List<Batch> cups) {
        table.add(
                Integer.toString(batch.number()),
                batch.region(),
                String.join(" ", batch.holes()),
                Numbers.grams(batch.partAG()).toPlainString(),
                Numbers.grams(batch.partBG()).toPlainString(),
                minutes(batch.mixAtS()),
                minutes(batch.workUntilS()),
                minutes(batch.firstRiseS()),
                minutes(batch.hardAtS()),
                HeldCups.heldBack(batch) ? "held-back" : "planned",
                HeldCups.heldBack(batch) ? "" : Integer.toString(Lifts.number(batch, cups)));
    }

    private static String minutes(double seconds) {
        return Numbers.rounded(seconds / Conversions.SECONDS_PER_MINUTE, 2);
    }
}
