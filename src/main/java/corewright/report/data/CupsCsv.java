package corewright.report.data;

import corewright.assessment.Assessment;
import corewright.repair.plan.Batch;

/** cups.csv: what the scale shows for every cup, zeroed with the empty cup on it. */
public final class CupsCsv {
    private CupsCsv() {}

    public static CsvTable of(Assessment assessment) {
        CsvTable table = new CsvTable("batch,region,resin_to_g,hardener_to_g");
        BatchesCsv.all(assessment).forEach(b -> row(table, b));
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
