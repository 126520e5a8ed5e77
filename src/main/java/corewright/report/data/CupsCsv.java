package corewright.report.data;

import corewright.assessment.Assessment;
import corewright.repair.plan.Batch;
import java.util.List;

/** cups.csv: what the scale shows for every cup, zeroed with the empty cup on it. */
public final class CupsCsv {
    private CupsCsv() {}

    public static CsvTable of(Assessment assessment) {
        return of(BatchesCsv.all(assessment));
    }

    /** Of other cups, such as those that are left. */
    public static CsvTable of(List<Batch> cups) {
        CsvTable table = new CsvTable("batch,region,resin_to_g,hardener_to_g");
        cups.forEach(b -> row(table, b));
        return table;
    }

    private static void row(CsvTable table, Batch batch) {
        CupFigures cup = CupFigures.of(batch);
        table.add(
                Integer.toString(batch.number()),
                batch.region(),
                cup.firstG().toPlainString(),
                cup.secondG().toPlainString());
    }
}
