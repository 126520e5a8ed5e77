package corewright.report.data;

import corewright.assessment.Assessment;
import corewright.repair.plan.Holding;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.work.Schedule;
import corewright.report.page.Conversions;
import corewright.report.page.Numbers;
import corewright.survey.settings.Settings;
import java.util.List;
import java.util.Locale;

/** schedule.csv: the day of every injection as bars, on the clock of batches.csv. */
public final class ScheduleCsv {
    private ScheduleCsv() {}

    public static CsvTable of(Assessment assessment) {
        return of(assessment, assessment.decision().injections());
    }

    /** Of other plans, such as what is left. */
    public static CsvTable of(Assessment assessment, List<InjectionPlan> plans) {
        CsvTable table = new CsvTable("region,batch,worker,hole,what,start_min,end_min");
        Settings settings = assessment.survey().settings();
        for (InjectionPlan plan : plans) {
            String face = plan.holes().get(0).spot().face();
            Holding holding = Holding.of(assessment.survey().face(face).posture());
            for (Schedule.Bar bar : Schedule.of(plan.holes(), plan.batches(), settings.resin(plan.resin()), settings)
                    .bars()) {
                table.add(
                        plan.region(),
                        unless0(bar.batch()),
                        unless0(bar.worker()),
                        bar.hole(),
                        word(bar.what(), holding),
                        Numbers.rounded(bar.startS() / Conversions.SECONDS_PER_MINUTE, 2),
                        Numbers.rounded(bar.endS() / Conversions.SECONDS_PER_MINUTE, 2));
            }
        }
        return table;
    }

    private static String word(Schedule.What what, Holding holding) {
        return switch (what) {
            case HOLD -> holding.thing();
            case LOAD -> holding.use();
            default -> what.name().toLowerCase(Locale.ROOT);
        };
    }

    private static String unless0(int number) {
        return number == 0 ? "" : Integer.toString(number);
    }
}
