package corewright.report.data;

import corewright.assessment.Assessment;
import corewright.decision.Flip;
import corewright.report.page.Numbers;
import corewright.survey.Spot;

/** what-would-change.csv: what would give a region another method, and how likely that is. */
public final class WhatWouldChangeCsv {
    private WhatWouldChangeCsv() {}

    public static CsvTable of(Assessment assessment) {
        CsvTable table = new CsvTable("region,method,becomes,if,probability,x,y");
        for (Flip flip : assessment.decision().weighing().flips()) {
            Spot spot = flip.spot();
            table.add(
                    flip.region(),
                    flip.method().word(),
                    flip.becomes().word(),
                    flip.condition(),
                    Numbers.rounded(flip.probability(), 3),
                    spot == null ? "" : Numbers.rounded(spot.xMm(), 1),
                    spot == null ? "" : Numbers.rounded(spot.yMm(), 1));
        }
        return table;
    }
}
