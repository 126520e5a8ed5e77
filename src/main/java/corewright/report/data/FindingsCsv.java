package corewright.report.data;

import corewright.assessment.Assessment;
import corewright.drawing.kit.Measure;
import corewright.report.page.Numbers;
import corewright.survey.Finding;
import corewright.survey.Spot;
import java.util.Locale;

/** findings.csv: every reading doubted or set aside, everything assumed, the gravest first. */
public final class FindingsCsv {
    private FindingsCsv() {}

    public static CsvTable of(Assessment assessment) {
        CsvTable table = new CsvTable("severity,file,line,id,face,x,y,subject,message,effect");
        Measure measure = Measure.of(assessment.survey());
        for (Finding finding : assessment.findings()) {
            Spot spot = finding.about().spot();
            long line = finding.origin().line();
            table.add(
                    finding.severity().name().toLowerCase(Locale.ROOT),
                    finding.origin().file(),
                    line > 0 ? Long.toString(line) : "",
                    finding.about().id(),
                    spot == null ? "" : spot.face(),
                    spot == null ? "" : Numbers.rounded(spot.xMm(), 1),
                    spot == null ? "" : Numbers.rounded(spot.yMm(), 1),
                    finding.subject().word(),
                    measure.say(finding.message()),
                    measure.say(finding.effect()));
        }
        return table;
    }
}
