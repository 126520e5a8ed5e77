package corewright.report.data;

import corewright.assessment.Assessment;
import corewright.damage.Quantiles;
import corewright.repair.work.FillCheck;
import corewright.repair.work.WorkLog;
import corewright.repair.work.WorkProgress;
import corewright.report.page.Conversions;
import corewright.report.page.Numbers;
import corewright.survey.SurfaceTemperature;
import java.util.Locale;

/** What the work so far says: work-done.csv, work-left.csv and fill-check.csv; written once there is a log or a check. */
public final class WorkCsv {
    private WorkCsv() {}

    /** Every filled hole against its plan. */
    public static CsvTable done(Assessment assessment) {
        CsvTable table = new CsvTable("region,hole,planned_g,taken_g,deviation_sd,took,advice");
        for (WorkProgress work : assessment.work().progress()) {
            for (WorkLog.Filled filled : work.log().holes()) {
                table.add(
                        work.region(),
                        filled.hole(),
                        Numbers.rounded(filled.plannedG(), 1),
                        Numbers.rounded(filled.takenG(), 1),
                        Numbers.rounded(filled.z(), 2),
                        word(filled.took()),
                        WorkProgress.advice(filled));
            }
        }
        return table;
    }

    /** What is left of every region that was begun, mixed grams, without waste but for the next cup; its cavity by readings and log. */
    public static CsvTable left(Assessment assessment) {
        CsvTable table = new CsvTable(
                "region,factor,factor_p10,factor_p90,left_g,left_p90_g,next_cup_g,cavity_p10_l,cavity_p50_l,cavity_p90_l");
        for (WorkProgress work : assessment.work().progress()) {
            WorkLog log = work.log();
            Quantiles cavityL = Conversions.litres(work.cavityMm3());
            table.add(
                    work.region(),
                    Numbers.rounded(log.factor(), 3),
                    Numbers.rounded(log.factorP10(), 3),
                    Numbers.rounded(log.factorP90(), 3),
                    Numbers.rounded(log.leftG(), 1),
                    Numbers.rounded(log.leftP90G(), 1),
                    Numbers.rounded(work.nextCupG(), 1),
                    Numbers.rounded(cavityL.p10(), 3),
                    Numbers.rounded(cavityL.p50(), 3),
                    Numbers.rounded(cavityL.p90(), 3));
        }
        return table;
    }

    /** Every warmth reading over a region that is injected, judged. */
    public static CsvTable warmth(Assessment assessment) {
        CsvTable table = new CsvTable("id,face,region,x,y,minutes,reading,verdict,expected,advice");
        for (WorkProgress work : assessment.work().progress()) {
            for (FillCheck.Place place : work.warmth()) {
                SurfaceTemperature r = place.reading();
                table.add(
                        r.id(),
                        r.spot().face(),
                        work.region(),
                        Numbers.rounded(r.spot().xMm(), 1),
                        Numbers.rounded(r.spot().yMm(), 1),
                        Numbers.rounded(r.afterS() / Conversions.SECONDS_PER_MINUTE, 2),
                        reading(r),
                        word(place.verdict()),
                        place.expected() ? "yes" : "no",
                        WorkProgress.advice(place));
            }
        }
        return table;
    }

    private static String reading(SurfaceTemperature r) {
        if (r.valueC() != null) {
            return Numbers.rounded(r.valueC(), 1);
        }
        return Boolean.TRUE.equals(r.warm()) ? "warm" : "not-warm";
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
