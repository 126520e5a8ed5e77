package corewright.report.data;

import corewright.assessment.Assessment;
import corewright.damage.NextReading;
import corewright.report.page.Numbers;

/** next-readings.csv: where another reading would tell most. */
public final class NextReadingsCsv {
    private NextReadingsCsv() {}

    public static CsvTable of(Assessment assessment) {
        CsvTable table = new CsvTable("rank,face,kind,x,y,gain,gain_unit,decisions");
        for (NextReading next : assessment.next()) {
            table.add(
                    Integer.toString(next.rank()),
                    next.spot().face(),
                    next.kind().word(),
                    Numbers.rounded(next.spot().xMm(), 1),
                    Numbers.rounded(next.spot().yMm(), 1),
                    Numbers.rounded(next.gain(), next.unit() == NextReading.Unit.LITRE ? 3 : 4),
                    next.unit().symbol(),
                    Numbers.rounded(next.decisions(), 3));
        }
        return table;
    }
}
