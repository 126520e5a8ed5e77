package corewright.report.data;

import corewright.assessment.Assessment;
import corewright.repair.plan.SecondShot;
import corewright.repair.work.CuredFill;
import corewright.report.page.Conversions;
import corewright.report.page.Numbers;
import corewright.survey.Spot;

/** second-shots.csv: what is still hollow after cure, and what fills it; written once there are taps after cure. */
public final class SecondShotsCsv {
    private SecondShotsCsv() {}

    public static boolean wanted(Assessment assessment) {
        return !assessment.survey().readings().curedTaps().isEmpty();
    }

    public static CsvTable of(Assessment assessment) {
        CsvTable table = new CsvTable(
                "id,face,region,x,y,hole,area_m2,low_l,high_l,resin,low_g,high_g,depth_stop_mm,taps,advice");
        for (CuredFill fill : assessment.work().cured()) {
            for (SecondShot shot : fill.shots()) {
                Spot spot = shot.spot();
                table.add(
                        shot.id(),
                        fill.face(),
                        shot.region(),
                        spot == null ? "" : Numbers.rounded(spot.xMm(), 1),
                        spot == null ? "" : Numbers.rounded(spot.yMm(), 1),
                        shot.hole(),
                        Numbers.rounded(Conversions.squareMetres(shot.areaMm2()), 4),
                        Numbers.rounded(shot.lowMm3() / Conversions.MM3_PER_LITRE, 4),
                        Numbers.rounded(shot.highMm3() / Conversions.MM3_PER_LITRE, 4),
                        shot.resin(),
                        Numbers.rounded(shot.lowG(), 1),
                        Numbers.rounded(shot.highG(), 1),
                        spot == null ? "" : Numbers.rounded(shot.depthStopMm(), 1),
                        String.join(" ", shot.taps()),
                        shot.advice());
            }
        }
        return table;
    }
}
