package corewright.report.data;

import corewright.assessment.Assessment;
import corewright.repair.plan.Batch;
import corewright.repair.plan.InjectionPlan;
import java.util.List;

/** cups.csv: what the scale shows for every cup, zeroed with the empty cup on it. */
public final class CupsCsv {
    private CupsCsv() {}

    public static CsvTable of(Assessment assessment) {
        return of(assessment.decision().injections());
    }

    /** Of other plans, such as what is left. */
    public static CsvTable of(List<InjectionPlan> plans) {
        CsvTable table = new CsvTable("batch,region,resin_to_g,hardener_to_g");
        for (InjectionPlan plan : plans) {
            for (Batch batch : plan.batches()) {
                CupFigures cup = CupFigures.of(batch);
                table.add(
                        Integer.toString(batch.number()),
                        batch.region(),
                        cup.firstG().toPlainString(),
                        cup.secondG().toPlainString());
            }
        }
        return table;
    }
}
